"""The map: which widths of cut sing at which spindle speed, and how the plunge climbs it."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon
from numpy.typing import NDArray

from seatwork.cutting.chatter.parts import NOTE
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.linework import Points, joined
from seatwork.drawings.strokes.page_words import SECOND, heading, word
from seatwork.drawings.strokes.style import HIDDEN_DASHES, POINTS, page
from seatwork.drawings.view import View
from seatwork.drawings.views.chatter_cones import hertz
from seatwork.units import length, show_both, show_length, show_spindle

SPEEDS = (100.0, 3000.0)
WIDTHS = (0.05, 8.0)
"""Ends of both axes [rev/min] and [mm]."""

LEFT, RIGHT, LOW, TOP = 150.0, 1235.0, 118.0, 560.0
MARKED_SPEEDS = (100, 200, 300, 500, 1000, 2000, 3000)
MARKED_WIDTHS = {
    "inch": ("0.002 in", "0.005 in", "0.010 in", "0.020 in", "0.050 in", "0.100 in", "0.200 in"),
    "metric": ("0.05 mm", "0.1 mm", "0.2 mm", "0.5 mm", "1 mm", "2 mm", "5 mm"),
}
HERE, TALL = 230.0, 24.0
"""Width of "you are here" at the projector's size, and half its height with room round it."""

TRIED = (0.0, 60.0, -60.0, 120.0, -120.0, 180.0, -180.0, 260.0, -260.0)
"""Heights over the cut where the words may stand [page units], the nearest first."""

HALF_A_WORD = 62.0
"""Room to both sides of the words in the map [page units]."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Place:
    """A cut on the map.

    Parameters
    ----------
    speeds, limits : numpy.ndarray
        Spindle speeds [rev/min] and width where chatter begins at each [mm]; NaN where none.
    spindle_speed, width : float
        The cut of the moment [rev/min], [mm].
    full_width : float
        Lip in cut when the seat is done [mm].
    limit, frequency : float or None
        Width where chatter begins at that speed [mm], and its frequency [Hz].
    quiet_below : float
        Critical speed: slower, every width stays quiet [rev/min].
    doubtful_below : float
        Slower, the wear land is longer than a quarter of the wave [rev/min].
    cutter : str
        The cutter in words.
    """

    speeds: NDArray[np.floating]
    limits: NDArray[np.floating]
    spindle_speed: float
    width: float
    full_width: float
    limit: float | None
    frequency: float | None
    quiet_below: float
    doubtful_below: float
    cutter: str

    @property
    def sings(self) -> bool:
        """Whether the cut of the moment has begun to sing."""
        return self.limit is not None and self.width > self.limit


class MapView(View[Place]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : Place
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        self._draw_axes(axes)
        self._add_shapes(axes)
        self._heading = heading(axes, self.style)
        self._second = word(axes, self.style, 640.0, SECOND)
        self._wall = word(axes, self.style, 0.0, TOP + 16.0)
        ground = {
            "boxstyle": "square,pad=0.1",
            "facecolor": self.style.colors.paper,
            "linewidth": 0,
        }
        looks = {"va": "center", "bbox": ground}
        self._names = [
            word(axes, self.style, 0.0, 0.0, fontweight="bold", **looks) for _ in range(2)
        ]
        self._star = word(axes, self.style, 0.0, 0.0, va="center")
        return Drawing(figure, self.move(self.part))

    def move(self, part: Place) -> str:
        """Show another cut; return the text."""
        system = self.look.system
        self._sings.set_xy(_region(part))
        self._doubt.set_xy(_block(part.doubtful_below))
        self._edge.set_data(*_edge(part).T.tolist())
        x, y = _x(part.spindle_speed), _y(part.width)
        self._plunge.set_data([x, x], [LOW, y])
        self._rest.set_data([x, x], [y, max(y, _y(part.full_width))])
        self._here.set_data([x], [y])
        self._arrow.set_xy(np.array([(x, y - 11), (x - 8, y - 38), (x + 8, y - 38)]))
        self._arrow.set_visible(y - LOW > 45.0)
        wall = _x(part.quiet_below)
        self._critical.set_data([wall, wall], [LOW, TOP])
        self._critical.set_visible(LEFT < wall < RIGHT)
        self._write(part, x, y, wall)
        return text_of(part, system)

    def _write(self, part: Place, x: float, y: float, wall: float) -> None:
        system = self.look.system
        self._heading.set_text(_heading(part))
        self._second.set_text(_second(part, system))
        inside = LEFT < wall < RIGHT
        text = f"every width quiet below {show_spindle(part.quiet_below)}" if inside else ""
        self._wall.set(text=text, x=min(max(wall, LEFT + 265.0), RIGHT - 265.0))
        right = RIGHT - HALF_A_WORD
        at = right if abs(x - right) > 2 * HALF_A_WORD else x - 2 * HALF_A_WORD
        self._names[0].set(text="sings" if _rises(part) else "", x=at, y=TOP - 26.0)
        left = max(LEFT, _x(part.doubtful_below)) + 1.2 * HALF_A_WORD
        at = left if abs(x - left) > 1.5 * HALF_A_WORD else x + 1.5 * HALF_A_WORD
        self._names[1].set(text="quiet", x=at, y=LOW + 24.0)
        side, up = free_spot(np.column_stack(self._edge.get_data()), x, y, wall)
        self._star.set(
            text="you are here", x=x + side * 22.0, y=up, ha="left" if side > 0 else "right"
        )

    def _add_shapes(self, axes: Axes) -> None:
        colors, sizes = self.style.colors, self.style.sizes
        thin, edge = sizes.thin * POINTS, sizes.edge * POINTS
        nowhere = np.full((3, 2), -9.0)
        self._sings = Polygon(nowhere, facecolor=colors.screw, linewidth=0)
        self._doubt = Polygon(nowhere, facecolor="none", edgecolor=colors.hatch, hatch="//")
        self._doubt.set_linewidth(0)
        self._edge = Line2D([], [], color=colors.contact, linewidth=edge)
        self._critical = Line2D([], [], color=colors.center, linewidth=1.5 * thin)
        self._critical.set_linestyle(HIDDEN_DASHES)
        self._rest = Line2D([], [], color=colors.ink, linewidth=thin)
        self._rest.set_linestyle(HIDDEN_DASHES)
        self._plunge = Line2D([], [], color=colors.ink, linewidth=edge)
        self._arrow = Polygon(nowhere, facecolor=colors.ink, linewidth=0)
        self._here = Line2D([], [], color=colors.ink, marker="*", markersize=22, linewidth=0)
        self._here.set_markeredgecolor(colors.paper)
        parts = (self._sings, self._doubt, self._edge, self._critical, self._rest, self._plunge,
                 self._arrow, self._here)  # fmt: skip
        for step, artist in enumerate(parts):
            artist.set(zorder=2.0 + step / 5, animated=True)
            axes.add_artist(artist)

    def _draw_axes(self, axes: Axes) -> None:
        """Draw the frame, its ticks and their words, none of which move."""
        still = {"animated": False}
        style, system = self.style, self.look.system
        lines = [np.array([(LEFT, TOP), (LEFT, LOW), (RIGHT, LOW)])]
        for speed in MARKED_SPEEDS:
            x = _x(float(speed))
            lines.append(np.array([(x, LOW), (x, LOW - 9.0)]))
            word(axes, style, x, LOW - 36.0, **still).set_text(str(speed))
        for width in MARKED_WIDTHS[system]:
            mm = length(width)
            lines.append(np.array([(LEFT, _y(mm)), (LEFT - 9.0, _y(mm))]))
            shown = width.removesuffix(" in").removesuffix(" mm")
            word(axes, style, LEFT - 16.0, _y(mm), ha="right", va="center", **still).set_text(shown)
        unit = "in" if system == "inch" else "mm"
        label = word(axes, style, LEFT - 132.0, TOP + 16.0, ha="left", **still)
        label.set_text(f"lip in cut [{unit}]")
        foot = word(axes, style, (LEFT + RIGHT) / 2, 34.0, **still)
        foot.set_text("spindle speed [rev/min]; hatched: this model says nothing there")
        frame = Line2D(*joined(lines).T, color=style.colors.ink, zorder=1.5)
        frame.set_linewidth(style.sizes.thin * POINTS)
        axes.add_artist(frame)


def _x(speed: Any) -> Any:
    """Place of a spindle speed, or of an array of them [page units]."""
    low, high = np.log10(SPEEDS)
    share = np.clip((np.log10(np.maximum(speed, 1e-3)) - low) / (high - low), -0.01, 1.0)
    return LEFT + share * (RIGHT - LEFT)


def _y(width: Any) -> Any:
    """Place of a width of cut, or of an array of them [page units]."""
    low, high = np.log10(WIDTHS)
    return LOW + np.clip((np.log10(width) - low) / (high - low), 0.0, 1.0) * (TOP - LOW)


def _edge(part: Place) -> Points:
    """Draw the limit as a line [page units], broken where no limit was found."""
    seen = np.isfinite(part.limits)
    limits = np.where(seen, part.limits, WIDTHS[1])
    points = np.column_stack([_x(part.speeds), _y(limits)])
    points[~seen] = np.nan
    return points


def free_spot(edge: Points, x: float, y: float, wall: float) -> tuple[float, float]:
    """Return the side (-1 or 1) and the height where words beside (x, y) hide none of the limit.

    Parameters
    ----------
    edge : ndarray
        Shape (n, 2): the limit as a line, broken by not-a-number [page units].
    x, y : float
        Where the cut stands [page units].
    wall : float
        Where the upright line of the critical speed stands [page units]; better not crossed.
    """
    sides = (-1.0, 1.0) if x > (LEFT + RIGHT) / 2 else (1.0, -1.0)
    heights = np.clip(y + np.array(TRIED), LOW + 62.0, TOP - 66.0)
    low, high = np.fmin(edge[:-1], edge[1:]), np.fmax(edge[:-1], edge[1:])
    found = []
    for side in sides:
        near, far = sorted((x + side * 16.0, x + side * (22.0 + HERE)))
        if near < LEFT or far > RIGHT:
            continue
        under = (high[:, 0] >= near) & (low[:, 0] <= far)
        bottom, top = low[under, 1][:, None], high[under, 1][:, None]
        hidden = ((top >= heights - TALL) & (bottom <= heights + TALL)).sum(axis=0)
        hidden = hidden + 0.5 * (near <= wall <= far)
        found += [(count, side, up) for count, up in zip(hidden, heights, strict=True)]
    _, side, up = min(found, key=lambda one: one[0])
    return side, float(up)


def _rises(part: Place) -> bool:
    return bool(np.isfinite(part.limits).any())


def _region(part: Place) -> Points:
    """All above the limit, up to the top of the map [page units]."""
    if not _rises(part):
        return np.full((3, 2), -9.0)
    limits = np.where(np.isfinite(part.limits), part.limits, WIDTHS[1])
    points = np.column_stack([_x(part.speeds), _y(limits)])
    return np.concatenate([points, [(RIGHT, TOP), (LEFT, TOP)]])


def _block(speed: float) -> Points:
    """All of the map below a spindle speed [page units]."""
    x = max(_x(speed), LEFT)
    return np.array([(LEFT, LOW), (x, LOW), (x, TOP), (LEFT, TOP)])


def _heading(part: Place) -> str:
    state = "it sings" if part.sings else "it stays quiet so far"
    return f"{part.cutter} at {show_spindle(part.spindle_speed)}: {state}"


def _second(part: Place, system: str) -> str:
    width = show_length(part.width, system)
    if part.limit is None:
        return f"{width} of lip in cut; no limit found. An {NOTE}"
    limit = show_length(part.limit, system)
    return f"{width} of lip in cut, limit {limit}. An {NOTE}"


def text_of(part: Place, system: str) -> str:
    """Tell where the cut stands on the map, with all the numbers."""
    if part.limit is None or part.frequency is None:
        limit = "no width where chatter begins was found there"
    else:
        limit = (
            f"there chatter begins at {show_both(part.limit, system)}, at {hertz(part.frequency)}"
        )
    return (
        f"Map of spindle speed against lip in cut. {_heading(part)}, "
        f"{show_both(part.width, system)} of lip in cut on the way to "
        f"{show_both(part.full_width, system)}; {limit}. Below "
        f"{show_spindle(part.quiet_below)} every width stays quiet; below "
        f"{show_spindle(part.doubtful_below)} this model says nothing. An {NOTE}."
    )
