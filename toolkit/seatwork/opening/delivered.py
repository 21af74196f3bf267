"""The record of what a workbook was given, so that a reader's changes are never overwritten."""

import hashlib
import json
from contextlib import suppress
from pathlib import Path

RECORD = ".seatwork/delivered.json"


def fingerprint(content: bytes, suffix: str) -> str:
    """Hash what a reader could have changed: cell sources of a notebook, else the whole text."""
    if suffix == ".ipynb":
        # what is no notebook any more is compared by its bytes
        with suppress(ValueError, KeyError, TypeError, AttributeError):
            content = json.dumps(cell_sources(json.loads(content))).encode()
    return hashlib.sha256(content.replace(b"\r\n", b"\n")).hexdigest()


def cell_sources(notebook: dict[str, list[dict[str, object]]]) -> list[list[str]]:
    """List kind and source of every cell; outputs, counts and metadata do not count."""
    return [[str(cell["cell_type"]), _joined(cell["source"])] for cell in notebook["cells"]]


def _joined(source: object) -> str:
    return "".join(source) if isinstance(source, list) else str(source)


def recorded(folder: Path) -> dict[str, str]:
    """Read the fingerprints of what was delivered; a spoiled record counts as none."""
    try:
        record = json.loads((folder / RECORD).read_bytes())
    except (OSError, ValueError):
        return {}
    return record if isinstance(record, dict) else {}
