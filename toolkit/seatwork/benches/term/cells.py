"""The class as cells to press, and what stands below when one is pressed; all of it text."""

import re
from collections.abc import Sequence
from typing import Any

from seatwork.benches.part.blocks import Block, block
from seatwork.record import CellFacts, Picture, Report
from seatwork.record.behind_cell import Asked
from seatwork.record.class_picture import LEGEND
from seatwork.record.deciding import SHORT
from seatwork.record.history import Line

SCORED = re.compile(r"(\d+)([+-])(\*?)( r\d+)?( \?)?( \.\.\.)?")
"""How a cell with points shows."""
HEADS = ("question", "asked", "typed", "right", "points", "what there is to say")
NOTHING = "nothing typed"


def in_words(cell: str) -> str:
    """Say a cell of the class's picture without its signs.

    Examples
    --------
    >>> in_words("78-* r2")
    '78 percent, not yet, after the day, from re-test 2'
    >>> in_words("not here")
    'not here'
    """
    found = SCORED.fullmatch(cell)
    if found is None:
        return {"?": "a person must look", "": "not handed out"}.get(cell, cell)
    percent, sign, late, again, looks, open_ = found.groups()
    said = [
        f"{percent} percent",
        "passed" if sign == "+" else "not yet",
        "after the day" if late else "",
        f"from re-test {again.strip(' r')}" if again else "",
        "a person must look" if looks else "",
        "re-test handed out" if open_ else "",
    ]
    return ", ".join(filter(None, said))


def grid_of(picture: Picture) -> dict[str, Any]:
    """Return the class as the page shows it: a caption, heads, and rows of cells.

    A cell with a ``label`` can be pressed; the label says its place and its state in words.
    """
    head, *rows = picture.table()
    return {
        "caption": f"The class on {picture.day}. The {picture.counts} sitting counts. {LEGEND}.",
        "heads": list(head),
        "rows": [_row(picture, row) for row in rows],
    }


def _row(picture: Picture, row: Sequence[str]) -> list[dict[str, str]]:
    learner, *cells = row
    shown = [{"text": learner, "label": f"{learner}: the report"}]
    for name, cell in zip(picture.sheets, cells, strict=False):
        label = f"{learner}, {name}: {in_words(cell)}" if cell else ""
        shown.append({"text": cell, "label": label})
    return [*shown, *({"text": cell, "label": ""} for cell in cells[len(picture.sheets) :])]


def cell_blocks(facts: CellFacts) -> list[Block]:
    """Return what lies behind a cell: each sitting's paper, then the history."""
    blocks = []
    for one in facts.sittings:
        heading = f"{facts.learner}, {facts.sheet}, sitting {one.sitting}: {one}"
        rows = [_question(asked) for asked in one.asked]
        blocks.append(block(heading, rows, heads=HEADS if rows else ()))
    return [*blocks, history_block(facts.history)]


def _question(asked: Asked) -> tuple[str, ...]:
    points = "?" if asked.points is None else f"{asked.points:g}"
    typed = "; ".join(text or NOTHING for text in asked.typed) or NOTHING
    right = "; ".join(asked.right)
    said = "; ".join(asked.said)
    return asked.name, asked.text, typed, right, f"{points} of {asked.of:g}", said


def history_block(lines: Sequence[Line]) -> Block:
    """Return the facts in the order in which they follow, and whether each counts."""
    rows = [(line.id[:SHORT], line.day, line.author, line.text, _state(line)) for line in lines]
    return block("History", rows, heads=("id", "day", "by", "what", ""))


def _state(line: Line) -> str:
    return "counts" if line.counts else "does not count now" if line.stands else "taken back"


def report_blocks(report: Report) -> list[Block]:
    """Return a learner's report: a line is a row."""
    first, *lines = report.lines()
    return [block(first, [(line,) for line in lines])]
