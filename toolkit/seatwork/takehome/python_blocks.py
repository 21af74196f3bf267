"""The blocks of a page that has Python in it: the runtime, and the part of the package it runs."""

import hashlib
import json
from dataclasses import astuple
from functools import lru_cache

from seatwork.takehome.blocks import block, packed_letters
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


BESIDE = "seatwork-python.js"
"""The file beside the pages of a folder that holds the runtime for all of them."""
FILL = """if (document.currentScript.dataset.runtime === {digest})
  for (const [id, text] of Object.entries({parts})) document.getElementById(id).textContent = text;
"""
PARTS = ("py-loader", "py-asm", "py-wasm", "py-std")


def python_blocks(made: Runtime, files: Files, *, reads: bool = False, beside: bool = False) -> str:
    """Return the runtime and the files it runs, as blocks of a page.

    Parameters
    ----------
    made : Runtime
        Python for the page.
    files : dict of str to bytes
        The part of the package, by place; its modules go along compiled.
    reads : bool
        Whether entries are read and nothing else, so that less of the library will do.
    beside : bool
        Whether the runtime is a file beside the page; its blocks are then empty, and filled by
        that file if it is the very one that the page was written with.
    """
    app = block("py-app", packed(bytecode(files)))
    about = block("py-about", json.dumps(ABOUT).encode())
    if not beside:
        return "\n".join([_runtime_blocks(made, reads), about, app])
    empty = (f'<script type="text/plain" id="{name}"></script>' for name in PARTS)
    filled = f'<script src="{BESIDE}" data-runtime="{_digest(made)}"></script>'
    return "\n".join([*empty, about, app, filled])


def runtime_script(made: Runtime) -> str:
    """Return the file beside the pages: it fills the blocks of a page that was written with it."""
    parts = {name: packed_letters(data) for name, data in _parts(made).items()}
    return FILL.format(digest=json.dumps(_digest(made)), parts=json.dumps(parts))


@lru_cache(maxsize=2)
def _runtime_blocks(made: Runtime, reads: bool) -> str:
    """Return the blocks of the runtime, packed once for all pages of a class."""
    parts = _parts(made)
    if reads:
        parts["py-std"] = without(parts["py-std"], READER_LEFT_OUT)
    return "\n".join(block(name, data) for name, data in parts.items())


def _parts(made: Runtime) -> dict[str, bytes]:
    return dict(zip(PARTS, astuple(made), strict=True))


@lru_cache(maxsize=2)
def _digest(made: Runtime) -> str:
    """Return what tells one runtime from another."""
    return hashlib.sha256(b"".join(_parts(made).values())).hexdigest()[:16]
