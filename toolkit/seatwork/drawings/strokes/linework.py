"""Dimension lines, extension lines, leaders and arcs, gathered into two artists.

All the thin lines of a picture are one path and all its arrowheads another, so that a move of
the part sets two artists and not forty; arcs are curves, so that it stays short on the wire.
"""

from collections.abc import Sequence
from math import cos, degrees, hypot, nan, radians, sin

import numpy as np
from matplotlib.axes import Axes
from matplotlib.patches import PathPatch
from matplotlib.path import Path
from numpy.typing import NDArray

from seatwork.drawings.strokes.style import POINTS, Sizes, Style

Point = tuple[float, float]
Points = NDArray[np.float64]

BREAK = np.full((1, 2), np.nan)
OFFSET = 6.0
"""Gap between the part and an extension line [page units]."""

BEYOND = 8.0
"""How far an extension line runs past its dimension line [page units]."""

MOVE, LINE = int(Path.MOVETO), int(Path.LINETO)
HEAD = [MOVE, LINE, LINE, int(Path.CLOSEPOLY)]
"""What the four points of an arrowhead are to its path."""


def unit(start: Point, end: Point) -> Points:
    """Return the unit vector from `start` to `end`."""
    step = np.subtract(end, start, dtype=float)
    return np.asarray(step / np.hypot(*step))


def joined(lines: Sequence[Points]) -> Points:
    """Join lines into one, broken by NaN where one ends and the next begins."""
    if not lines:
        return BREAK
    pieces = [piece for line in lines for piece in (line, BREAK)]
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
        self._points: list[Point] = []
        self._codes: list[int] = []
        self._corners: list[Point] = []

    def line(self, *points: Point) -> None:
        """Add a thin line through `points`."""
        self._points += points
        self._codes += [MOVE, *[LINE] * (len(points) - 1)]

    def head(self, tip: Point, direction: Point) -> None:
        """Add an arrowhead with its point at `tip`, pointing along the unit `direction`."""
        (x, y), (a, b), length = tip, direction, self.sizes.arrow
        u, v, half = x - length * a, y - length * b, length / 6.0
        wings = (u - half * b, v + half * a), (u + half * b, v - half * a)
        self._corners += [(x, y), *wings, (x, y)]

    def extension(self, start: Point, end: Point) -> None:
        """Add an extension line from the part at `start` past a dimension line at `end`."""
        along = _along(start, end)
        self.line(_from(start, along, OFFSET), _from(end, along, BEYOND))

    def dimension(self, start: Point, end: Point) -> None:
        """Add a dimension line with an arrowhead at both ends.

        Where it is too short for two heads, they stand outside and point at each other.
        """
        along = _along(start, end)
        if hypot(end[0] - start[0], end[1] - start[1]) > 3.0 * self.sizes.arrow:
            self.line(_from(start, along, self._inset), _from(end, along, -self._inset))
            self.head(start, (-along[0], -along[1]))
            self.head(end, along)
        else:
            self.outside(start, end, along)

    def outside(self, start: Point, end: Point, along: Point) -> None:
        """Add two arrows that come from outside and end at `start` and at `end`."""
        tail = 2.2 * self.sizes.arrow
        for tip, inward in ((start, along), (end, (-along[0], -along[1]))):
            self.line(_from(tip, inward, -tail), _from(tip, inward, -self._inset))
            self.head(tip, inward)

    def angle(self, apex: Point, radius: float, half_angle: float) -> None:
        """Add an arc over `apex`, `half_angle` [deg] to each side of straight up."""
        inset = degrees(self._inset / radius)
        left, right = 90.0 + half_angle, 90.0 - half_angle
        curve = Path.arc(right + inset, left - inset)
        points = np.asarray(curve.vertices, dtype=float) * radius + np.array(apex)
        self._points += points.tolist()
        self._codes += np.asarray(curve.codes).tolist()
        for end, inner in ((left, left - 2.0 * inset), (right, right + 2.0 * inset)):
            tip, before = _on_arc(apex, radius, end), _on_arc(apex, radius, inner)
            self.head(tip, _along(before, tip))

    def leader(self, *points: Point) -> None:
        """Add a leader through `points` with its arrowhead at the last one."""
        along = _along(points[-2], points[-1])
        self.line(*points[:-1], _from(points[-1], along, -self._inset))
        self.head(points[-1], along)

    @property
    def _inset(self) -> float:
        """Where a line ends short of a tip, so that it does not show past the point."""
        return 0.6 * self.sizes.arrow

    @property
    def lines(self) -> Path:
        """All thin lines as one path [page units]."""
        return _path(self._points, self._codes)

    @property
    def heads(self) -> Path:
        """All arrowheads as one path [page units]."""
        return _path(self._corners, HEAD * (len(self._corners) // len(HEAD)))


def _along(start: Point, end: Point) -> Point:
    """Return the unit vector from `start` to `end`; NaN where they are one point."""
    a, b = end[0] - start[0], end[1] - start[1]
    length = hypot(a, b) or nan
    return a / length, b / length


def _from(point: Point, along: Point, distance: float) -> Point:
    """Return what lies `distance` from a point along a unit vector."""
    return point[0] + distance * along[0], point[1] + distance * along[1]


def _on_arc(center: Point, radius: float, angle: float) -> Point:
    """Return the point of an arc at an angle [deg, counterclockwise from the right]."""
    turn = radians(angle)
    return center[0] + radius * cos(turn), center[1] + radius * sin(turn)


def _path(points: list[Point], codes: list[int]) -> Path:
    """Return one path of all points; its codes say where a line begins, and none has none."""
    return Path(np.array(points, dtype=float).reshape(-1, 2), codes or None)


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
