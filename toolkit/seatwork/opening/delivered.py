"""The record of what a workbook was given, so that a reader's changes are never overwritten."""

import errno
import hashlib
import json
from contextlib import suppress
from pathlib import Path

from seatwork.errors import SeatworkError

RECORD = ".seatwork/delivered.json"

FAULTS = {
    errno.ENOSPC: ("the disk is full", "free some space and give the command again"),
    errno.EDQUOT: ("your share of the disk is full", "free some space and give the command again"),
    errno.ENOTDIR: ("a file stands where a folder is needed", "name another folder"),
    errno.EEXIST: ("a file stands where a folder is needed", "name another folder"),
    errno.ENAMETOOLONG: ("the name is too long", "name a shorter one"),
}
UNWRITABLE = (
    "it cannot be written here",
    "name a folder of your own, or ask who looks after this one",
)


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


def write(path: Path, content: bytes) -> None:
    """Write a file whole or not at all.

    Raises
    ------
    SeatworkError
        If the disk is full, or the place cannot be written; the old file is still there.
    """
    part = path.with_name(f".{path.name}.part")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        part.write_bytes(content)
        part.replace(path)
    except OSError as error:
        with suppress(OSError):  # the disk that refused the file may refuse this too
            part.unlink(missing_ok=True)
        raise refusal(path, error) from error


def refusal(path: Path, error: OSError) -> SeatworkError:
    """Turn the system's error about a path into a plain sentence."""
    fault, remedy = FAULTS.get(error.errno or 0, UNWRITABLE)
    return SeatworkError(str(path), fault, remedy)
