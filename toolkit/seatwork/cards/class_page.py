"""The class on paper: who stands where, the slips of the class, and who needs what next."""

import re
from collections.abc import Mapping

from seatwork.cards.blocks import caption, heading
from seatwork.cards.pages import Pages
from seatwork.record.class_picture import LEGEND, Picture

NAMES, PARTS, SIGNED = 1.7, 0.75, 1.7
"""Widths of the columns beside the sheets [in]."""
CODE = re.compile(r"\b[A-Z]\d{2,6}\b", re.ASCII)
MOST = 6
"""Sheets side by side; more go on below."""


def class_page(
    picture: Picture, *, names: Mapping[str, str] | None = None, paper: str = ""
) -> Pages:
    """Set the picture of a class, black on white, on pages that lie on their side.

    Parameters
    ----------
    picture : Picture
        As `seatwork.record.picture` gives it.
    names : mapping of str to str, optional
        Names by learner code, from the instructor's own list.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    """
    pages = Pages(paper, foot=f"The class on {picture.day}", wide=True)
    counts = f"The {picture.counts} sitting counts (house rule record.counts). {LEGEND}"
    heading(pages, f"The class on {picture.day}", counts)
    head, *rows = picture.table(names)
    for start in range(0, max(len(picture.sheets), 1), MOST):
        some = slice(1 + start, 1 + min(start + MOST, len(picture.sheets)))
        count = len(head[some])
        wide = (pages.room - NAMES - PARTS - SIGNED) / max(count, 1)
        columns = [NAMES, *[wide] * count, PARTS, SIGNED]
        table = [(row[0], *row[some], *row[-2:]) for row in (head, *rows)]
        pages.table([[_broken(cell) for cell in row] for row in table], columns, grid=True)
        pages.space()
    for lines in (picture.slip_lines(), picture.need_lines()):
        caption(pages, lines[0])
        for line in lines[1:]:
            pages.text(_named(line, names or {}), indent=0.15)
    return pages


def _broken(cell: str) -> str:
    """Let a sheet's name break at its underlines."""
    return cell.replace("_", " ")


def _named(line: str, names: Mapping[str, str]) -> str:
    """Put names in place of codes."""
    return CODE.sub(lambda found: names.get(found[0], found[0]), line)
