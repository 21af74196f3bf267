"""The blocks of a page that has Python in it: the runtime, and the part of the package it runs."""

import json
from functools import lru_cache

from seatwork.takehome.blocks import block
from seatwork.takehome.compiling import READER_LEFT_OUT, Files, without
from seatwork.takehome.package_block import packed
from seatwork.takehome.runtime import ABI, NOTICE, PYTHON, VERSION, Runtime, bytecode
from seatwork.takehome.spoken import both

ABOUT = {
    "abi_version": ABI, "arch": "wasm32", "platform": "emscripten", "version": VERSION,
    "python": PYTHON,
}  # fmt: skip
READER, DESK = "seatwork.takehome.inside.reader", "seatwork.takehome.inside.desk"
"""The module that a page asks."""
IN_SPANISH = (
    f"Esta página lleva Python {PYTHON} (licencia de la Python Software Foundation) en Pyodide "
    f"{VERSION} (Mozilla Public License 2.0), cuyo código está en github.com/pyodide/pyodide, y "
    "lark (licencia MIT)."
)
NOTE = f'<p class="notice screen">{both(NOTICE, IN_SPANISH)}</p>'


def python_blocks(made: Runtime, files: Files, *, reads: bool = False) -> str:
    """Return the runtime and the files it runs, as blocks of a page.

    Parameters
    ----------
    made : Runtime
        Python for the page.
    files : dict of str to bytes
        The part of the package, by place; its modules go along compiled.
    reads : bool
        Whether entries are read and nothing else, so that less of the library will do.
    """
    app = block("py-app", packed(bytecode(files)))
    return f"{_runtime_blocks(made, reads)}\n{app}"


@lru_cache(maxsize=2)
def _runtime_blocks(made: Runtime, reads: bool) -> str:
    """Return the blocks of the runtime, packed once for all pages of a class."""
    parts = {
        "py-loader": made.loader,
        "py-asm": made.asm,
        "py-wasm": made.wasm,
        "py-std": made.library,
        "py-about": json.dumps(ABOUT).encode(),
    }
    if reads:
        parts["py-std"] = without(parts["py-std"], READER_LEFT_OUT)
    return "\n".join(block(name, data) for name, data in parts.items())
