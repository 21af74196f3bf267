"""Whole writes: a reader finds the old file or the new, never a part."""

import errno
import os
import secrets
from contextlib import suppress
from pathlib import Path

from seatwork.errors import SeatworkError

PRIVATE, PRIVATE_FOLDER = 0o600, 0o700
UNDONE = ".new"
BINARY = getattr(os, "O_BINARY", 0)

AGAIN = "free some space, then give the command again"
NO_FOLDER = ("a file stands where a folder is needed", "name another folder")
REFUSALS = {
    errno.ENOSPC: ("the disk is full", AGAIN),
    errno.EDQUOT: ("your share of the disk is full", AGAIN),
    errno.ENOENT: ("there is no such file or folder", "check its name and folder, or name another"),
    errno.ENOTDIR: NO_FOLDER,
    errno.EEXIST: NO_FOLDER,
    errno.EISDIR: ("that is a folder", "name a file"),
    errno.ENAMETOOLONG: ("the name is too long", "name a shorter one"),
    errno.ELOOP: ("it is a link that leads back to itself", "name the file itself"),
    errno.EROFS: ("nothing can be written on that disk", "name a folder on another disk"),
}
NO_RIGHT = (
    "it cannot be opened or written here",
    "name a place of your own, or ask who looks after this one",
)


def refusal(path: str | Path, error: OSError | ValueError) -> SeatworkError:
    """Turn the system's error about a path into a plain sentence.

    Parameters
    ----------
    path : str or Path
        What was to be read or written.
    error : OSError or ValueError
        What the system said; a ValueError if the path is no name at all.
    """
    if not isinstance(error, OSError):
        return SeatworkError(ascii(str(path)), "that is no name of a file", "write a plain name")
    fault, remedy = REFUSALS.get(error.errno or 0, NO_RIGHT)
    return SeatworkError(str(path), fault, remedy)


def write(
    path: str | Path, content: bytes | str, *, mode: int = 0o644, backup: bool = False
) -> None:
    """Write a file so that a reader finds the old content or the new, never a part.

    It is written beside its place, forced to the disk, then moved into its place.

    Parameters
    ----------
    path : str or Path
        The file; its folder is made if it is not there.
    content : bytes or str
        The whole content; text is written as UTF-8.
    mode : int
        Permissions of the file: 0o600 for what holds answers or keys. Folders made on the way
        are then for their owner alone, too.
    backup : bool
        Keep what stood there before as ``NAME.bak``.

    Raises
    ------
    SeatworkError
        If the folder or the disk refuses; what stood there before is still there.
    """
    place = Path(path)
    raw = content.encode() if isinstance(content, str) else content
    try:
        if backup and place.is_file():
            before = place.read_bytes()
            if before == raw:
                return
            _put(place.with_name(place.name + ".bak"), before, mode)
        make_folder(place.parent, private=mode == PRIVATE)
        _put(place, raw, mode)
    except (OSError, ValueError) as error:
        # its folder is there by now: nobody may write in it
        gone = isinstance(error, FileNotFoundError)
        why = SeatworkError(str(place), *NO_RIGHT) if gone else refusal(place, error)
        raise SeatworkError(why.value, f"it was not saved: {why.fault}", why.remedy) from error


def make_folder(folder: Path, *, private: bool = False) -> None:
    """Make a folder and those above it; `private` ones are for their owner alone."""
    for place in reversed([folder, *folder.parents]):
        if not place.is_dir():
            place.mkdir(mode=PRIVATE_FOLDER if private else 0o777, exist_ok=True)


def _put(path: Path, content: bytes, mode: int) -> None:
    beside = path.with_name(f".{secrets.token_hex(6)}{UNDONE}")
    try:
        handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL | BINARY, mode)
        with os.fdopen(handle, "wb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        beside.replace(path)
    except BaseException:
        with suppress(OSError):  # the disk that refused the file may refuse this too
            beside.unlink(missing_ok=True)
        raise
