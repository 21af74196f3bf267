"""Measures of the pages: code a learner meets, what is taught before it is asked, what returns.

Each function gives a number, or a list of what fails, and is held by `test_pages_teach.py`.
"""

import csv
import re
import tomllib
from collections import defaultdict
from collections.abc import Iterator
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import NamedTuple

import nbformat
from seatwork import opening
from seatwork.marking import given, sheets
from seatwork.questions import all_types
from seatwork.shop.folder import package_text

HOME = opening.source()
NUMBERED = re.compile(r"^\d\d_")
LEARNERS = [
    path for path in sorted((HOME / "notebooks").glob("*.ipynb")) if NUMBERED.match(path.name)
]
SHEETS = sorted((HOME / "exercises").glob("*.ipynb"))
ASKED = re.compile(r'\bsheet\("(\w+)"\)\.ask\("(\w+)"\)')
SETTING = re.compile(r"\b[a-z]+\.[a-z]+_[a-z_]+\b")
TAUGHT = Path(__file__).parent / "data" / "taught.csv"
REFUSED = {
    "blunt": "dull",
    "reckon": "figure",
    "hangs on a thin": "touches",
    "no seat does it": "no one seat fits",
}
"""Words of before, and the house word for each."""


class Asked(NamedTuple):
    """One question that a page asks: page without its number, sheet, place there, its type."""

    page: str
    sheet: str
    name: str
    kind: str


@cache
def cells(path: Path) -> list[nbformat.NotebookNode]:
    """Read the cells of a page, once."""
    return list(nbformat.read(path, as_version=4).cells)


def code_cells(paths: list[Path]) -> list[str]:
    """List the code cells of pages."""
    return [cell.source for path in paths for cell in cells(path) if cell.cell_type == "code"]


def code_lines(paths: list[Path]) -> int:
    """Count the lines of code on pages."""
    return sum(len(source.splitlines()) for source in code_cells(paths))


def multi_line_cells(paths: list[Path]) -> list[str]:
    """List the code cells with more than one line."""
    return [source for source in code_cells(paths) if len(source.splitlines()) > 1]


def told(cell: nbformat.NotebookNode) -> str:
    """Give what a learner reads of a cell: its words, and what it stores, without pictures."""
    texts = [cell.source] if cell.cell_type == "markdown" else []
    for output in cell.get("outputs", ()):
        data = output.get("data", {})
        texts += [output.get("text", ""), data.get("text/plain", ""), data.get("text/markdown", "")]
    return re.sub(r"\(data:[^)]*\)|\([^()\s]*\.ipynb[^)]*\)", "", "\n".join(texts))


def setting_names(paths: list[Path]) -> list[tuple[str, str]]:
    """List the names of settings that a learner reads."""
    return [
        (path.stem, name)
        for path in paths
        for cell in cells(path)
        for name in SETTING.findall(told(cell).replace("\\_", "_"))
    ]


def refused_words(paths: list[Path]) -> list[tuple[str, str]]:
    """List the words of before that stand where a house word belongs."""
    return [
        (path.stem, word)
        for path in paths
        for cell in cells(path)
        for word in REFUSED
        if re.search(rf"\b{word}", told(cell), re.IGNORECASE)
    ]


@cache
def order() -> dict[str, int]:
    """Give the place of each lesson in the course, by its name without a number."""
    listed = tomllib.loads(package_text("contents.toml"))["page"]
    lessons = [page["file"] for page in listed if NUMBERED.match(page["file"])]
    return {NUMBERED.sub("", file): place for place, file in enumerate(lessons)}


def asked() -> list[Asked]:
    """List the questions that the lessons ask, in the order of the course."""
    found = []
    for path in LEARNERS:
        for source in code_cells([path]):
            for sheet, name in ASKED.findall(source):
                kind = sheets.load(sheet).item(name).kind.id
                found.append(Asked(NUMBERED.sub("", path.stem), sheet, name, kind))
    return sorted(found, key=lambda one: order()[one.page])


@cache
def taught() -> dict[str, tuple[str, str]]:
    """Give the page that teaches each type, and the words there that do."""
    with TAUGHT.open(encoding="utf-8") as file:
        return {row["type"]: (row["page"], row["words"]) for row in csv.DictReader(file)}


def untaught() -> list[Asked]:
    """List the questions asked before the page that teaches them, or taught nowhere."""
    return [
        one
        for one in asked()
        if one.kind not in taught()
        or order().get(taught()[one.kind][0], len(order())) > order()[one.page]
    ]


def words_missing() -> list[tuple[str, str]]:
    """List the types whose teaching words do not stand on their page."""
    prose = {
        NUMBERED.sub("", path.stem): "\n".join(
            cell.source for cell in cells(path) if cell.cell_type == "markdown"
        )
        for path in LEARNERS
    }
    return [
        (kind, words)
        for kind, (page, words) in taught().items()
        if page in prose and words.casefold() not in prose[page].casefold()
    ]


def spaced() -> dict[str, float]:
    """Give the share of each lesson's questions whose skill was taught two or more lessons before.

    From the fifth page of the course on, which is the first that can.
    """
    pages = defaultdict(list)
    for one in asked():
        if one.kind in taught():
            away = order()[one.page] - order()[taught()[one.kind][0]]
            pages[one.page].append(away >= 2)
    return {page: sum(found) / len(found) for page, found in pages.items() if order()[page] >= 4}


def same_numbers() -> list[list[tuple[str, str]]]:
    """List the questions that ask the very same on two pages, with the numbers everyone gets."""
    seen = defaultdict(list)
    for path in sorted(sheets.folder().rglob("*.toml")):
        sheet = sheets.load(path.stem)
        for name, question in sheet.draw(given.practice(sheet.name).seed).items():
            seen[question.id, question.ask()].append((sheet.name, name))
    return [places for places in seen.values() if len(places) > 1]


def interleaved() -> dict[str, tuple[int, int]]:
    """Give for each worksheet how many neighbors share a code of the outline, and of how many."""
    found = {}
    for path in sorted(sheets.folder().glob("*.toml")):
        kinds = [set(item.kind.codes) for item in sheets.load(path.stem).items]
        found[path.stem] = (sum(bool(a & b) for a, b in pairwise(kinds)), len(kinds) - 1)
    return found


def unasked() -> list[str]:
    """List the question types that no lesson asks."""
    return sorted(set(all_types()) - {one.kind for one in asked()})


def needs(path: Path) -> set[str]:
    """Give the lessons that a worksheet says it needs, by name without a number."""
    line = re.search(r"Needs: (.*)", cells(path)[0].source)
    links = re.findall(r"notebooks/([a-z0-9_]+)\.ipynb", line[1]) if line else []
    return {NUMBERED.sub("", one) for one in links}


def lessons_of(sheet: str) -> Iterator[str]:
    """Yield the lesson that teaches each question of a worksheet; the start page is for all."""
    for item in sheets.load(sheet).items:
        page = taught().get(item.kind.id, ("", ""))[0]
        if page in order() and page != "start_here":
            yield page
