"""A plan as a page for the terminal: what to set first, a STOP before it, then the rest."""

import textwrap
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from io import StringIO
from itertools import groupby

from rich.console import Console
from rich.table import Table

from seatwork.plan.contents import FIRST, HEADINGS, WHY, once, set_heading
from seatwork.plan.plans import Plan
from seatwork.rows import Row, Rows

LEAST, MOST = 80, 100
SHORT = (
    "oil",
    "tool",
    "look",
    "gage",
    "setup",
    "how",
    "note",
    "assumed",
    "read",
    "memory",
    "unused",
    "caution",
    "last",
)
BARE = ("oil", "note", "assumed", "read", "memory", "unused", "rule", "last")
"""Kinds whose lines are whole sentences without their label."""

CLOSING = ("caution", "last")
SOURCES = ("source",)
WIDTHS = {"": 21, "tool": 13, "rev/min": 7, "feed": 5, "stop": 12, "check": 17}
"""Columns of the table at the least width; what a wider terminal has goes to stop and check."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """Lines of one kind under their heading.

    Parameters
    ----------
    kind : str
        Kind of its lines, a key of `seatwork.plan.contents.HEADINGS`; empty for the note itself.
    heading : tuple of str
        The heading; most have one line.
    lines : list of str
        What stands under it.
    """

    kind: str
    heading: tuple[str, ...]
    lines: list[str]

    @property
    def first(self) -> bool:
        """Whether it must be settled before anything is cut."""
        return self.kind in FIRST


def page(plan: Plan, *, width: int = LEAST, why: bool = False, sources: bool = False) -> list[str]:
    """Return a plan as the lines of its sections, with a blank one after each.

    Parameters
    ----------
    plan : Plan
        The plan.
    width : int
        Columns of the terminal; a page takes 80 to 100 of them.
    why : bool
        Whether sizes, sums, what holds and the house rules follow.
    sources : bool
        Whether the sources follow.
    """
    every = sections(plan, width=width, why=why, sources=sources)
    return [line for one in every for line in (*one.heading, *one.lines, "")]


def sections(
    plan: Plan,
    *,
    width: int = LEAST,
    why: bool = False,
    sources: bool = False,
    left_out: Sequence[str] = (),
) -> Iterator[Section]:
    """Yield the sections of the page: the note, a STOP, what to set, then the rest.

    Parameters
    ----------
    plan, width, why, sources
        As for `page`.
    left_out : sequence of str
        Kinds of line that stand elsewhere.
    """
    wide = max(LEAST, min(width, MOST))
    rows, seats = plan.rows(), {seat.place for seat in plan.seats}
    note = _wrapped(" ".join(plan.callout.text.split()), wide, "")
    where = [f"  {plan.material}, {plan.machine}"]
    yield Section(kind="", heading=tuple(note), lines=where)
    late = (*(WHY if why else ()), *(SOURCES if sources else ()))
    for kind in (*FIRST, "set", *SHORT, *late):
        found = rows.of(kind) if kind not in left_out else Rows()
        if kind == "set" and found:
            yield _to_set(found, set_heading(rows, plan.callout.system), wide)
        elif found:
            heading = (HEADINGS[kind],) if HEADINGS[kind] else ()
            found = found if kind in WHY else once(found, seats)
            yield Section(kind=kind, heading=heading, lines=_under_seats(found, seats, wide))


def closing_sections(plans: Iterable[Plan], *, width: int = LEAST) -> Iterator[Section]:
    """Yield the cautions of several plans, each once, and who comes first.

    Parameters
    ----------
    plans : iterable of Plan
        The plans of a part.
    width : int
        Columns of the terminal.
    """
    every = [row for plan in plans for row in plan.rows()]
    for kind in CLOSING:
        found = list(dict.fromkeys(row for row in every if row.kind == kind))
        lines = [line for row in found for line in _line(row, max(LEAST, min(width, MOST)))]
        if lines:
            heading = (HEADINGS[kind],) if HEADINGS[kind] else ()
            yield Section(kind=kind, heading=heading, lines=lines)


def _to_set(rows: Sequence[Row], heading: str, wide: int) -> Section:
    """Return the table of what to set, each seat under its name."""
    lines: list[str] = []
    for number, (place, found) in enumerate(groupby(rows, key=lambda row: row.place)):
        lines += [f"  {place}", *_table(list(found), wide, heads=not number)]
    return Section(kind="set", heading=(heading,), lines=lines)


def _table(rows: Sequence[Row], wide: int, *, heads: bool) -> list[str]:
    table = Table(box=None, show_header=heads, pad_edge=False, padding=(0, 1, 0, 0))
    more = (wide - LEAST) // 2
    for name, width in WIDTHS.items():
        right = name in ("rev/min", "feed")
        across = width + (more if name in ("stop", "check") else 0)
        table.add_column(name or "step", width=across, justify="right" if right else "left")
    for row in rows:
        cells = dict(row.cells)
        table.add_row(row.label, *(cells[name] for name in WIDTHS if name))
    console = Console(file=StringIO(), width=wide, color_system=None, highlight=False, markup=False)
    console.print(table)
    return [line.rstrip() for line in console.file.getvalue().splitlines()]  # type: ignore[attr-defined]


def _under_seats(rows: Sequence[Row], seats: set[str], wide: int) -> list[str]:
    """Return the lines of a kind; each under its seat where the plan has several."""
    lines: list[str] = []
    for place, found in groupby(rows, key=lambda row: row.place):
        lines += _wrapped(place, wide, "  ") if place and len(seats) > 1 else []
        for row in found:
            lines += _line(row, wide)
    return lines


def _line(row: Row, wide: int) -> Iterator[str]:
    text = row.text if row.kind in BARE else f"{row.label}: {row.text}"
    if row.kind == "setup":  # its steps stand in the table
        text = f"{row.label}: {'. '.join(f'{head}: {words}' for head, words in row.cells)}."
    yield from _wrapped(text, wide, "  ")


def _wrapped(text: str, wide: int, indent: str) -> list[str]:
    return textwrap.wrap(
        text, wide, initial_indent=indent, subsequent_indent=f"{indent}  " if indent else ""
    )
