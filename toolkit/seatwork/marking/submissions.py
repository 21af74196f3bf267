"""What was handed in: every file once, opened only if it can be an answer file."""

import os
import stat
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.marking.answers import MOST_BYTES, AnswerFile, parse

DEEPEST = 4
MOST_FILES = 50_000
NOT_ANSWERS = "that is no answer file"


@dataclass(frozen=True, slots=True, kw_only=True)
class Submission:
    """One file handed in.

    Parameters
    ----------
    name : str
        Its place in the folder.
    file : AnswerFile or None
        Its answers; None if it cannot be marked.
    doubt : str
        Why it cannot be marked; empty if it can.
    """

    name: str
    file: AnswerFile | None
    doubt: str = ""


def collect(folder: Path) -> Iterator[Submission]:
    """Yield every file below a folder once, in the order of their names.

    Links, pipes and the like are named and left closed; nothing is unpacked or run.
    """
    for path in _files(folder, DEEPEST):
        yield _look(path, path.relative_to(folder).as_posix())


def _files(folder: Path, depth: int) -> Iterator[Path]:
    for entry in sorted(os.scandir(folder), key=lambda entry: entry.name):
        path = Path(entry.path)
        if entry.is_dir(follow_symlinks=False) and depth:
            yield from _files(path, depth - 1)
        else:
            yield path


def _look(path: Path, name: str) -> Submission:
    shown = name if name.isprintable() else ascii(name)[1:-1]
    if path.name.endswith(".json.bak"):
        return Submission(name=shown, file=None, doubt="that is a backup copy")
    if path.suffix.lower() != ".json":
        return Submission(name=shown, file=None, doubt=NOT_ANSWERS)
    try:
        file = parse(_read(path), shown)
    except SeatworkError as error:
        return Submission(name=shown, file=None, doubt=error.fault)
    except Exception as error:  # whatever it is, the others are still marked
        return Submission(
            name=shown, file=None, doubt=f"it could not be read ({type(error).__name__})"
        )
    if path.name != file.name:
        return Submission(name=shown, file=None, doubt=f"inside it says {file.name}")
    return Submission(name=shown, file=file)


def _read(path: Path) -> bytes:
    """Read a plain file within the limit; anything else is not opened, or not waited for."""
    flags = os.O_RDONLY | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_NONBLOCK", 0)
    flags |= getattr(os, "O_BINARY", 0)
    try:
        if not stat.S_ISREG(path.lstat().st_mode):
            raise SeatworkError(path.name, "it is a link or no plain file", "hand in the file")
        handle = os.open(path, flags)
    except OSError as error:
        reason = (error.strerror or "it cannot be opened").lower()
        raise SeatworkError(path.name, reason, "hand it in again") from error
    try:
        if not stat.S_ISREG(os.fstat(handle).st_mode):
            raise SeatworkError(path.name, "it is a link or no plain file", "hand in the file")
        return _all(handle)
    finally:
        os.close(handle)


def _all(handle: int) -> bytes:
    pieces, left = [], MOST_BYTES + 1
    while left > 0 and (piece := os.read(handle, left)):
        pieces.append(piece)
        left -= len(piece)
    return b"".join(pieces)
