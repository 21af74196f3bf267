"""A countersink and its screw in section, with dimensions, contact and an enlarged detail."""

from typing import Any

import numpy as np
from matplotlib.artist import Artist
from matplotlib.axes import Axes
from matplotlib.patches import Circle
from matplotlib.text import Text

from seatwork.drawings.parts import words
from seatwork.drawings.parts.seat_view import SeatView, contact_points
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.linework import Linework, Point, linework_patches, unit
from seatwork.drawings.strokes.metal import Window, draw_metal
from seatwork.drawings.strokes.style import FONT, POINTS, page
from seatwork.drawings.strokes.symbols import SignedLine
from seatwork.drawings.view import View
from seatwork.seats import Countersink, Fit
from seatwork.units import show_angle, show_both, show_length

AXIS, FACE, HALF_PLATE, BOTTOM = 465.0, 425.0, 245.0, 88.0
WIDEST, HIGHEST, DEEPEST = 380.0, 150.0, 290.0
"""Most that seat or head may take across, that a head may stand above the face, and that the
seat may go down [page units]."""

DETAIL, RADIUS = (925.0, 240.0), 150.0
ENLARGED = (1, 2, 5, 10, 20, 50)
COLUMN = 765.0
DIAMETER_LINE, NARROW = 668.0, 205.0
"""Height of the dimension line, and how far apart its ends must be for a long word between."""

NOTE = (40.0, 30.0)
LETTER = (AXIS + 274.0, FACE - 30.0)
LABEL = (208.0, 285.0)
GAP_LINE = (AXIS + HALF_PLATE + 30.0, DETAIL[0] + RADIUS + 36.0)
"""Where the amount is dimensioned: beside the section, or beside the detail [page units]."""

HEADING, AMOUNT, CONTACT = 690.0, 640.0, 592.0
"""Baselines of the words on the right; what follows the contact depends on its lines."""


class Section(View[SeatedHead]):
    """The section that follows a part: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : SeatedHead
        Head and seat to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        circle = Circle(DETAIL, RADIUS, facecolor=self.style.colors.paper, linewidth=0)
        axes.add_patch(circle)
        draw_metal(axes, self.style, _plate(1.0))
        draw_metal(axes, self.style, _detail_window(0.0, 1.0), clip=circle)
        self._view = SeatView(axes, self.style)
        self._detail = SeatView(axes, self.style, clip=circle)
        self._cover = Circle(DETAIL, RADIUS + 4.0, facecolor=self.style.colors.paper, linewidth=0)
        self._cover.set(zorder=4.9, animated=True)
        axes.add_artist(self._cover)
        self._add_linework(axes)
        self._add_words(axes)
        return Drawing(figure, self.move(self.part))

    def move(self, part: SeatedHead) -> str:
        """Show another part; return the text.

        Raises
        ------
        SeatworkError
            If the head cannot lie in the seat; the picture then stays as it was.
        """
        found = part.lies
        plate = _plate(_scale(part, found))
        enlarged, offset = _enlargement(part, found, plate.scale)
        detail = _detail_window(offset, plate.scale * enlarged)
        self._view.move(part, found, plate)
        self._detail.move(part, found, detail)
        work = self._dimensions(part, found, plate)
        self._cover.set_visible(enlarged == 1)
        for circle in (self._ring, self._frame):
            circle.set_visible(enlarged > 1)
        if enlarged > 1:
            self._point_out_detail(work, plate.spot(offset, 0.0), enlarged)
        seen = detail if enlarged > 1 else plate
        self._dimension_amount(work, part, found, seen, GAP_LINE[enlarged > 1])
        self._lines.set_path(work.lines)
        self._heads.set_path(work.heads)
        self._write(part, found, enlarged)
        return words.seated(part, found, self.look.system)

    @property
    def ghosts(self) -> tuple[Artist, ...]:
        """Head and seat, whose outlines may stay behind for comparison; known after `draw`."""
        return self._view.screw, self._view.walls

    def _add_linework(self, axes: Axes) -> None:
        self._lines, self._heads = linework_patches(axes, self.style, animated=True)
        self._ring, self._frame = (
            Circle(
                DETAIL,
                RADIUS,
                fill=False,
                edgecolor=self.style.colors.ink,
                zorder=5.0,
                animated=True,
            )
            for _ in range(2)
        )
        for circle in (self._ring, self._frame):
            circle.set_linewidth(self.style.sizes.thin * POINTS)
            axes.add_artist(circle)
        self._note = SignedLine(axes, self.style, x=NOTE[0], y=NOTE[1], animated=True)
        above = DIAMETER_LINE + 14.0
        self._across = SignedLine(axes, self.style, x=AXIS, y=above, align="center", animated=True)

    def _add_words(self, axes: Axes) -> None:
        sizes, colors = self.style.sizes, self.style.colors
        self._words: dict[str, Text] = {}
        self._named(axes, "heading", COLUMN, HEADING)
        self._named(axes, "amount", COLUMN, AMOUNT, fontsize=sizes.large, fontweight="bold")
        for name in ("contact", "contact 2", "contact 3", "face", "face 2"):
            self._named(axes, name, COLUMN, 0.0)
        self._named(axes, "angle", AXIS, 0.0, ha="center")
        self._named(axes, "caption", DETAIL[0], NOTE[1], ha="center")
        self._named(axes, "letter", *LETTER, ha="center", va="center", fontweight="bold")
        for name in ("gap", "gap 2"):
            self._named(axes, name, 0.0, 0.0, va="center")
        for line, shift in (("label", 0.5), ("label 2", -0.5)):
            height = LABEL[1] + shift * self.style.line_height
            self._named(axes, line, LABEL[0], height, ha="right", va="center", color=colors.contact)

    def _named(self, axes: Axes, name: str, x: float, y: float, **looks: Any) -> None:
        basics = {
            "color": self.style.colors.ink,
            "fontsize": self.style.sizes.text,
            "va": "baseline",
        }
        looks = {"fontfamily": FONT, **basics, **looks}
        self._words[name] = axes.text(x, y, "", zorder=5.3, animated=True, **looks)

    def _dimensions(self, part: SeatedHead, found: Fit, plate: Window) -> Linework:
        """Dimension the seat: diameter at the face, included angle; point at the contact."""
        work, seat = Linework(self.style.sizes), part.seat
        apex = plate.spot(0.0, -seat.apex_depth)
        ends = [plate.spot(side * seat.diameter / 2, 0.0) for side in (-1, 1)]
        for end in ends:
            work.extension(end, (end[0], DIAMETER_LINE))
        work.dimension(*((x, DIAMETER_LINE) for x, _ in ends))
        over_head = plate.spot(0.0, max(found.amount, 0.0))[1] + 26.0 - apex[1]
        radius = max(np.hypot(*np.subtract(ends[1], apex)) + 50.0, over_head)
        for end in ends:
            work.extension(end, tuple(apex + radius * unit(apex, end)))
        work.angle(apex, radius, seat.included_angle / 2)
        between = ends[1][0] - ends[0][0]
        included = show_angle(seat.included_angle) + (" included" if between > NARROW else "")
        self._words["angle"].set(text=included, y=apex[1] + radius + 8.0)
        spot = plate.to_page(contact_points(part.in_plate, found)).mean(axis=0)
        left = (2 * AXIS - float(spot[0]), float(spot[1]))
        shoulder = (LABEL[0] + 24.0, LABEL[1])
        reach = 1.9 * self.style.sizes.contact * unit(shoulder, left)
        work.leader((LABEL[0] + 6.0, LABEL[1]), shoulder, tuple(left - reach))
        return work

    def _point_out_detail(self, work: Linework, spot: Point, times: int) -> None:
        """Ring the rim in the section and name the ring."""
        radius = max(RADIUS / times, 16.0)
        self._ring.set(center=spot, radius=radius)
        if radius < LETTER[0] - spot[0] - 40.0:
            toward = unit(spot, LETTER)
            work.line(tuple(spot + radius * toward), tuple(LETTER - 18.0 * toward))

    def _dimension_amount(
        self, work: Linework, part: SeatedHead, found: Fit, view: Window, line: float
    ) -> None:
        """Dimension how far the head's top stands above or lies below the face, at x = `line`."""
        if found.state == "flush":
            return
        top = view.spot(part.head.edge / 2, found.amount)
        work.extension((view.right, view.face), (line, view.face))
        work.extension(top, (line, top[1]))
        ends = sorted([(line, view.face), (line, top[1])])
        work.dimension(*ends)

    def _write(self, part: SeatedHead, found: Fit, times: int) -> None:
        """Set every word and number."""
        system, seat = self.look.system, part.seat
        head_angle, seat_angle = (show_angle(a.included_angle) for a in (part.head, seat))
        content = {
            "heading": f"{head_angle} head in {words.an(seat_angle)} seat",
            "amount": words.standing(found, system),
            "face": "diameter at the face",
            "face 2": show_both(seat.diameter, system),
            "caption": f"Detail A, {times} times larger" if times > 1 else "",
            "letter": "A" if times > 1 else "",
            "gap": "" if found.state == "flush" else show_length(abs(found.amount), system),
            "gap 2": found.state,
        }
        content |= zip(("label", "label 2"), words.CONTACT_LABEL[found.contact], strict=True)
        contact = words.contact_lines(found, system)
        content |= zip(("contact", "contact 2", "contact 3"), contact, strict=True)
        for name, text in content.items():
            self._words[name].set_text(text)
        self._arrange(sum(map(bool, contact)), flush=found.state == "flush", times=times)
        self._write_notes(seat)

    def _arrange(self, contact_lines: int, *, flush: bool, times: int) -> None:
        """Put the words where their number of lines and the detail leave room."""
        line, names = self.style.line_height, ("contact", "contact 2", "contact 3")
        for row, name in enumerate(names):
            self._words[name].set_y(CONTACT - row * line)
        below = CONTACT - (contact_lines + 0.4) * line
        self._words["face"].set_y(below)
        self._words["face 2"].set_y(below - line)
        beside = GAP_LINE[times > 1] + 24.0
        middle = DETAIL[1] if times > 1 else FACE - 60.0
        for name, shift in (("gap", 0.5), ("gap 2", 0.0 if flush else -0.5)):
            self._words[name].set_position((beside, middle + shift * line))

    def _write_notes(self, seat: Countersink) -> None:
        """Set the print note and the diameter over its dimension line."""
        system = self.look.system
        self._note.set(f"Print note:  {words.seat_note(seat, system)}")
        self._across.set(f"⌀ {show_length(seat.diameter, system)}")


def _plate(scale: float) -> Window:
    return Window(
        axis=AXIS,
        face=FACE,
        left=AXIS - HALF_PLATE,
        right=AXIS + HALF_PLATE,
        bottom=BOTTOM,
        scale=scale,
    )


def _detail_window(offset: float, scale: float) -> Window:
    """Window of the detail, with the spot `offset` [mm] right of the axis in its middle."""
    return Window(
        axis=DETAIL[0] - offset * scale,
        face=DETAIL[1],
        left=DETAIL[0] - RADIUS,
        right=DETAIL[0] + RADIUS,
        bottom=DETAIL[1] - RADIUS,
        scale=scale,
    )


def _scale(part: SeatedHead, found: Fit) -> float:
    """Page units per mm at which the whole seat and the head's top fit."""
    widest = WIDEST / max(part.seat.diameter, part.head.edge)
    deepest = DEEPEST / part.seat.depth
    return min(widest, deepest, HIGHEST / found.amount if found.amount > 0 else widest)


def _enlargement(part: SeatedHead, found: Fit, scale: float) -> tuple[int, float]:
    """How many times the detail enlarges, and how far from the axis its middle lies [mm]."""
    radii = part.seat.diameter / 2, part.head.edge / 2
    apart, rise = abs(radii[0] - radii[1]) * scale, abs(found.amount) * scale
    fitting = [n for n in ENLARGED if n * rise <= 95.0 and n * apart <= 160.0]
    most = 10 if found.state == "flush" else ENLARGED[-1]
    return min(max(fitting, default=1), most), 0.35 * radii[0] + 0.65 * radii[1]
