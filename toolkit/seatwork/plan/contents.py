"""The kinds of line a plan has, in the order to read them, and their headings.

One list feeds the terminal, the card, the bench and the notebook. What a line is, its kind
says: nobody reads it back from the words.
"""

from collections.abc import Sequence
from itertools import groupby

from seatwork.rows import Blocks, Row

HEADINGS = {
    "stop": "STOP: settle this before anything is cut",
    "ask": "Ask before cutting",
    "set": "What to set",
    "oil": "",
    "tool": "Tools",
    "look": "Look at",
    "gage": "More readings",
    "setup": "How the part is held",
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


def blocks(rows: Sequence[Row]) -> Blocks:
    """Yield the lines of a plan under their headings, seat by seat where a kind has several.

    Parameters
    ----------
    rows : sequence of Row
        The lines in the order of `KINDS`.
    """
    asked = any(row.kind in ("stop", "ask") for row in rows)
    for (kind, place), found in groupby(rows, key=lambda row: (row.kind, row.place)):
        heading = NOT_YET if asked and kind == "set" else HEADINGS[kind]
        yield f"{heading}, {place}" if place else heading, tuple(found)
