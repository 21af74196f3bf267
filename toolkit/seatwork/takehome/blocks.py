"""What a page carries: data in packed blocks, one script, and a policy that allows nothing else."""

import gzip
import hashlib
import json
from base64 import b64encode
from pathlib import Path
from typing import Any

HERE = Path(__file__).parent / "page"


def packed_letters(data: bytes) -> str:
    """Return data packed, and in letters that no page reads as markup."""
    return b64encode(gzip.compress(data, 9, mtime=0)).decode("ascii")


def block(name: str, data: bytes) -> str:
    """Return data as a block of a page."""
    return f'<script type="text/plain" id="{name}">{packed_letters(data)}</script>'


def json_block(name: str, told: Any) -> str:
    """Return data as a block that the page reads as JSON."""
    text = json.dumps(told, ensure_ascii=False, separators=(",", ":"))
    return block(name, text.encode("utf-8"))


def script(*names: str, before: str = "") -> str:
    """Return the files of the page's folder as one script.

    Parameters
    ----------
    *names : str
        File names, in order.
    before : str
        Code that stands before them.
    """
    texts = [(HERE / name).read_text(encoding="utf-8") for name in names]
    code = "\n".join([before, *texts])
    if "</script" in code.lower() or "<!--" in code:
        raise ValueError("a script of a page holds a sign that ends it")
    return code


def style(*names: str) -> str:
    """Return the style files of the page's folder as one."""
    return "\n".join((HERE / name).read_text(encoding="utf-8") for name in names)


def policy(code: str, *, python: bool = False, beside: bool = False) -> str:
    """Return what a page may do: run this one script, show its own pictures, ask for nothing.

    Parameters
    ----------
    code : str
        The page's script.
    python : bool
        Whether Python is in the page, in a worker made from it.
    beside : bool
        Whether the runtime is a file beside the page.
    """
    digest = b64encode(hashlib.sha256(code.encode("utf-8")).digest()).decode("ascii")
    scripts = f"'sha256-{digest}'"
    worker = ""
    if python:
        scripts += " blob: 'wasm-unsafe-eval'"
        if beside:
            scripts += " file: 'self'"
        worker = " worker-src blob:;"
    return (
        f"default-src 'none'; script-src {scripts};{worker} style-src 'unsafe-inline'; "
        "img-src data: blob:; font-src data:; base-uri 'none'; form-action 'none'"
    )
