"""What was handed in: every file once, opened only if it can be an answer file."""

import os
import re
import stat
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

from seatwork.errors import SeatworkError
from seatwork.files import LOCK, refusal
from seatwork.marking.answers import MOST_BYTES, AnswerFile, parse
from seatwork.marking.messages import BEGINS, in_message
from seatwork.marking.names import LEARNER
from seatwork.marking.pick_file import END, is_pick_file

DEEPEST = 4
GUARDS = ("O_NOFOLLOW", "O_NONBLOCK", "O_BINARY")  # each where the system has it
FLAGS = os.O_RDONLY | sum(getattr(os, name, 0) for name in GUARDS)
COPY = re.compile(r"(\s?\(\d{1,3}\)|\s-\scopy|\scopy(\s\d{1,3})?)+$", re.IGNORECASE)
"""What browsers and desktops add to the name of a second copy."""
CODE = re.compile(r"(?<![a-z])[a-z]\d{2,6}(?!\d)", re.ASCII)
A_FORM = re.compile(r"[a-z]\d{2,6}-[a-z][a-z0-9_-]*-\d{1,2}", re.ASCII)
"""What the small letters of a file's name may say: a learner, and a form of a sheet."""
OURS = re.compile(r"\.[0-9a-f]{12}\.new|" + re.escape(LOCK) + ".*")
"""What a writer leaves beside its files: no paper."""
BACKUP = ".json.bak"
DOUBLE_END = re.compile(r"\.json\.txt$", re.IGNORECASE)
"""What some mail and phone programs make of an answer file's name."""
PAGES = (".ipynb", ".html", ".htm")
NOT_ANSWERS = "that is no answer file"
A_PAGE = "that is the page, which holds no answers; ask for the file in the folder answers"


class Submission(NamedTuple):
    """One file handed in.

    Parameters
    ----------
    name : str
        Its place in the folder.
    file : AnswerFile or None
        Its answers; None if it cannot be marked.
    doubt : str
        Why it cannot be marked; empty if it can.
    doubts : dict of str to str, optional
        Why single questions of it need a person, by question.
    came : {"screen", "paper"}
        As a file that a page saved, or typed back from paper.
    """

    name: str
    file: AnswerFile | None
    doubt: str = ""
    doubts: dict[str, str] | None = None
    came: str = "screen"


def collect(folder: Path) -> Iterator[Submission]:
    """Yield every file below a folder once, in the order of their names.

    A backup copy is passed over where its paper stands beside it, and a file of bets always.
    Links, pipes, folders that cannot be opened and the like are named and left closed; nothing
    is unpacked or run.
    """
    yield from _below(str(folder), "", DEEPEST)


def one_file(path: Path) -> Submission | None:
    """Return what was handed in as one file; None for a table typed back from paper.

    Parameters
    ----------
    path : Path
        An answer file, or a message that holds answers as text.
    """
    base = DOUBLE_END.sub(".json", path.name).lower()
    if base.endswith(".txt"):
        try:
            is_message = BEGINS.search(_read(str(path)).decode("utf-8", "replace")) is not None
        except SeatworkError:
            is_message = False
        return _look(str(path), path.name, path.name) if is_message else None
    others = (".json", ".bak", *PAGES)
    return _look(str(path), path.name, path.name) if base.endswith(others) else None


def _below(folder: str, place: str, depth: int) -> Iterator[Submission]:
    try:
        with os.scandir(folder) as found:
            entries = sorted(found, key=lambda entry: entry.name)
    except OSError as error:
        reason = refusal(folder, error).fault
        yield Submission(_shown(place or folder), None, f"the folder cannot be read: {reason}")
        return
    for entry in entries:
        name = place + entry.name
        if entry.is_dir(follow_symlinks=False) and depth:
            yield from _below(entry.path, name + "/", depth - 1)
        elif entry.is_dir(follow_symlinks=False):
            yield Submission(_shown(name + "/"), None, "its folders lie too deep; not opened")
        elif not _is_no_paper(entry, entries):
            yield _look(entry.path, entry.name, name)


def _is_no_paper(entry: os.DirEntry[str], entries: list[os.DirEntry[str]]) -> bool:
    """Tell whether a file is none that was handed in to be marked."""
    ours = OURS.fullmatch(entry.name) is not None or _has_its_paper(entry.name, entries)
    return ours or _holds_bets(entry.path, entry.name)


def _holds_bets(path: str, base: str) -> bool:
    """Tell whether a file holds a learner's bets, which are no answers and no marks."""
    if not base.endswith(END):
        return False
    try:
        return is_pick_file(base, _read(path))
    except (OSError, SeatworkError):
        return False


def _has_its_paper(name: str, entries: list[os.DirEntry[str]]) -> bool:
    """Whether a file is the backup copy of a paper that stands beside it."""
    return name.endswith(BACKUP) and any(entry.name == name[:-4] for entry in entries)


def _shown(name: str) -> str:
    return name if name.isprintable() else ascii(name)[1:-1]


def _look(path: str, base: str, name: str) -> Submission:
    shown = _shown(name)
    if base.endswith(BACKUP):
        return Submission(shown, None, "that is a backup copy")
    base = DOUBLE_END.sub(".json", base)
    is_message = base.lower().endswith(".txt")
    if not base.lower().endswith(".json") and not is_message:
        fault = A_PAGE if base.lower().endswith(PAGES) else NOT_ANSWERS
        return Submission(shown, None, fault)
    try:
        raw = _read(path)
        file = parse(in_message(raw) if is_message else raw, shown)
    except SeatworkError as error:
        return Submission(shown, None, error.fault)
    except Exception as error:  # whatever it is, the others are still marked
        return Submission(shown, None, f"it could not be read ({type(error).__name__})")
    if not is_message and not _is_its_name(base, file):
        return Submission(shown, None, f"inside it says {file.name}")
    owner = owner_of(name)
    if owner not in ("", file.learner):
        return Submission(shown, None, f"{file.learner}'s paper lies in {owner}'s folder")
    return Submission(shown, file)


def owner_of(name: str) -> str:
    """Return the learner whose folder a file lies in, the innermost that is one; else nothing.

    Examples
    --------
    >>> owner_of("room 3/L07/answers.json"), owner_of("answers.json")
    ('L07', '')
    """
    codes = [part.upper() for part in name.split("/")[:-1]]
    return next((code for code in reversed(codes) if LEARNER.fullmatch(code)), "")


def _is_its_name(base: str, file: AnswerFile) -> bool:
    """Whether a file's name says nothing else than what is inside.

    A name given by hand, such as homework.json, says nothing; another learner's code, or another
    form than the one inside, is for a person.
    """
    stem = COPY.sub("", base[: -len(".json")]).casefold()
    if A_FORM.fullmatch(stem):
        return stem == file.name.removesuffix(".json").casefold()
    return all(code == file.learner.casefold() for code in CODE.findall(stem))


def _read(path: str) -> bytes:
    """Read a plain file within the limit; anything else is not opened, or not waited for."""
    try:
        if not stat.S_ISREG(os.lstat(path).st_mode):
            raise _no_plain_file(path)
        handle = os.open(path, FLAGS)
    except OSError as error:
        reason = (error.strerror or "it cannot be opened").lower()
        raise SeatworkError(path, reason, "hand it in again") from error
    try:
        found = os.fstat(handle)
        if not stat.S_ISREG(found.st_mode):
            raise _no_plain_file(path)
        return _all(handle, min(found.st_size, MOST_BYTES))
    finally:
        os.close(handle)


def _no_plain_file(path: str) -> SeatworkError:
    return SeatworkError(path, "it is a link or no plain file", "hand in the file itself")


def _all(handle: int, size: int) -> bytes:
    """Read a file of the length it says; further, to the limit, if it is not that long."""
    raw = os.read(handle, size + 1)
    while len(raw) != size and len(raw) <= MOST_BYTES:
        piece = os.read(handle, MOST_BYTES + 1 - len(raw))
        if not piece:
            break
        raw += piece
    return raw
