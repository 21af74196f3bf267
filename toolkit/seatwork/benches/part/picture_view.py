"""The live picture of a part: the section of the note being looked at, and its sizes beside it."""

from typing import Any

from seatwork.benches.part.desk import PartDesk
from seatwork.benches.part.picture import picture_of, text_of
from seatwork.drawings.parts.hole_section import HoleSection
from seatwork.drawings.strokes.hole_walls import CutHole
from seatwork.live.picture import LivePicture
from seatwork.live.view import LiveView
from seatwork.plan import SeatPlan
from seatwork.plan.rows import size_rows

TITLE = "My part: from the print note to the measured part"


class PartPicture:
    """Keeps a live view at what a part has come to.

    Parameters
    ----------
    part : PartDesk
        What is shown.
    """

    def __init__(self, part: PartDesk) -> None:
        self._part = part
        self._dark, self._scale, self._number = False, 1.0, 0
        self._shown: Any = None
        self.live = LiveView(self._told)
        self.follow()

    def follow(self) -> None:
        """Show what the part has come to, if it is not shown yet."""
        drawn, rows = self._drawn(), self._rows()
        if (drawn, rows) != self._shown:
            self._shown = drawn, rows
            self._draw(drawn, rows)
        self.live.follow({"trouble": self._part.trouble, "quiet": True})

    def _drawn(self) -> CutHole:
        """Return what is drawn; an empty page with its words where there is no one hole."""
        found, system = self._part.seat, self._part.system
        drawn = picture_of(found, system)
        if drawn is not None:
            return drawn
        words = (
            "no plan yet: see below" if found.plan is None else "not drawn: write one hole a note"
        )
        return CutHole(heading=found.seat.name, hole=words, text=text_of(found, system))

    def _rows(self) -> list[list[str]]:
        plan, system = self._part.seat.plan, self._part.system
        if plan is None:
            return []
        several = len(plan.seats) > 1
        return [
            [f"{_short(seat)}: {row.label}" if several else row.label, row.text]
            for seat in plan.seats
            for row in size_rows(seat.sizes, system)
        ]

    def _draw(self, drawn: CutHole, rows: list[list[str]]) -> None:
        look = self._part.look(dark=self._dark)
        self._picture = LivePicture(HoleSection(drawn, look), self._scale)
        self._number += 1
        page = self._picture.page()
        page |= {"title": TITLE, "palette": look.palette, "projector": look.projector}
        page |= {"number": self._number, "text": drawn.text, "rows": rows, "compared": False}
        page |= {"trouble": self._part.trouble, "kept": []}
        self.live.show(page, self._picture.layers, self._picture.pixels)

    def _told(self, content: dict[str, Any]) -> None:
        """Hear the page: how it looks, and how large."""
        if "page" in content:
            self._fit(**content["page"])

    def _fit(self, dark: bool, scale: float) -> None:
        if (dark, scale) != (self._dark, self._scale):
            self._dark, self._scale = dark, float(scale)
            self._draw(*self._shown)


def _short(seat: SeatPlan) -> str:
    """Name a seat in two words, for a column beside the picture."""
    return f"{seat.kind}, {seat.side}" if seat.side else seat.kind
