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
    """

    folder: Path
    added: tuple[str, ...]
    updated: tuple[str, ...]
    left_alone: tuple[str, ...]


@explained
def deliver(folder: Path) -> Delivery:
    """Make the workbook folder, or bring it up to date, and leave the reader's work alone.

    Parameters
    ----------
    folder : Path
        Where the workbook is or shall be. A file the reader changed is never written;
        one the reader removed comes back.

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
    for place, content in originals():
        mark = fingerprint(content, Path(place).suffix)
        outcome = _outcome(folder / place, mark, before.get(place))
        if outcome in ("added", "updated"):
            write(folder / place, content)
        if outcome != "left_alone":
            after[place] = mark
        done[outcome].append(place)
    if after != before:
        write(folder / RECORD, json.dumps(after, indent=1, sort_keys=True).encode())
    del done["current"]
    return Delivery(folder=folder, **{name: tuple(places) for name, places in done.items()})


def _outcome(path: Path, mark: str, delivered: str | None) -> str:
    """Say what to do with one file: its own mark is compared with old and new originals."""
    if not path.exists():
        return "added"
    try:
        own = fingerprint(path.read_bytes(), path.suffix)
    except OSError as error:
        raise refusal(path, error) from error
    if own == mark or delivered == mark:
        return "current"
    return "updated" if own == delivered else "left_alone"
