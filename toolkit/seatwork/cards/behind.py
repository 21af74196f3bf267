"""Behind the card: everything else the plan says, line by line under its headings."""

from collections.abc import Iterator

from seatwork.cards.blocks import caption
from seatwork.cards.pages import Pages
from seatwork.cards.setups import Card
from seatwork.plan import Plan
from seatwork.plan.contents import KINDS, blocks
from seatwork.rows import Row, Rows

SIZE = 10.5
"""Type of what is read at a desk, not at the machine [pt]."""

ON_THE_FRONT = ("stop", "ask", "set", "look", "setup", "check", "gage", "caution", "last", "size")
BARE = ("note", "source", "unused")
"""Kinds whose label says no more than their heading."""

ONCE = "What holds for several seats stands at the first of them."


class Behind:
    """What stands behind the cards of a plan, without what the cards say.

    Parameters
    ----------
    plan : Plan
        The plan.
    rows : Rows
        What it says.
    """

    def __init__(self, plan: Plan, rows: Rows) -> None:
        self.plan, self.rows = plan, rows
        self._said: set[tuple[str, str, str]] = set()

    def leave_out(self, card: Card) -> None:
        """Leave out what a card says in full: travel and first advice of the seats cut in it."""
        for seat in card.cut:
            rows = card.travels(seat, self.plan.callout.system)
            self._said |= {(seat.place, row.label, row.text) for row in rows}
            self._said |= {(seat.place, "note", text) for text in seat.advice[:1]}

    def add(self, pages: Pages) -> None:
        """Set everything else after what stands on the last page."""
        note = " ".join(self.plan.callout.text.split())
        pages.text(f"Behind the card: {note}", size=14.0, bold=True)
        rows = [row for row in self.rows if self._is_left(row)]
        once = list(_each_once(rows))
        if len(once) < len(rows):
            pages.text(ONCE, size=SIZE)
        seats = {seat.place for seat in self.plan.seats}
        for title, lines in blocks(Rows(once), self.plan.callout.system, seats):
            caption(pages, title, size=SIZE)
            for row in lines:
                pages.text(row.text if row.kind in BARE else str(row), size=SIZE, indent=0.15)

    def _is_left(self, row: Row) -> bool:
        if row.kind in ON_THE_FRONT or row.kind not in KINDS:
            return False
        return (row.place, row.label, row.text) not in self._said


def _each_once(rows: list[Row]) -> Iterator[Row]:
    """Yield lines, those that several seats share at the first of them alone."""
    told: set[tuple[str, str, str]] = set()
    first: dict[tuple[str, str, str], str] = {}
    for row in rows:
        key = (row.kind, row.label, row.text)
        if first.setdefault(key, row.place) == row.place or key not in told:
            yield row
        told.add(key)
