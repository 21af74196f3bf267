"""The triangle: a cone in section, folded in half step by step to across, half the angle, down."""

from collections.abc import Iterable
from typing import Any

import numpy as np
from matplotlib.artist import Artist
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon
from matplotlib.text import Text

from seatwork.drawings.parts import triangle_words as words
from seatwork.drawings.parts.triangle_part import BESIDE, STEPS, TrianglePart
from seatwork.drawings.parts.triangle_window import (
    AXIS,
    CUT_OFF,
    FACE,
    HEIGHT,
    bracket,
    head,
    is_large,
    wall,
    window_at,
    window_of,
)
from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Linework, Points, arc, joined, linework_patches
from seatwork.drawings.strokes.metal import BELOW_BREAK, WAVE, Window, draw_metal
from seatwork.drawings.strokes.style import CENTER_DASHES, HIDDEN_DASHES, POINTS, page
from seatwork.drawings.view import View
from seatwork.seats import Countersink
from seatwork.seats.triangles import SLIPS
from seatwork.units import show_angle, show_length

COLUMN, TOP, ROW = 712.0, 412.0, 84.0
NEAR, FAR = 34.0, 78.0
"""How far above the face the hole and the seat are dimensioned [page units]."""

FAN = 46.0
"""Radius of the arc of the angle [page units]."""

SLIP_AT, SLIP_ROWS = 24.0, (296.0, 168.0, 88.0)
"""Where the names of the slips stand [page units]."""

LIT = "▸ "
"""Before the step that is reached last."""

ON = {
    "across": "center",
    "half": "left",
    "down": "right",
    "angle": "center",
    "wide": "center",
    "narrow": "center",
}
"""The words at the lines, and by which side each is placed."""

ONE = np.ones(2)
NONE = np.full((2, 2), np.nan)


class TriangleView(View[TrianglePart]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : TrianglePart
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, self._axes = page(self.style.colors, height=HEIGHT)
        draw_metal(self._axes, self.style, window_at(AXIS, 1.0))
        self._add_shapes()
        self._lines, self._heads = linework_patches(self._axes, self.style, animated=True)
        self._add_words()
        return Drawing(figure, self.move(self.part))

    def move(self, part: TrianglePart) -> str:
        """Show another part; return the text."""
        window, work = window_of(part), Linework(self.style.sizes)
        self._lay(part, window)
        self._fold(part, window)
        self._hold(part, window)
        self._point_out(part, window)
        self._haunt(part, window, work)
        self._dimension(part, window, work)
        self._lines.set_path(work.lines)
        self._heads.set_path(work.heads)
        self._write(part)
        return words.text_of(part, self.look.system)

    @property
    def ghosts(self) -> tuple[Artist, ...]:
        """The wall on the right, which may stay behind for comparison; known after `draw`."""
        return (self._right,)

    def _add_shapes(self) -> None:
        colors, sizes = self.style.colors, self.style.sizes
        edge, thin, heavy = (w * POINTS for w in (sizes.edge, sizes.thin, 1.6 * sizes.contact))
        self._cavity = self._fill(2.0, colors.paper, 0.0)
        self._held = self._fill(3.0, colors.screw, edge)
        self._cover = self._fill(3.55, colors.paper, 0.0)
        self._inside = self._fill(3.45, colors.screw, 0.0)
        self._left, self._right = (self._line(3.5, edge) for _ in range(2))
        self._center = self._line(3.6, thin, CENTER_DASHES, colors.center)
        self._sides = self._line(3.7, thin, HIDDEN_DASHES)
        self._fan, self._legs = (self._line(3.8, 1.3 * thin) for _ in range(2))
        self._across = self._line(4.0, heavy, color=colors.contact)
        self._down = self._line(4.0, heavy, HIDDEN_DASHES, colors.contact)
        self._radius = self._line(4.0, 1.3 * thin)
        self._slips = [self._line(4.2, 1.4 * thin, (0, (2.0, 2.0)), colors.contact) for _ in SLIPS]

    def _fill(self, order: float, color: str, edge: float) -> Polygon:
        looks: dict[str, Any] = {"facecolor": color, "edgecolor": self.style.colors.ink}
        made = Polygon(np.zeros((3, 2)), linewidth=edge, zorder=order, **looks)
        made.set(animated=True, joinstyle="round")
        self._axes.add_artist(made)
        return made

    def _line(self, order: float, width: float, dashes: Any = "-", color: str = "") -> Line2D:
        looks: dict[str, Any] = {"color": color or self.style.colors.ink, "linestyle": dashes}
        made = Line2D([], [], linewidth=width, zorder=order, animated=True, **looks)
        made.set_solid_capstyle("butt")
        self._axes.add_artist(made)
        return made

    def _add_words(self) -> None:
        ground = {"facecolor": self.style.colors.paper, "linewidth": 0, "pad": 2.0}
        self._on = {
            name: self._word(self._axes, 0.0, 0.0, va="center", ha=ha, bbox=ground, zorder=6.0)
            for name, ha in ON.items()
        }
        for name in ("across", "half", "down"):
            self._on[name].set_fontweight("bold")
        line = self.style.line_height
        self._rows = [
            (self._row(TOP - n * ROW, bold=True), self._row(TOP - n * ROW - line, bold=False))
            for n in range(STEPS)
        ]
        self._slip_words = [
            [self._word(self._axes, SLIP_AT, y - n * line, ha="left", zorder=6.0, bbox=ground)
             for n in (0, 1)] for y in SLIP_ROWS
        ]  # fmt: skip

    def _row(self, y: float, *, bold: bool) -> Text:
        weight = "bold" if bold else "normal"
        return self._word(self._axes, COLUMN, y, ha="left", va="center", fontweight=weight)

    def _lay(self, part: TrianglePart, window: Window) -> None:
        """Show the cone and its hole, the left side where it lies, whole or folded over."""
        lowest = window.deepest
        right = wall(part.seat, lowest)
        opening = wall(part.seat, lowest - BELOW_BREAK / window.scale)
        self._cavity.set_xy(window.to_page(profiles.whole(opening)))
        turned = np.array([1.0 if part.folded else -1.0, 1.0])
        ends = [window.right - window.axis] * 2
        if not part.folded:
            ends[0] = window.axis - window.left
        for line, end, sign in zip((self._left, self._right), ends, (turned, ONE), strict=True):
            _draw(line, window.to_page(np.vstack([(end / window.scale, 0.0), right]) * sign))
        at = max(window.axis, CUT_OFF) if part.folded else window.left - 2 * WAVE
        self._cover.set_xy([(0.0, 0.0), (at, 0.0), (at, HEIGHT), (0.0, HEIGHT)])
        middle = [(window.axis, window.bottom - 16.0), (window.axis, _upper(part))]
        _draw(self._center, middle if window.axis >= CUT_OFF else NONE)

    def _fold(self, part: TrianglePart, window: Window) -> None:
        """Show the lines dropped, across on one side or both, and the fan of the angle."""
        its, top = part.triangle, part.top
        turned = 1.0 if part.folded else -1.0
        lines, bars = [], []
        for sign in (turned, 1.0):
            x, wide = sign * its.narrow / 2, sign * its.wide / 2
            lines.append(np.array([window.spot(x, top - its.down), window.spot(x, top)]))
            bars.append(bracket(window.spot(x, top), window.spot(wide, top)))
        if part.holds == "a ball":
            bars = [bracket(window.spot(0.0, 0.0), window.spot(its.wide / 2, 0.0))]
            lines = lines[1:]
        dropped = part.step >= 2 and not (part.holds == "a ball" and part.step < 3)
        _draw(self._sides, joined(lines) if dropped else NONE)
        bracketed = dropped and (part.shows("across") or part.step < 3)
        _draw(self._across, joined(bars) if bracketed else NONE)
        corner = [(its.narrow / 2, top - its.down), (its.narrow / 2, top), (its.wide / 2, top)]
        corners = window.to_page(np.array(corner))
        reached = dropped and (part.folded or part.holds == "a ball")
        self._inside.set_xy(corners if reached else np.zeros((3, 2)))
        shown = part.shows("down") and part.step > 2 and reached
        _draw(self._down, corners[:2] if shown else NONE)
        self._spread(part, window, corners[0])

    def _spread(self, part: TrianglePart, window: Window, corner: Points) -> None:
        """Show the angle: whole, over the point of the cone, or half, in the triangle."""
        its = part.triangle
        half = part.shows("half") and part.step > 2
        apex = window.spot(0.0, part.top - its.to_the_point)
        center = corner if half else np.array(apex)
        reach = min(FAN, 0.7 * its.down * window.scale) if half else FAN
        left = 90.0 if half else 90.0 + its.half_angle
        fan = arc((float(center[0]), float(center[1])), reach, left, 90.0 - its.half_angle)
        narrow = np.array([(-1.0, 1.0), (1.0, 1.0)]) * (its.narrow / 2, part.top - its.down)
        ends = window.to_page(narrow)
        sides = [np.array([end, apex]) for end in ends] if not half and its.narrow else []
        shown = half or not is_large(part)
        _draw(self._fan, fan if shown else NONE)
        _draw(self._legs, joined(sides) if shown and sides else NONE)

    def _hold(self, part: TrianglePart, window: Window) -> None:
        """Lay pin, ball or head into the cone."""
        self._radius.set_data([], [])
        if part.holds == "nothing" or part.held is None:
            self._held.set_xy(np.zeros((3, 2)))
        elif part.holds == "a pin":
            half, low = part.held / 2, -part.triangle.down
            high = 92.0 / window.scale
            side = np.array([(half, high), (half, low)])
            self._held.set_xy(window.to_page(profiles.whole(side)))
        elif part.holds == "a head":
            self._held.set_xy(window.to_page(profiles.whole(head(part, window))))
        else:
            self._roll(part, part.held / 2, window)

    def _roll(self, part: TrianglePart, radius: float, window: Window) -> None:
        """Lay a ball into the cone, and its radius square to the slope."""
        middle = np.array(window.spot(0.0, part.ball_top - radius))
        size = radius * window.scale
        self._held.set_xy(arc((float(middle[0]), float(middle[1])), size, 0.0, 360.0))
        if part.step < 2:
            return
        turn = np.radians(part.triangle.half_angle)
        out, along = np.array([np.cos(turn), -np.sin(turn)]), np.array([np.sin(turn), np.cos(turn)])
        touch = middle + size * out
        square = [touch - 14.0 * out, touch - 14.0 * out + 14.0 * along, touch + 14.0 * along]
        _draw(self._radius, joined([np.array([middle, touch]), np.array(square)]))

    def _point_out(self, part: TrianglePart, window: Window) -> None:
        """Set the words at the lines, as far as the steps go."""
        its, system, top = part.triangle, self.look.system, part.top
        half = part.shows("half") and part.step > 2
        across = part.shows("across") and part.step > 2
        down = part.shows("down") and is_large(part)
        middle = (its.narrow + its.wide) / 4
        upper = window.spot(middle, top)
        if part.holds == "a ball":
            upper = min(window.spot(its.wide / 2, 0.0)[0] + 130.0, COLUMN - 132.0), FACE
        slope = window.spot(its.narrow / 2 + its.across * 0.42, top - its.down * 0.58)
        side = window.spot(its.narrow / 2, top - its.down * 0.5)
        apex = window.spot(0.0, top - its.to_the_point)
        whole = show_angle(part.seat.included_angle) if part.shows("angle") else words.ASKED
        self._say("across", across, f"across {words.across(part, system)}",
                  (upper[0], upper[1] + 28.0))  # fmt: skip
        self._say("half", half, show_angle(its.half_angle, 2), (slope[0] + 26.0, slope[1] - 8.0))
        self._say("down", down, f"down {show_length(its.down, system)}", (side[0] - 14.0, side[1]))
        angle = not half and not is_large(part)
        self._say("angle", angle, whole, (apex[0], apex[1] + FAN + 20.0))

    def _say(self, name: str, shown: bool, text: str, spot: tuple[float, float]) -> None:
        self._on[name].set(text=text if shown else "", position=spot)

    def _haunt(self, part: TrianglePart, window: Window, work: Linework) -> None:
        """Draw each slip, or the other angle, as a dashed triangle with its name and number."""
        ghosts = {name: rest for name, *rest in part.ghosts}
        wanted = ["", BESIDE] if part.beside is not None else list(part.slips)
        wanted.sort(key=lambda name: ghosts[name][2] if name in ghosts else 0.0)
        for row, (drawn, said) in enumerate(zip(self._slips, self._slip_words, strict=True)):
            name = wanted[row] if row < len(wanted) else ""
            texts = words.beside_words(part, name, self.look.system) if name else ("", "")
            for word, text in zip(said, texts, strict=True):
                word.set_text(text)
            if name not in ghosts:
                _draw(drawn, NONE)
                continue
            start, across, down = ghosts[name]
            low, top = window.spot(start, part.top - down), part.top
            corners = [(start, top), (start + across, top), (start, top - down), (start, top)]
            _draw(drawn, window.to_page(np.array(corners)))
            y = SLIP_ROWS[row] - self.style.line_height
            work.leader((SLIP_AT + 118.0, y + 8.0), (low[0] - 3.0, low[1]))

    def _dimension(self, part: TrianglePart, window: Window, work: Linework) -> None:
        """Dimension seat and hole above the face, before they are folded."""
        system, seat = self.look.system, part.seat
        shown = not part.folded and part.holds == "nothing"
        across = show_length(seat.diameter, system) if part.shows("diameter") else words.ASKED
        sizes = (
            (
                "narrow",
                seat.hole_diameter,
                -seat.depth,
                NEAR,
                show_length(seat.hole_diameter, system),
            ),
            ("wide", seat.diameter, 0.0, FAR, across),
        )
        for name, size, low, level, text in sizes:
            at = FACE + level
            self._say(name, shown, f"⌀ {text}", (window.axis, at + 20.0))
            if not shown:
                continue
            for sign in (-1.0, 1.0):
                x, y = window.spot(sign * size / 2, low)
                work.extension((x, y), (x, at))
            half = size / 2 * window.scale
            work.dimension((window.axis - half, at), (window.axis + half, at))

    def _write(self, part: TrianglePart) -> None:
        """Write each step that is reached, the last one lit."""
        said = words.rows(part, self.look.system)
        for number, (title, how) in enumerate(self._rows):
            reached = number < len(said)
            lit = LIT if number == part.step - 1 else ""
            title.set_text(f"{lit}{number + 1}  {said[number][0]}" if reached else "")
            how.set_text(said[number][1] if reached else "")


def triangle(
    diameter: float,
    hole_diameter: float,
    included_angle: float,
    *,
    step: int = STEPS,
    slips: Iterable[str] = (),
    holds: str = "nothing",
    held: float | None = None,
    find: str = "down",
    beside: float | None = None,
    look: Look | None = None,
) -> Drawing:
    """Draw the triangle of a cone as far as a step goes: across, half the angle, down.

    Nothing of a later step is drawn, written or told, so that a hint gives no answer away.

    Parameters
    ----------
    diameter, hole_diameter : float
        Of the cone at the face, and of the hole it runs into [mm].
    included_angle : float
        Whole angle across the cone [deg].
    step : int
        How far it is built, 1 to 5: the seat, the difference, across, half the angle, down.
    slips : iterable of str
        Slips drawn beside it with their numbers: "whole difference", "whole angle",
        "to the point".
    holds : {"nothing", "a pin", "a ball", "a head"}
        What lies in the cone.
    held : float, optional
        Its diameter [mm]; a head's theoretical sharp diameter.
    find : {"down", "diameter", "angle"}
        What is looked for; the others are given and shown from the first step on.
    beside : float, optional
        Included angle of another cone drawn dashed beside it, on the same hole and as wide [deg].
    look : Look, optional
        Units, palette, size.

    Returns
    -------
    Drawing
        1280 by 460 units.

    Raises
    ------
    SeatworkError
        If the sizes make no cone, or there is no such step, slip or thing to find.

    Examples
    --------
    >>> triangle(12.8778, 6.7564, 82, step=3).text[-38:]
    'Across 0.1205 in, half the difference.'
    """
    seat = Countersink(
        diameter=diameter, hole_diameter=hole_diameter, included_angle=included_angle
    )
    asked = (slips,) if isinstance(slips, str) else tuple(slips)
    laid: dict[str, Any] = {"holds": holds, "held": held}
    part = TrianglePart(seat=seat, step=step, slips=asked, find=find, beside=beside, **laid)
    return TriangleView(part, look).draw()


def _upper(part: TrianglePart) -> float:
    """Where the centerline ends above the face [page units]."""
    return FACE + 116.0 if part.holds in ("a pin", "a ball", "a head") else FACE + 26.0


def _draw(line: Line2D, points: Any) -> None:
    line.set_data(*np.asarray(points, dtype=float).T.tolist())
