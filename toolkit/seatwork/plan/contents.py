"""The kinds of line a plan has, in the order to read them, and their headings.

One list feeds the terminal, the card, the bench and the notebook. What a line is, its kind
says: nobody reads it back from the words.
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import groupby

from seatwork.rows import Blocks, Row, Rows

HEADINGS = {
    "stop": "STOP: settle this before anything is cut",
    "ask": "Ask before cutting",
    "set": "What to set",
    "oil": "Cut with",
    "tool": "Tools",
    "look": "Look at",
    "gage": "More readings",
    "setup": "How the part is held",
    "how": "By hand, and how",
    "note": "At the machine",
    "assumed": "Assumed, by house rule",
    "read": "Read as",
    "memory": "From memory: check your copy",
    "unused": "Said, not used in cutting the seat",
    "caution": "Take care",
    "last": "",
    "size": "Why: sizes",
    "check": "Why: readings of the table, both systems",
    "travel": "Why: stops",
    "why": "Why: steps",
    "holds": "Why: looked at, and holds",
    "rule": "House rules in force",
    "source": "Sources",
}
"""Each kind of line with the heading it stands under, in the order to read them."""

KINDS = tuple(HEADINGS)

NOT_YET = "Not yet: what to set once that is settled"
"""Heading of what to set, while something must be asked first."""

FIRST = ("stop", "ask")
"""Kinds that must be settled before anything is cut."""

WHY = ("size", "check", "travel", "why", "holds", "rule")
"""Kinds that say why; they keep each seat's own order."""

UNITS = {"inch": "inches, feed in in/rev", "metric": "millimeters, feed in mm/rev"}


def set_heading(rows: Sequence[Row], system: str) -> str:
    """Return the heading of what to set: its units, and whether it is not yet to be set.

    Parameters
    ----------
    rows : sequence of Row
        All lines of the plan.
    system : {"inch", "metric"}
        System of the print.
    """
    asked = any(row.kind in FIRST for row in rows)
    return f"{NOT_YET if asked else HEADINGS['set']} ({UNITS[system]})"


def blocks(rows: Rows, system: str, seats: set[str] | None = None) -> Blocks:
    """Yield the lines of a plan under their headings, seat by seat where it has several.

    Parameters
    ----------
    rows : Rows
        The lines in the order of `KINDS`.
    system : {"inch", "metric"}
        System of the print.
    seats : set of str, optional
        The places of all seats of the plan; those of the lines if not given.
    """
    seats = seats or {row.place for row in rows if row.place}
    for kind in KINDS:
        every = rows.of(kind)
        alike = every if kind in (*WHY, "set") else once(every, seats)
        heading = set_heading(rows, system) if kind == "set" else HEADINGS[kind]
        for place, found in groupby(alike, key=lambda row: row.place):
            named = place if kind == "set" or len(seats) > 1 else ""
            yield ", ".join(one for one in (heading, named) if one), tuple(found)


def once(rows: Sequence[Row], seats: set[str]) -> Rows:
    """Return each line once: what every seat says first, what several say under their names.

    Parameters
    ----------
    rows : sequence of Row
        Lines of one kind.
    seats : set of str
        The places of all seats.
    """
    places: dict[Row, list[str]] = {}
    for row in rows:
        places.setdefault(replace(row, place=""), []).append(row.place)
    found = [
        replace(row, place="" if set(named) == seats else "; ".join(dict.fromkeys(named)))
        for row, named in places.items()
    ]
    return Rows(sorted(found, key=lambda row: bool(row.place)))
