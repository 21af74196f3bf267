"""One writer at a time in a folder."""

import errno
import os
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.files.writing import UNDONE, refusal

LOCK = ".seatwork.lock"
HOLDER = ".seatwork.lock.by"
WAIT = 5.0  # seconds that a second writer waits


@contextmanager
def lock(folder: str | Path, wait: float = WAIT) -> Iterator[None]:
    """Keep a folder to one writer at a time; within one process it may be taken again.

    Parameters
    ----------
    folder : str or Path
        The folder whose files change; it must be there.
    wait : float
        How long to wait for another writer [s].

    Raises
    ------
    SeatworkError
        If another writer still holds it, or the folder refuses.
    """
    from filelock import FileLock, Timeout  # a fifth of a second, and only writers need it

    place = Path(folder)
    held = FileLock(place / LOCK, timeout=wait, is_singleton=True)
    try:
        if not place.is_dir():
            raise FileNotFoundError(errno.ENOENT, "no folder")
        held.acquire()
    except Timeout as error:
        who = _holder(place)
        remedy = "wait until it is done, then give the command again"
        raise SeatworkError(str(place), f"another command is writing there{who}", remedy) from error
    except OSError as error:
        raise refusal(place, error) from error
    try:
        _sweep(place)
        with suppress(OSError):  # a note for whoever waits; the lock holds without it
            (place / HOLDER).write_text(str(os.getpid()), encoding="ascii")
        yield
    finally:
        held.release()


def _sweep(folder: Path) -> None:
    """Take away what a writer that was killed left half written."""
    for left in folder.glob("." + "[0-9a-f]" * 12 + UNDONE):
        with suppress(OSError):
            left.unlink()


def _holder(folder: Path) -> str:
    try:
        return f" (process {int((folder / HOLDER).read_text(encoding='ascii'))})"
    except (OSError, ValueError):
        return ""
