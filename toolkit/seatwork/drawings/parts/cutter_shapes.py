"""Cutters in outline, tip down, and seen from their tip: angle, lips, nose or pilot, shank."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Circle, PathPatch
from matplotlib.path import Path

from seatwork.drawings.parts.tightening import STEM, broken
from seatwork.drawings.strokes.linework import Point, Points, arc, joined
from seatwork.drawings.strokes.profiles import left_and_right
from seatwork.drawings.strokes.style import POINTS, Style
from seatwork.seats import Countersink

LAND, BODY, PILOT, NECK = 0.35, 0.8, 0.55, 0.6
"""Drawn, not measured [bodies]: the straight part over a cone, the length of a flat-bottomed
body, the length of a pilot, and a shank of unknown size."""

TAPER, NARROWS = 17.8, 0.05
"""Large end of a Morse taper 2 [mm] and how fast it narrows (1 in 20), both from memory."""

SHARP = 0.02
"""Nose drawn for a point [bodies]."""

GULLET, WIDEST, FIRST, CORE = 0.4, 60.0, 65.0, 0.35
"""Drawn, not measured: width of the gap beside a lip [spacings], the most of it [deg], where the
first lip stands [deg], and the core between the lips [radii]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CutterShape:
    """What is drawn of a cutter.

    Parameters
    ----------
    included_angle : float
        Of the cone [deg]; 180 for a flat-bottomed cutter.
    body, nose : float
        Diameters of body and nose [mm]; a nose of 0 is a point.
    lips : tuple of float
        Angle from each lip to the next [deg].
    pilot : float, optional
        Diameter of its pilot [mm].
    removable : bool
        Whether the pilot can be changed.
    shank : float, optional
        Diameter of a straight shank [mm].
    tapered : bool
        Whether it has a Morse taper shank.
    cross_hole : bool
        Whether it cuts with the curved edge of a hole through the cone.
    """

    included_angle: float
    body: float
    nose: float
    lips: tuple[float, ...]
    pilot: float | None = None
    removable: bool = False
    shank: float | None = None
    tapered: bool = False
    cross_hole: bool = False

    @property
    def flat(self) -> bool:
        """Whether it leaves a flat floor."""
        return self.included_angle >= 180

    @property
    def tip(self) -> float:
        """Diameter at which its lips begin [mm]."""
        return max(self.nose, self.pilot or 0.0, SHARP * self.body)

    @property
    def cone(self) -> float:
        """Height of the cone [mm]; 0 for a flat-bottomed cutter."""
        if self.flat:
            return 0.0
        return Countersink(
            diameter=self.body, hole_diameter=self.tip, included_angle=self.included_angle
        ).depth

    @property
    def below(self) -> float:
        """How far the pilot stands out [mm]."""
        return PILOT * self.body if self.pilot else 0.0

    @property
    def places(self) -> tuple[float, ...]:
        """Angle of each lip, counterclockwise from the right, seen from the tip [deg]."""
        return tuple(float(place) for place in np.cumsum((FIRST, *self.lips[:-1])))


def add_side(axes: Axes, its: Style, shape: CutterShape, *, at: Point, top: float,
             scale: float) -> None:  # fmt: skip
    """Draw a cutter from the side.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    its : Style
        Colors and weights.
    shape : CutterShape
        The cutter.
    at : tuple of float
        Its lowest spot [page units].
    top : float
        Where its shank is broken off [page units].
    scale : float
        Page units per mm [1/mm].
    """
    tip = (at[0], at[1] + scale * shape.below)
    outline = _outline(shape, tip, top, scale)
    looks: dict[str, Any] = {"facecolor": its.colors.screw, "edgecolor": its.colors.ink}
    thin = its.sizes.thin * POINTS
    axes.add_artist(PathPatch(outline, linewidth=thin, zorder=3.0, **looks))
    seen = Line2D(*_edges(shape, tip, scale).T, color=its.colors.ink, linewidth=0.8 * thin)
    seen.set_zorder(3.1)
    axes.add_artist(seen)
    if shape.removable and shape.pilot:
        _add_stem(axes, its, tip, scale * np.array([STEM * shape.pilot / 2, 0.5 * shape.body]))
    if shape.cross_hole:
        middle = (tip[0], tip[1] + 0.55 * scale * shape.cone)
        radius = 0.17 * scale * shape.body
        hole = Circle(middle, radius, facecolor=its.colors.paper, edgecolor=its.colors.ink)
        hole.set(linewidth=thin, zorder=3.2)
        axes.add_artist(hole)


def add_end(axes: Axes, its: Style, shape: CutterShape, at: Point, scale: float) -> None:
    """Draw a cutter as seen from its tip, `at` its middle [page units]; gaps stay open."""
    colors, thin = its.colors, its.sizes.thin * POINTS
    radius, tip = scale * shape.body / 2, scale * shape.tip / 2
    line: dict[str, Any] = {"edgecolor": colors.ink, "linewidth": thin}
    around = Path(_around(shape, at, radius), closed=True)
    axes.add_artist(PathPatch(around, facecolor=colors.screw, zorder=3.0, **line))
    for place in shape.places if shape.cross_hole else ():
        spot = arc(at, 0.55 * radius, place, place)[0]
        axes.add_artist(Circle(spot, 0.3 * radius, facecolor=colors.paper, zorder=3.1, **line))
    axes.add_artist(Circle(at, tip, facecolor=colors.screw, zorder=3.2, **line))


def _around(shape: CutterShape, at: Point, radius: float) -> Points:
    """Outline as seen from the tip: a land for each lip, and between them the core."""
    if shape.cross_hole:
        return arc(at, radius, 0.0, 360.0)
    core, pieces = max(CORE * radius, radius * shape.tip / shape.body), []
    for place, spacing in zip(shape.places, shape.lips, strict=True):
        start = place + min(GULLET * spacing, WIDEST)
        pieces += [arc(at, core, place, start), arc(at, radius, start, place + spacing)]
    outline = np.concatenate(pieces)
    return np.concatenate([outline, outline[:1]])


def _outline(shape: CutterShape, tip: Point, top: float, scale: float) -> Path:
    """Outline from the upper left down round the tip to the upper right [page units]."""
    body, high = shape.body / 2, shape.cone + (BODY if shape.flat else LAND) * shape.body
    right = [(body, high), (body, shape.cone)]
    right += [(shape.tip / 2, 0.0)] if not shape.flat or shape.pilot else [(0.0, 0.0)]
    if shape.pilot:
        right += [(shape.pilot / 2, 0.0), (shape.pilot / 2, -shape.below)]
    shank = _shank(shape)
    down, up = (
        np.array(tip) + scale * side for side in left_and_right(np.array([(shank, high), *right]))
    )
    end = scale * shank - (NARROWS * (top - down[0, 1]) / 2 if shape.tapered else 0.0)
    ends = np.array([(tip[0] + end, top), (tip[0] - end, top)])
    return broken(np.concatenate([down, up[::-1]]), ends)


def _shank(shape: CutterShape) -> float:
    """Half of the shank where it leaves the body [mm]."""
    if shape.tapered:
        return TAPER / 2
    return (shape.shank or NECK * shape.body) / 2


def _edges(shape: CutterShape, tip: Point, scale: float) -> Points:
    """Lips and flutes on the near side, as they are seen; and where body and cone meet."""
    body, nose = shape.body / 2, shape.tip / 2
    high = shape.cone + (BODY if shape.flat else LAND) * shape.body
    lines = [] if shape.flat else [np.array([(-body, shape.cone), (body, shape.cone)])]
    for place in () if shape.cross_hole else shape.places:
        across = float(np.cos(np.radians(place)))
        if place % 360 > 180:
            continue
        run = [(nose * across, 0.0), (body * across, shape.cone)]
        if shape.flat:
            run = [(body * across, 0.0)]
        lines.append(np.array([*run, (body * across, high)]))
    return np.array(tip) + scale * joined(lines)


def _add_stem(axes: Axes, its: Style, tip: Point, half: Points) -> None:
    """Draw the hidden stem of a removable pilot: half its width, its height [page units]."""
    wide, high = half
    points = np.array([(-wide, 0.0), (-wide, high), (wide, high), (wide, 0.0)]) + np.array(tip)
    stem = Line2D(*points.T, color=its.colors.ink, linewidth=0.8 * its.sizes.thin * POINTS)
    stem.set(linestyle=(0, (4.0, 2.0)), zorder=3.2)
    axes.add_artist(stem)
