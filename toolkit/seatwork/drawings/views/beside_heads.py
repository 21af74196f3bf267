"""Heads where one's own number puts them: over a seat beside its hole, and on a leaning pad."""

from dataclasses import dataclass

import numpy as np

from seatwork.drawings.strokes.linework import Point, Points
from seatwork.drawings.strokes.sketch import Sketch
from seatwork.seats.cones import half_tangent

FACE, BACK, HALF = 210.0, 60.0, 180.0
"""Face and back of the plate, and half of its width [page units]."""

MOUTH, HOLE, NECK, OFFSET = 125.0, 62.0, 46.0, 24.0
"""Halves of mouth, hole and shank, and the offset as drawn: larger than it is [page units]."""

REACH = 130.0
"""How far above or below the face a head may be drawn [page units]."""

PAD, WIDE, TALL, SHANK = 150.0, 230.0, 90.0, 42.0
"""High edge of the pad under the head, width and height of the head, half of the shank
[page units]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LiftedHead:
    """A head held on the axis of its hole, over a seat that was cut beside it.

    Parameters
    ----------
    offset : float
        Axis of the seat beside the axis of the hole [mm].
    included_angle : float
        Of head and seat [deg].
    right, own : float
        How far the head stands above the face [mm].
    """

    offset: float
    included_angle: float
    right: float
    own: float

    @property
    def box(self) -> tuple[float, float]:
        """Lower and upper end of the picture [page units]."""
        return BACK - 20.0, self._highest + 12.0

    @property
    def _highest(self) -> float:
        return FACE + max(0.0, *(self._lift(value) for value in (self.right, self.own))) + 28.0

    @property
    def _tangent(self) -> float:
        return half_tangent(self.included_angle)

    def _lift(self, value: float) -> float:
        return OFFSET * value / self.offset

    def fits(self) -> bool:
        """Tell whether one's own lies within the picture."""
        return abs(self._lift(self.own)) <= REACH

    def _outline(self, middle: float, value: float) -> list[Point]:
        top = FACE + self._lift(value)
        neck = top - (MOUTH - NECK) / self._tangent
        half = [(MOUTH, top), (NECK, neck), (NECK, BACK - 12.0)]
        return [(middle + x, y) for x, y in half] + [(middle - x, y) for x, y in reversed(half)]

    def draw(self, sketch: Sketch, middle: float, value: float) -> None:
        """Draw the plate, the head, and where one would be in the other."""
        for side in (-1.0, 1.0):
            rim = OFFSET + side * MOUTH
            low = FACE - (MOUTH - HOLE + side * OFFSET) / self._tangent
            edge = [(side * HALF, FACE), (rim, FACE), (side * HOLE, low), (side * HOLE, BACK)]
            points = [(middle + x, y) for x, y in edge]
            outer = middle + side * HALF
            sketch.metal([*points, (outer, BACK)])
            sketch.edge(points, [points[-1], (outer, BACK)], order=4.5)
            sketch.thin([(outer, FACE), (outer, BACK)])
        sketch.steel(self._outline(middle, value))
        sketch.center((middle, BACK - 18.0), (middle, self._highest))
        overlap = self._overlap(value)
        if len(overlap):
            sketch.cannot_be(np.add(overlap, (middle, 0.0)))
        if value == self.right:
            self._touch(sketch, middle)

    def _touch(self, sketch: Sketch, middle: float) -> None:
        """Mark where the right head touches: one side of its slope."""
        low = FACE - (MOUTH - HOLE - OFFSET) / self._tangent
        line = [(middle + OFFSET - MOUTH, FACE), (middle - HOLE, low)]
        sketch.contact(line)

    def _overlap(self, value: float) -> Points:
        """Return the corners of what would be head and metal at once, on the near side."""
        top = FACE + self._lift(value)
        levels = np.linspace(BACK, min(FACE, top), 60)
        head = -np.maximum(NECK, MOUTH - (top - levels) * self._tangent)
        metal = np.minimum(OFFSET - MOUTH + (FACE - levels) * self._tangent, -HOLE)
        inside = head < metal - 0.5
        if not inside.any():
            return np.empty((0, 2))
        left = np.column_stack([head[inside], levels[inside]])
        right = np.column_stack([metal[inside], levels[inside]])
        return np.concatenate([left, right[::-1]])

    def dashed(self, sketch: Sketch, middle: float) -> None:
        """Draw the outline of the head where it stands."""
        points = self._outline(middle, self.right)
        sketch.hidden([points[1], points[0], points[-1], points[-2]], order=4.7)


@dataclass(frozen=True, slots=True, kw_only=True)
class LeaningPad:
    """A head held square to its hole, on a pad that leans so far that such a gap is left.

    Parameters
    ----------
    width : float
        Of the head [mm].
    right, own : float
        Gap under the open side [mm].
    """

    width: float
    right: float
    own: float

    @property
    def box(self) -> tuple[float, float]:
        """Lower and upper end of the picture [page units]."""
        return 14.0, PAD + TALL + 40.0

    def _gap(self, value: float) -> float:
        return WIDE * value / self.width

    def fits(self) -> bool:
        """Tell whether the gap can be seen under the head."""
        return 0 <= self._gap(self.own) <= 0.4 * WIDE

    def _pad(self, middle: float, value: float, x: float) -> Point:
        return middle + x, PAD - self._gap(value) * (x + WIDE / 2) / WIDE

    def draw(self, sketch: Sketch, middle: float, value: float) -> None:
        """Draw the pad with its hole, and the head that touches on the high side."""
        for inner, outer in ((-SHANK, -HALF), (SHANK, HALF)):
            ends = [self._pad(middle, value, x) for x in (inner, outer)]
            sketch.metal([*ends, (middle + outer, 24.0), (middle + inner, 24.0)])
            sketch.edge(ends, [(middle + inner, 24.0), ends[0]])
        left, right, top = middle - WIDE / 2, middle + WIDE / 2, PAD + TALL
        shank = [(middle + x, y) for x, y in ((-36.0, 24.0), (36.0, 24.0), (36.0, PAD))]
        sketch.steel([*shank, (middle - 36.0, PAD)])
        sketch.steel([(left, PAD), (right, PAD), (right, top), (left, top)])
        sketch.edge(*([(middle + x, PAD), (middle + x, top)] for x in (-58.0, 58.0)))
        sketch.center((middle, 16.0), (middle, top + 22.0))
        sketch.contact([(left - 5.0, PAD), (left + 5.0, PAD)])

    def dashed(self, sketch: Sketch, middle: float) -> None:
        """Draw the right pad."""
        sketch.hidden(
            [self._pad(middle, self.right, -HALF), self._pad(middle, self.right, HALF)], order=4.7
        )
