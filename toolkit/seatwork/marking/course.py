"""The instructor's folder: the course key, kept from everyone else."""

import os
import secrets
import stat
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError

KEY_FILE = "course.key"
KEY_BYTES = 32


def make_key(folder: Path) -> bytes:
    """Return the course key of a folder; made, for its owner's eyes only, if there is none.

    The folder becomes its owner's alone with it.

    Raises
    ------
    SeatworkError
        If the folder cannot be written, or the key there is open to others.
    """
    path = folder / KEY_FILE
    if not path.exists():
        files.write(path, secrets.token_hex(KEY_BYTES) + "\n", mode=files.PRIVATE)
        folder.chmod(files.PRIVATE_FOLDER)
    return read_key(folder)


def read_key(folder: Path) -> bytes:
    """Return the course key of a folder.

    Raises
    ------
    SeatworkError
        If there is none, it is damaged, or others can read it.
    """
    path = folder / KEY_FILE
    try:
        text = path.read_text(encoding="ascii").strip()
        others = stat.S_IMODE(path.stat().st_mode) & 0o077
    except FileNotFoundError as error:
        remedy = (
            "hand out a sheet first; or copy the key back from your safe copy; if it is lost for"
            " good, run: seatwork record reseal"
        )
        raise SeatworkError(str(path), "there is no course key", remedy) from error
    except (OSError, ValueError) as error:
        raise _damaged(path) from error
    if os.name == "posix" and others:
        remedy = f"run: chmod 600 {path}"
        raise SeatworkError(str(path), "others on this computer can read the course key", remedy)
    try:
        key = bytes.fromhex(text)
    except ValueError as error:
        raise _damaged(path) from error
    if len(key) != KEY_BYTES:
        raise _damaged(path)
    return key


def _damaged(path: Path) -> SeatworkError:
    return SeatworkError(str(path), "that is no course key", "copy it back from your safe copy")
