"""The blocks of a page that has Python in it: the runtime, and the part of the package it runs."""

import json

from seatwork.takehome.blocks import block
from seatwork.takehome.package_block import Files, packed
from seatwork.takehome.runtime import ABI, NOTICE, PYTHON, VERSION, Runtime

ABOUT = {
    "abi_version": ABI, "arch": "wasm32", "platform": "emscripten", "version": VERSION,
    "python": PYTHON,
}  # fmt: skip
READER, DESK = "seatwork.takehome.inside.reader", "seatwork.takehome.inside.desk"
"""The module that a page asks."""
NOTE = f'<p class="notice screen">{NOTICE}</p>'


def python_blocks(made: Runtime, files: Files) -> str:
    """Return the runtime and the files it runs, as blocks of a page."""
    parts = {
        "py-loader": made.loader,
        "py-asm": made.asm,
        "py-wasm": made.wasm,
        "py-std": made.library,
        "py-app": packed(files),
        "py-about": json.dumps(ABOUT).encode(),
    }
    return "\n".join(block(name, data) for name, data in parts.items())
