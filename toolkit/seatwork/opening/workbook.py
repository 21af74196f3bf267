"""The workbook folder: lessons, worksheets, shop lists and answers of one reader."""

import json
from dataclasses import dataclass
from pathlib import Path

from seatwork.arguments import explained
from seatwork.errors import SeatworkError
from seatwork.files import refusal, write
from seatwork.files.writing import UNDONE
from seatwork.opening.delivered import RECORD, fingerprint, recorded
from seatwork.opening.origin import originals
from seatwork.shop import find
from seatwork.shop.folder import FORMAT, MARKER
from seatwork.shop.lists.pages import renamed

START = "notebooks/00_start_here.ipynb"
OWN_FOLDERS = ("notebooks", "exercises", "shop", "questions", "answers")
MARKER_TEXT = f"""\
# This folder is a seatwork workbook. Keep this file: seatwork finds the folder by it.
format = {FORMAT}
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Delivery:
    """What laying out a workbook did.

    Parameters
    ----------
    folder : Path
        The workbook folder, absolute.
    added, updated, left_alone : tuple of str
        Places in the workbook: new ones, untouched ones brought up to date, and files
        that the reader changed and a newer original exists for.
    moved, kept_beside : tuple of (str, str)
        Pages with a new file name, each with its former place and its new one: untouched ones,
        whose former file went, and changed ones, which stay beside the new page.
    """

    folder: Path
    added: tuple[str, ...]
    updated: tuple[str, ...]
    left_alone: tuple[str, ...]
    moved: tuple[tuple[str, str], ...] = ()
    kept_beside: tuple[tuple[str, str], ...] = ()


@explained
def deliver(folder: Path) -> Delivery:
    """Make the workbook folder, or bring it up to date, and leave the reader's work alone.

    Parameters
    ----------
    folder : Path
        Where the workbook is or shall be. A file the reader changed is never written;
        one the reader removed comes back. A page under a name that it no longer has goes if it
        is untouched, and stays beside the new one if it was changed.

    Returns
    -------
    Delivery
        What was added, updated and left alone.

    Raises
    ------
    SeatworkError
        If the folder holds other things, was made by a newer seatwork, or cannot be written.
    """
    folder = folder.expanduser().absolute()
    try:
        _check_place(folder)
        folder.mkdir(parents=True, exist_ok=True)
        if not (folder / MARKER).exists():  # first, so that what is begun can be finished
            write(folder / MARKER, MARKER_TEXT.encode())
        for name in OWN_FOLDERS:
            (folder / name).mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise refusal(folder, error) from error
    return _lay_out(folder)


def _check_place(folder: Path) -> None:
    if (folder / MARKER).is_file():
        find(folder)  # refuses a marker of another format
    elif (
        folder.is_dir()
        and any(map(_of_others, folder.iterdir()))
        and not (folder / RECORD).exists()
    ):
        raise SeatworkError(
            str(folder), "this folder holds other things already", "name a new or an empty folder"
        )


def _of_others(path: Path) -> bool:
    """Tell whether a file is another's, and no half-written one of ours."""
    return not (path.name.startswith(".") and path.suffix == UNDONE)


def _lay_out(folder: Path) -> Delivery:
    before = recorded(folder)
    after = dict(before)
    done: dict[str, list[str]] = {"added": [], "updated": [], "left_alone": [], "current": []}
    moved, beside = _former(folder, before)
    for place, content in originals():
        mark = fingerprint(content, Path(place).suffix)
        outcome = _outcome(folder / place, mark, before.get(place))
        if outcome in ("added", "updated"):
            write(folder / place, content)
        if outcome != "left_alone":
            after[place] = mark
        done[outcome].append(place)
    moved = tuple(pair for pair in moved if pair[1] not in done["left_alone"])
    for former, _ in moved:  # only now, when the new page stands
        _remove(folder / former)
        after.pop(former, None)
    if after != before:
        write(folder / RECORD, json.dumps(after, indent=1, sort_keys=True).encode())
    del done["current"]
    places = {name: tuple(places) for name, places in done.items()}
    return Delivery(folder=folder, moved=moved, kept_beside=beside, **places)


Moves = tuple[tuple[str, str], ...]


def _former(folder: Path, before: dict[str, str]) -> tuple[Moves, Moves]:
    """List the pages under a name they no longer have: untouched ones, and changed ones."""
    untouched: list[tuple[str, str]] = []
    changed: list[tuple[str, str]] = []
    for old, new in renamed().items():
        former, now = (f"notebooks/{name}.ipynb" for name in (old, new))
        if not (folder / former).is_file():
            continue
        known = before.get(former)
        own = _own_mark(folder / former)
        (untouched if known is not None and own == known else changed).append((former, now))
    return tuple(untouched), tuple(changed)


def _remove(path: Path) -> None:
    try:
        path.unlink(missing_ok=True)
    except OSError as error:
        raise refusal(path, error) from error


def _outcome(path: Path, mark: str, delivered: str | None) -> str:
    """Say what to do with one file: its own mark is compared with old and new originals."""
    if not path.exists():
        return "added"
    own = _own_mark(path)
    if own == mark or delivered == mark:
        return "current"
    return "updated" if own == delivered else "left_alone"


def _own_mark(path: Path) -> str:
    """Hash a file as it lies in the workbook."""
    try:
        return fingerprint(path.read_bytes(), path.suffix)
    except OSError as error:
        raise refusal(path, error) from error
