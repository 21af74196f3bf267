"""What each page of the course holds, read from the page itself: minutes, bets, questions, needs.

A notebook is read as data and never run.
"""

import json
import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.sheets import folder as sheets_folder
from seatwork.shop.folder import package_text
from seatwork.shop.lists.pages import CONTENTS, present

NUMBER = re.compile(r"^\d+_")
TIME = re.compile(r"\*\*Time:\*\*\s*(?:about )?(\d+) minutes")
STOP = re.compile(r"good place to stop(?: after (\d+) minutes)?", re.IGNORECASE)
NEEDS = re.compile(r"\*\*You need:\*\*(.*?)\*\*Time:\*\*", re.DOTALL)
LINK = re.compile(r"\]\((\w+)\.ipynb")
ASK = re.compile(r"sheet\(\s*[\"'](\w+)[\"'].*?\.ask\(\s*[\"'](\w+)[\"']")
PICK = re.compile(r"\bpick\(\s*[\"']([\w-]+)[\"']")
PARTS = ("all", "first", "rest")
LARGEST = 5_000_000  # bytes; a lesson has at most 300,000


@dataclass(frozen=True, slots=True, kw_only=True)
class LessonPage:
    """A page of the course.

    Parameters
    ----------
    file, title : str
        Name of its file without ending, and its title.
    codes : tuple of str
        Codes of the outline that it serves.
    minutes : int
        What the whole page takes [min].
    stop : int
        After how many of them there is a place to stop; half of them where none is marked [min].
    needs : tuple of str
        Pages that it says it needs, by their keys.
    bets, asked : tuple of (str, bool) and tuple of (str, str, bool)
        Names of its bets, and sheet and place of its questions; whether before the stop.
    """

    file: str
    title: str
    codes: tuple[str, ...]
    minutes: int
    stop: int
    needs: tuple[str, ...]
    bets: tuple[tuple[str, bool], ...]
    asked: tuple[tuple[str, str, bool], ...]

    @property
    def key(self) -> str:
        """Its file name without its number, which may change."""
        return key_of(self.file)

    def long(self, part: str) -> int:
        """Give what a part of it takes [min]: "all", "first" or "rest"."""
        return {"all": self.minutes, "first": self.stop, "rest": self.minutes - self.stop}[part]

    def bets_of(self, part: str) -> tuple[str, ...]:
        """Name the bets of a part."""
        return tuple(name for name, early in self.bets if _in(part, early=early))

    def asked_of(self, part: str) -> tuple[tuple[str, str], ...]:
        """Name sheet and place of the questions of a part."""
        return tuple((sheet, place) for sheet, place, early in self.asked if _in(part, early=early))


def _in(part: str, *, early: bool) -> bool:
    """Tell whether what stands before the stop, or behind it, is in a part."""
    return part == "all" or early is (part == "first")


def key_of(file: str) -> str:
    """Return the name of a page without its number.

    Examples
    --------
    >>> key_of("02_angle_standards"), key_of("my_part")
    ('angle_standards', 'my_part')
    """
    return NUMBER.sub("", file)


def notebooks(folder: Path | None = None) -> Path:
    """Return the folder of the pages: the workbook's, else the one that came along."""
    return (folder or sheets_folder().parents[1]) / "notebooks"


def lesson_pages(folder: Path | None = None) -> dict[str, LessonPage]:
    """Read every lesson of the list of contents whose page is there.

    Parameters
    ----------
    folder : Path, optional
        A workbook folder; found if not given.

    Returns
    -------
    dict of str to LessonPage
        By key, in the order of the list.

    Raises
    ------
    SeatworkError
        If a page cannot be read, or says no time.
    """
    listed = tomllib.loads(package_text(CONTENTS))["page"]
    home = notebooks(folder)
    found = {}
    for entry in listed:
        path = home / f"{entry['file']}.ipynb"
        if "for" not in entry and path.is_file():
            page = page_of(entry, _cells(path, path.stat().st_mtime_ns), str(path.name))
            found[page.key] = page
    return found


def page_of(entry: Mapping[str, Any], cells: tuple[tuple[str, str], ...], name: str) -> LessonPage:
    """Return what a page holds.

    Parameters
    ----------
    entry : mapping
        Its place in the list of contents: file, title, codes.
    cells : tuple of (str, str)
        Kind and source of each cell.
    name : str
        The file that an error names.

    Raises
    ------
    SeatworkError
        If the page says no time.
    """
    first = cells[0][1] if cells else ""
    time = TIME.search(first)
    if not time:
        raise SeatworkError(name, "its first cell says no **Time:** in minutes", "write it there")
    half, stop = _stop(cells, int(time[1]))
    needs = NEEDS.search(first)
    code = [(number, source) for number, (kind, source) in enumerate(cells) if kind == "code"]
    return LessonPage(
        file=entry["file"],
        title=entry["title"],
        codes=tuple(entry.get("codes", ())),
        minutes=int(time[1]),
        stop=stop,
        needs=tuple(key_of(present(one)) for one in LINK.findall(needs[1] if needs else "")),
        bets=tuple((name, at <= half) for at, source in code for name in PICK.findall(source)),
        asked=tuple((*found, at <= half) for at, source in code for found in ASK.findall(source)),
    )


def _stop(cells: tuple[tuple[str, str], ...], minutes: int) -> tuple[int, int]:
    """Give the cell and the minute of the place to stop; the middle where none is marked."""
    for number, (kind, source) in enumerate(cells):
        marked = STOP.search(source) if kind == "markdown" and number else None
        if marked:
            return number, int(marked[1] or (minutes + 1) // 2)
    return len(cells) // 2, (minutes + 1) // 2


@lru_cache(maxsize=64)
def _cells(path: Path, _saved: int) -> tuple[tuple[str, str], ...]:
    """Return kind and source of each cell of a notebook; read again when it was saved."""
    if path.stat().st_size > LARGEST:
        raise SeatworkError(path.name, "the file is far too large for a page", "check it")
    try:
        cells = json.loads(path.read_text(encoding="utf-8"))["cells"]
        return tuple((str(cell["cell_type"]), _source(cell["source"])) for cell in cells)
    except (ValueError, KeyError, TypeError, RecursionError) as error:
        raise SeatworkError(path.name, "that is no notebook", "open it and save it") from error


def _source(source: object) -> str:
    return "".join(map(str, source)) if isinstance(source, list) else str(source)
