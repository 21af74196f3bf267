"""A chamfer all the way round: seen along the hole, and its width unrolled into a curve."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Circle, Polygon

from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.strokes.linework import Points, joined
from seatwork.drawings.strokes.style import HIDDEN_DASHES, POINTS, page
from seatwork.drawings.view import View
from seatwork.seats.rims import Rim
from seatwork.units import length, show_angle, show_both, show_length, show_number

MIDDLE, WIDEST, GROUND = (300.0, 345.0), 205.0, 240.0
"""Center of the view along the hole, its widest rim, and half the face shown [page units]."""

LEFT, RIGHT, LOW, HIGH = 690.0, 1225.0, 150.0, 460.0
"""Borders of the chart [page units]."""

HEADING, SECOND, CAPTION, TITLE, LEGEND = 672.0, 628.0, 52.0, 68.0, 568.0
QUARTERS = (0, 90, 180, 270, 360)
TICKS = 7
EQUAL = 1e-4
"""Widths nearer than this count as equal [mm]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AllRound:
    """A chamfer on some face.

    Parameters
    ----------
    rim : Rim
        Its rim, point by point.
    hole_diameter : float
        The hole [mm].
    leg : float
        Width along the face, as noted [mm].
    included_angle : float
        Whole angle across the tool [deg].
    noted_width : float
        Width across the bevel on a flat face [mm].
    face : str
        The face, in words that follow "on": "a pad tilted 3°".
    caption : str
        How to look at the left picture.
    note : str
        One line on what the print says.
    """

    rim: Rim
    hole_diameter: float
    leg: float
    included_angle: float
    noted_width: float
    face: str
    caption: str
    note: str

    @property
    def even(self) -> bool:
        """Whether it is as wide all round."""
        return self.rim.greatest_width - self.rim.least_width < EQUAL


class RimView(View[AllRound]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : AllRound
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def __init__(self, part: AllRound, look: Look | None = None) -> None:
        super().__init__(part, look)
        self._one = length("1", self.look.system)

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        self._add_still(axes)
        colors, sizes = self.style.colors, self.style.sizes
        edge = sizes.edge * POINTS
        ink: dict[str, Any] = {"edgecolor": colors.ink, "linewidth": edge}
        self._bevel = Polygon(np.zeros((3, 2)), facecolor=colors.screw, **ink)
        self._hole = Circle(MIDDLE, 1.0, facecolor=colors.paper, **ink)
        thin = sizes.thin * POINTS
        self._grid = Line2D([], [], color=colors.hatch, linewidth=0.5 * thin)
        self._noted = Line2D([], [], color=colors.center, linewidth=thin, linestyle=HIDDEN_DASHES)
        self._curve = Line2D([], [], color=colors.ink, linewidth=edge)
        self._narrow, self._wide = (self._marks(marker) for marker in "os")
        moving = (self._bevel, self._hole, self._grid, self._noted, self._curve)
        for step, artist in enumerate((*moving, self._narrow, self._wide)):
            artist.set(zorder=2.0 + step / 10, animated=True)
            axes.add_artist(artist)
        self._add_words(axes)
        return Drawing(figure, self.move(self.part))

    def move(self, part: AllRound) -> str:
        """Show another part; return the text."""
        rim = part.rim
        scale = WIDEST / float(rim.radius.max())
        self._bevel.set_xy(_outline(rim, scale))
        self._hole.set_radius(scale * part.hole_diameter / 2)
        top, ticks = self._scaled(max(rim.greatest_width, part.noted_width))
        self._plot(part, top, ticks)
        self._mark(rim, scale, top, even=part.even)
        self._write(part)
        return text_of(part, self.look.system)

    def _marks(self, marker: str) -> Line2D:
        weight = self.style.sizes.contact * POINTS
        marks = Line2D([], [], linestyle="none", marker=marker, markersize=3.4 * weight)
        marks.set_markerfacecolor("none")
        marks.set_markeredgecolor(self.style.colors.contact)
        marks.set_markeredgewidth(0.8 * weight)
        return marks

    def _add_still(self, axes: Axes) -> None:
        """Draw what never moves: the face, the chart's frame and its directions."""
        colors, thin = self.style.colors, self.style.sizes.thin * POINTS
        corners = np.array([(-1, -1), (1, -1), (1, 1), (-1, 1)]) * GROUND + np.array(MIDDLE)
        axes.add_artist(Polygon(corners, facecolor=colors.metal, linewidth=0, zorder=1.0))
        frame = [(LEFT, HIGH), (LEFT, LOW), (RIGHT, LOW)]
        axes.add_artist(Line2D(*np.transpose(frame), color=colors.ink, linewidth=thin, zorder=1.0))
        for turn in QUARTERS:
            self._word(axes, _across(turn), LOW - 38.0, moves=False).set_text(show_angle(turn))
        title = self._word(axes, (LEFT + RIGHT) / 2, TITLE, moves=False)
        title.set_text("Direction round the hole, 0° to the right")

    def _add_words(self, axes: Axes) -> None:
        large = self.style.sizes.large
        self._heading = self._word(axes, 640.0, HEADING, fontsize=large, fontweight="bold")
        self._second = self._word(axes, 640.0, SECOND)
        self._caption = self._word(axes, MIDDLE[0], CAPTION)
        self._legend = [
            self._word(axes, LEFT - 20.0, LEGEND - row * self.style.line_height, ha="left")
            for row in range(3)
        ]
        self._dashed = self._word(axes, (LEFT + RIGHT) / 2, TITLE - self.style.line_height)
        self._ticks = [
            self._word(axes, LEFT - 24.0, LOW, ha="right", va="center") for _ in range(TICKS)
        ]

    def _scaled(self, most: float) -> tuple[float, list[float]]:
        """Choose round ticks up to a width [mm]; give the chart's top and the ticks, in units."""
        shown = most / self._one
        power = 10.0 ** np.floor(np.log10(shown / (TICKS - 2)))
        step = next(power * n for n in (1, 2, 5, 10) if power * n * (TICKS - 2) >= shown)
        ticks = [n * step for n in range(TICKS) if n * step <= shown * 1.001]
        return max(shown * 1.08, ticks[-1]), ticks

    def _plot(self, part: AllRound, top: float, ticks: list[float]) -> None:
        """Draw the width against the direction, with its grid."""
        places = max(2, -int(np.floor(np.log10(ticks[1]))))
        heights = [_up(tick, top) for tick in ticks]
        self._grid.set_data(
            *joined([np.array([(LEFT, y), (RIGHT, y)]) for y in heights[1:]]).T.tolist()
        )
        for number, word in enumerate(self._ticks):
            shown = number < len(ticks)
            word.set_text(show_number(ticks[number], places, places) if shown else "")
            word.set_y(heights[number] if shown else LOW)
        noted = _up(part.noted_width / self._one, top)
        self._noted.set_data([LEFT, RIGHT], [noted, noted])
        self._noted.set_visible(not part.even)
        turns = np.append(part.rim.directions, 360.0)
        widths = np.append(part.rim.width, part.rim.width[:1]) / self._one
        self._curve.set_data(_across(turns), _up(widths, top))

    def _mark(self, rim: Rim, scale: float, top: float, *, even: bool) -> None:
        """Ring the narrowest place and box the widest, in both pictures."""
        for marks, at in ((self._narrow, rim.width.argmin()), (self._wide, rim.width.argmax())):
            marks.set_visible(not even)
            turn = np.radians(rim.directions[at])
            out = scale * rim.radius[at]
            x = [MIDDLE[0] + out * np.cos(turn), _across(rim.directions[at])]
            y = [MIDDLE[1] + out * np.sin(turn), _up(rim.width[at] / self._one, top)]
            marks.set_data(x, y)

    def _write(self, part: AllRound) -> None:
        """Set every word and number."""
        system, rim = self.look.system, part.rim
        self._heading.set_text(_heading(part, system))
        self._second.set_text(part.note)
        self._caption.set_text(part.caption)
        least, most = (show_both(w, system) for w in (rim.least_width, rim.greatest_width))
        lines = (f"{most} all round", "")
        if not part.even:
            lines = (f"□ widest {most}", f"○ narrowest {least}")
        self._dashed.set_text("" if part.even else "dashed: on a flat face")
        unit = "in" if system == "inch" else "mm"
        title = f"Width across the bevel [{unit}]"
        for word, line in zip(self._legend, (title, *lines), strict=True):
            word.set_text(line)


def _outline(rim: Rim, scale: float) -> Points:
    turn = np.radians(rim.directions)
    spots = np.column_stack([np.cos(turn), np.sin(turn)]) * (scale * rim.radius)[:, None]
    return np.asarray(spots + np.array(MIDDLE))


def _across(turn: Any) -> Any:
    """Where a direction [deg] stands in the chart [page units]."""
    return LEFT + (RIGHT - LEFT) * turn / 360.0


def _up(shown: Any, top: float) -> Any:
    """Where a width stands in the chart [page units]."""
    return LOW + (HIGH - LOW) * shown / top


def _heading(part: AllRound, system: str) -> str:
    rim = part.rim
    if not rim.complete:
        return "This chamfer does not break the edge all round"
    if part.even:
        return "On a flat face it is equally wide all round"
    least, most = (show_length(width, system) for width in (rim.least_width, rim.greatest_width))
    return f"One chamfer: {least} wide here, {most} there"


def text_of(part: AllRound, system: str) -> str:
    """Tell the rim with all its numbers, in three sentences."""
    rim = part.rim
    sizes = (rim.least_width, rim.greatest_width, rim.least_diameter, rim.greatest_diameter)
    narrow, wide, least, most = (show_both(size, system) for size in sizes)
    begin = (
        f"A chamfer noted {show_both(part.leg, system)} along the face, cut with a tool of "
        f"{show_angle(part.included_angle)} at a hole of {show_both(part.hole_diameter, system)} "
        f"on {part.face}."
    )
    if part.even:
        return f"{begin} All round it is {wide} across the bevel and {most} in diameter."
    whole = "" if rim.complete else " It does not break the edge all round."
    return (
        f"{begin} Across the bevel it is {narrow} wide at its narrowest and {wide} at its "
        f"widest; in diameter it is {least} at the least and {most} at the greatest.{whole}"
    )
