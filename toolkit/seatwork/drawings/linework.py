"""Dimension lines, extension lines, leaders and arcs, gathered into two artists.

All the thin lines of a picture are one path and all its arrowheads another, so that a move of
the part sets two artists and not forty; arcs are curves, so that it stays short on the wire.
"""

from collections.abc import Sequence

import numpy as np
from matplotlib.axes import Axes
from matplotlib.patches import PathPatch
from matplotlib.path import Path
from numpy.typing import NDArray

from seatwork.drawings.style import POINTS, Sizes, Style

Point = tuple[float, float]
Points = NDArray[np.float64]

BREAK = np.full((1, 2), np.nan)
OFFSET = 6.0
"""Gap between the part and an extension line [page units]."""

BEYOND = 8.0
"""How far an extension line runs past its dimension line [page units]."""


def unit(start: Point, end: Point) -> Points:
    """Return the unit vector from `start` to `end`."""
    step = np.subtract(end, start, dtype=float)
    return np.asarray(step / np.hypot(*step))


def joined(lines: Sequence[Points]) -> Points:
    """Join lines into one, broken by NaN where one ends and the next begins."""
    if not lines:
        return BREAK
    pieces = [piece for line in lines for piece in (np.asarray(line, dtype=float), BREAK)]
    return np.concatenate(pieces[:-1])


def arc(center: Point, radius: float, start: float, end: float) -> Points:
    """Return points on an arc from `start` to `end` [deg, counterclockwise from the right]."""
    turn = np.radians(np.linspace(start, end, 61))
    return np.column_stack([center[0] + radius * np.cos(turn), center[1] + radius * np.sin(turn)])


class Linework:
    """Thin lines and arrowheads of one state of a drawing.

    Parameters
    ----------
    sizes : Sizes
        Line weights and the length of an arrowhead.
    """

    def __init__(self, sizes: Sizes) -> None:
        self.sizes = sizes
        self._lines: list[Path] = []
        self._heads: list[Path] = []

    def line(self, *points: Point) -> None:
        """Add a thin line through `points`."""
        self._lines.append(Path(np.array(points, dtype=float)))

    def head(self, tip: Point, direction: Points) -> None:
        """Add an arrowhead with its point at `tip`, pointing along the unit `direction`."""
        length = self.sizes.arrow
        back = np.asarray(tip, dtype=float) - length * direction
        side = np.array([-direction[1], direction[0]]) * length / 6.0
        corners = np.array([tip, back + side, back - side, tip], dtype=float)
        self._heads.append(Path(corners, closed=True))

    def extension(self, start: Point, end: Point) -> None:
        """Add an extension line from the part at `start` past a dimension line at `end`."""
        along = unit(start, end)
        self.line(tuple(start + OFFSET * along), tuple(end + BEYOND * along))

    def dimension(self, start: Point, end: Point) -> None:
        """Add a dimension line with an arrowhead at both ends.

        Where it is too short for two heads, they stand outside and point at each other.
        """
        along = unit(start, end)
        room = float(np.hypot(*np.subtract(end, start, dtype=float)))
        if room > 3.0 * self.sizes.arrow:
            self.line(tuple(start + along * self._inset), tuple(end - along * self._inset))
            self.head(start, -along)
            self.head(end, along)
        else:
            self.outside(start, end, along)

    def outside(self, start: Point, end: Point, along: Points) -> None:
        """Add two arrows that come from outside and end at `start` and at `end`."""
        tail = 2.2 * self.sizes.arrow
        for tip, inward in ((start, along), (end, -along)):
            self.line(tuple(tip - inward * tail), tuple(tip - inward * self._inset))
            self.head(tip, inward)

    def angle(self, apex: Point, radius: float, half_angle: float) -> None:
        """Add an arc over `apex`, `half_angle` [deg] to each side of straight up."""
        inset = np.degrees(self._inset / radius)
        left, right = 90.0 + half_angle, 90.0 - half_angle
        unit_arc = Path.arc(right + inset, left - inset)
        points = np.asarray(unit_arc.vertices, dtype=float) * radius + np.array(apex)
        self._lines.append(Path(points, unit_arc.codes))
        for end, inner in ((left, left - 2.0 * inset), (right, right + 2.0 * inset)):
            tip, before = arc(apex, radius, end, inner)[[0, -1]]
            self.head(tuple(tip), unit(tuple(before), tuple(tip)))

    def leader(self, *points: Point) -> None:
        """Add a leader through `points` with its arrowhead at the last one."""
        along = unit(points[-2], points[-1])
        self.line(*points[:-1], tuple(points[-1] - along * self._inset))
        self.head(points[-1], along)

    @property
    def _inset(self) -> float:
        """Where a line ends short of a tip, so that it does not show past the point."""
        return 0.6 * self.sizes.arrow

    @property
    def lines(self) -> Path:
        """All thin lines as one path [page units]."""
        return Path.make_compound_path(*self._lines)

    @property
    def heads(self) -> Path:
        """All arrowheads as one path [page units]."""
        return Path.make_compound_path(*self._heads)


def linework_patches(axes: Axes, style: Style, *, animated: bool = False) -> list[PathPatch]:
    """Add the two artists that show a `Linework`: its lines and its arrowheads.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    style : Style
        Colors and weights.
    animated : bool
        Whether they move.
    """
    ink, nothing = style.colors.ink, Path(np.zeros((1, 2)))
    lines = PathPatch(nothing, fill=False, edgecolor=ink, linewidth=style.sizes.thin * POINTS)
    lines.set(zorder=5.0, capstyle="butt", animated=animated)
    heads = PathPatch(nothing, facecolor=ink, linewidth=0, zorder=5.1, animated=animated)
    for patch in (lines, heads):
        axes.add_artist(patch)
    return [lines, heads]
