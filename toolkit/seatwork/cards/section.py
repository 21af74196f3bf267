"""What a card's section shows: every seat of one hole, from the face that is up to the other."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations, groupby

import numpy as np

from seatwork import hardware, notes
from seatwork.drawings.strokes.linework import Points
from seatwork.plan import Plan, SeatPlan
from seatwork.plan.blind import FULL, TIP
from seatwork.plan.floors import AT_FLOOR, FROM_FLOOR
from seatwork.plan.resolving import thread_name
from seatwork.plan.sides import BACK, FAR
from seatwork.plan.threads import DEPTH as THREAD_DEPTH
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface

FACED = 0.05
"""Depth drawn for a spotface without a depth, as a share of its diameter; it is not dimensioned."""

OPEN = 1.6
"""Straight hole drawn below a seat where the other face is not shown, in hole diameters."""

UNKNOWN = 0.5
"""Land drawn between two seats where the thickness is not known, in hole diameters."""

NEAR_BY = 1e-6  # mm to each side of a corner, where a wall steps

Pieces = tuple[tuple[float, float, float, float], ...]
"""Pieces of a wall: depth and radius where each begins, and where it ends [mm]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Face:
    """The seat at one face.

    Parameters
    ----------
    diameter, depth : float
        At the face, and from it [mm].
    angle : float or None
        Included angle of a cone [deg].
    dimensioned : bool
        Whether diameter and depth are written on the section.
    """

    diameter: float
    depth: float
    angle: float | None = None
    dimensioned: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """What the section shows.

    Parameters
    ----------
    wall : ndarray
        Outline right of the axis, from the face that is up down [mm].
    hole_diameter : float
        The plain hole [mm].
    upper, lower : Face or None
        The seat at the face that is up, and at the other.
    thickness : float or None
        Of the part, where both faces are shown [mm].
    to_scale : bool
        Whether the thickness is known; else it is drawn as it comes.
    blind : bool
        Whether the hole ends in the part.
    thread : tuple of float or None
        Major diameter, and the depths between which thread is shown [mm].
    """

    wall: Points
    hole_diameter: float
    upper: Face | None = None
    lower: Face | None = None
    thickness: float | None = None
    to_scale: bool = True
    blind: bool = False
    thread: tuple[float, float, float] | None = None

    @property
    def diameter(self) -> float:
        """The widest of it [mm]."""
        return 2 * float(self.wall[:, 0].max())

    @property
    def depth(self) -> float:
        """How deep it must be shown [mm]."""
        if self.thickness is not None:
            return self.thickness
        seat = self.upper.depth if self.upper else 0.0
        return -float(self.wall[-1, 1]) if self.blind else seat


def section_of(plan: Plan, spot: int, *, turned: bool = False) -> Shown | None:
    """Return the section of one hole as the part lies; None where there is nothing to show.

    Parameters
    ----------
    plan : Plan
        The plan.
    spot : int
        Which holes, as its seats say.
    turned : bool
        Whether the far face is up.
    """
    seats = [seat for seat in plan.seats if seat.spot == spot]
    hole = next((size.value for seat in seats if (size := seat.size("hole"))), None)
    if hole is None:
        return None
    up = [seat for seat in seats if (seat.side in (FAR, BACK)) is turned]
    down = [seat for seat in seats if seat not in up]
    above, below = list(_cuts(up)), list(_cuts(down))
    if above and below:
        return _whole(hole, above, below, plan.thickness)
    blind = [] if turned else list(_blind(seats, hole))
    pieces = [*(piece for cut in above for piece in cut[1]), *blind]
    deepest = max((piece[2] for piece in pieces), default=0.0)
    bottom = deepest if blind else deepest + OPEN * hole
    wall = _outline(tuple(pieces if blind else [*pieces, (0.0, hole / 2, bottom, hole / 2)]))
    thread = None if turned else _thread(plan, seats, wall, bottom)
    face = above[0][0] if above else None
    return Shown(wall=wall, hole_diameter=hole, upper=face, blind=bool(blind), thread=thread)


def _whole(hole: float, above: list["Cut"], below: list["Cut"], thickness: float | None) -> Shown:
    """Return a hole with seats at both faces."""
    deep = [max(piece[2] for _, pieces in cuts for piece in pieces) for cuts in (above, below)]
    thick = sum(deep) + UNKNOWN * hole if thickness is None else thickness
    pieces = [(0.0, hole / 2, thick, hole / 2)]
    pieces += [piece for _, found in above for piece in found]
    pieces += [(thick - z1, r1, thick - z0, r0) for _, found in below for z0, r0, z1, r1 in found]
    return Shown(
        wall=_outline(tuple(pieces)),
        hole_diameter=hole,
        upper=above[0][0],
        lower=below[0][0],
        thickness=thick,
        to_scale=thickness is not None,
    )


Cut = tuple[Face, Pieces]


def _cuts(seats: Sequence[SeatPlan]) -> Iterator[Cut]:
    """Yield the seats of one side, that at the face first, with their walls."""
    found = [cut for seat in seats if (cut := _cut(seat))]
    yield from sorted(found, key=lambda cut: (cut[1][0][0], -cut[0].diameter))


def _cut(seat: SeatPlan) -> Cut | None:
    shape, hole = seat.shape, seat.size("hole")
    if isinstance(shape, Chamfer) and hole is not None:
        shape = shape.at_hole(hole.value)
    half = shape.diameter / 2 if isinstance(shape, Countersink | Counterbore | Spotface) else 0.0
    match shape:
        case Countersink():
            top = _floor_under(seat)
            face = Face(
                diameter=shape.diameter,
                depth=shape.depth,
                angle=shape.included_angle,
                dimensioned=top == 0.0,
            )
            return face, ((top, half, top + shape.depth, shape.hole_diameter / 2),)
        case Counterbore():
            face = Face(diameter=shape.diameter, depth=shape.depth)
            return face, ((0.0, half, shape.depth, half),)
        case Spotface():
            deep = FACED * shape.diameter
            face = Face(diameter=shape.diameter, depth=deep, dimensioned=False)
            return face, ((0.0, half, deep, half),)
    return None


def _floor_under(seat: SeatPlan) -> float:
    """Return how deep the floor lies that a seat is cut on; 0 at the face [mm]."""
    if seat.size(AT_FLOOR) is None:
        return 0.0
    deep, own = seat.size("depth from the face"), seat.size(FROM_FLOOR)
    return deep.value - own.value if deep and own else 0.0


def _blind(seats: Sequence[SeatPlan], hole: float) -> Iterator[tuple[float, float, float, float]]:
    """Yield the wall of a blind hole: full diameter, then its point."""
    full = next((s for seat in seats if (s := seat.size(FULL))), None)
    tip = next((s for seat in seats if (s := seat.size(TIP))), None)
    if full is not None and tip is not None:
        yield (0.0, hole / 2, full.value, hole / 2)
        yield (full.value, hole / 2, tip.value, 0.0)


def _thread(
    plan: Plan, seats: Sequence[SeatPlan], wall: Points, bottom: float
) -> tuple[float, float, float] | None:
    """Return major diameter and ends of the thread, where the note has one thread alone."""
    if not any(seat.kind == "tapped hole" for seat in seats):
        return None
    threads = [one for one in plan.callout.features if isinstance(one, notes.Thread)]
    majors = {hardware.thread(thread_name(one)).diameter for one in threads}
    if len(majors) != 1:
        return None
    major = majors.pop()
    wide = [-float(height) for radius, height in wall if radius >= major / 2]
    depth = next((s.value for seat in seats if (s := seat.size(THREAD_DEPTH))), bottom)
    return major, max(wide, default=0.0), depth


def _outline(pieces: Pieces) -> Points:
    """Return the outline of all that is cut away, from the face down."""
    corners = {depth for piece in pieces for depth in (piece[0], piece[2])}
    corners |= set(_crossings(pieces))
    deepest = max(corners)
    spots = sorted({depth + step for depth in corners for step in (-NEAR_BY, NEAR_BY)})
    inside = [depth for depth in spots if 0.0 <= depth <= deepest]
    found = ((_radius(pieces, depth), -round(depth, 5)) for depth in inside)
    return np.array([corner for corner, _ in groupby(found)])


def _radius(pieces: Pieces, depth: float) -> float:
    """Return how wide the hole is at a depth [mm]: the widest of what is cut there."""
    wide = [
        r0 + (r1 - r0) * (depth - z0) / (z1 - z0)
        for z0, r0, z1, r1 in pieces
        if z0 <= depth <= z1 and z1 > z0
    ]
    return round(max(wide, default=0.0), 5)


def _crossings(pieces: Pieces) -> Iterator[float]:
    """Yield the depths at which two walls cross [mm]."""
    for (a0, p0, a1, p1), (b0, q0, b1, q1) in combinations(pieces, 2):
        start, end = max(a0, b0), min(a1, b1)
        if start >= end:
            continue
        gaps = [
            p0 + (p1 - p0) * (z - a0) / (a1 - a0) - q0 - (q1 - q0) * (z - b0) / (b1 - b0)
            for z in (start, end)
        ]
        if gaps[0] * gaps[1] < 0.0:
            yield start + (end - start) * gaps[0] / (gaps[0] - gaps[1])
