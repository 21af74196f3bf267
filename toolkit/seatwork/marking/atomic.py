"""Files that are whole or not there: written beside their place, then moved into it."""

import os
from pathlib import Path

from seatwork.errors import SeatworkError


def write(path: Path, content: bytes, mode: int = 0o644) -> None:
    """Write a file so that a reader finds the old content or the new, never a part.

    Parameters
    ----------
    path : Path
        The file; its folder is made if it is not there.
    content : bytes
        The whole content.
    mode : int
        Permissions of the new file.

    Raises
    ------
    SeatworkError
        If the folder or the disk refuses.
    """
    beside = path.with_name(f".{path.name}.new")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, mode)
        with os.fdopen(handle, "wb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        beside.replace(path)
    except OSError as error:
        reason = (error.strerror or "it cannot be written").lower()
        raise SeatworkError(
            str(path), f"it was not saved ({reason})", "free the disk or choose another folder"
        ) from error


def write_with_backup(path: Path, content: bytes) -> None:
    """Write a file as `write` does and keep what stood there before as ``NAME.bak``."""
    if path.is_file():
        before = path.read_bytes()
        if before == content:
            return
        write(path.with_name(path.name + ".bak"), before)
    write(path, content)
