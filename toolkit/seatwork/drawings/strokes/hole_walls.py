"""The wall of one hole with every seat cut on it, on both faces: radius against depth, in mm."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Points
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface

CLEAN_UP = 0.04
"""Depth drawn for a spotface that goes as deep as it must, as a share of its diameter."""

UNKNOWN = 0.9
"""Metal drawn beyond the seats of a plate whose thickness is not known, in hole diameters."""

Shape = Countersink | Counterbore | Spotface | Chamfer


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatCut:
    """One seat of the hole.

    Parameters
    ----------
    shape : Countersink, Counterbore, Spotface or Chamfer
        The seat.
    start : float
        Depth below its face at which it begins [mm].
    far : bool
        Whether it lies on the far face.
    across, deep : str
        What is written at the diameter and at the depth; empty where there is none.
    """

    shape: Shape
    start: float = 0.0
    far: bool = False
    across: str = ""
    deep: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class CutHole:
    """A hole with its seats, and what stands beside it.

    Parameters
    ----------
    heading : str
        What it is.
    hole : str
        What is written of the hole.
    hole_diameter : float
        The hole [mm]; 0 leaves the page with its words alone.
    seats : tuple of SeatCut
        Its seats, on either face.
    thickness : float or None
        Of the part [mm]; None where it is not known.
    thick : str
        What is written at the thickness.
    blind, tip : float or None
        Depth of a blind hole, to the end of its straight wall and to its point [mm]; flat where
        no point is told.
    text : str
        The text twin.
    """

    heading: str
    hole: str
    hole_diameter: float = 0.0
    seats: tuple[SeatCut, ...] = ()
    thickness: float | None = None
    thick: str = ""
    blind: float | None = None
    tip: float | None = None
    text: str = ""


def seat_wall(seat: SeatCut, hole_diameter: float) -> Points:
    """Return radius and depth of a seat's wall, from its face to its hole [mm].

    Parameters
    ----------
    seat : SeatCut
        The seat.
    hole_diameter : float
        The hole [mm].

    Returns
    -------
    ndarray
        Shape (n, 2): radius, depth below the face.
    """
    shape = seat.shape
    if isinstance(shape, Chamfer):
        shape = shape.at_hole(hole_diameter)
    if isinstance(shape, Spotface):
        wall = profiles.spotface_wall(shape, CLEAN_UP * shape.diameter, -shape.diameter)
    elif isinstance(shape, Counterbore):
        wall = profiles.counterbore_wall(shape, -2 * shape.depth)
    else:
        wall = profiles.countersink_wall(shape, -2 * shape.depth)
    return np.array([(x, seat.start - y) for x, y in wall[:-1]])


def side_wall(seats: Sequence[SeatCut], hole_diameter: float) -> Points:
    """Return the wall of a hole on one face, its widest seat at each depth [mm].

    Parameters
    ----------
    seats : sequence of SeatCut
        The seats on that face; none leaves the plain hole.
    hole_diameter : float
        The hole [mm].

    Returns
    -------
    ndarray
        Shape (n, 2): radius, depth below the face, from the face down to the plain hole.
    """
    walls = [seat_wall(seat, hole_diameter) for seat in seats]
    walls.sort(key=lambda wall: float(wall[0, 0]), reverse=True)
    half, points = hole_diameter / 2, []
    reached = 0.0
    for wall in walls:
        start = max(reached, float(wall[0, 1]))
        kept = [(float(x), float(y)) for x, y in wall if y > start or (y == start and x > half)]
        radius = float(np.interp(start, wall[:, 1], wall[:, 0]))
        points += [(radius, start), *kept]
        reached = max(reached, float(wall[-1, 1]))
    unique = [one for number, one in enumerate(points) if number == 0 or one != points[number - 1]]
    return np.array([*unique, (half, reached)] if unique else [(half, 0.0)])


def thickness_of(part: CutHole) -> float:
    """Return the thickness drawn [mm]: the part's own, or enough to show every seat."""
    if part.thickness is not None:
        return part.thickness
    deep = sum(_deep(part, far=far) for far in (False, True))
    if part.blind is not None:
        deep = max(deep, part.blind, part.tip or 0.0)
    return deep + UNKNOWN * part.hole_diameter


def wall_of(part: CutHole, far: bool) -> Points:
    """Return the wall of a hole on one face: radius, depth below that face [mm]."""
    return side_wall([one for one in part.seats if one.far is far], part.hole_diameter)


def _deep(part: CutHole, *, far: bool) -> float:
    return float(wall_of(part, far)[-1, 1])


def outline(part: CutHole) -> Points:
    """Return the wall right of the axis, from the near face down; depth is negative [mm]."""
    near = wall_of(part, False) * np.array([1.0, -1.0])
    if part.blind is not None:
        tip = part.blind if part.tip is None else part.tip
        end = np.array([(part.hole_diameter / 2, -part.blind), (0.0, -tip)])
        return np.concatenate([near, end])
    thick = thickness_of(part)
    if _deep(part, far=False) + _deep(part, far=True) > thick:
        return _met(part, thick)
    far = wall_of(part, True)[::-1]
    return np.concatenate([near, np.column_stack([far[:, 0], far[:, 1] - thick])])


def rims(part: CutHole, wall: Points) -> Points:
    """Return where the wall turns, so that an edge is seen across the hole [mm]."""
    before, here, after = wall[:-2], wall[1:-1], wall[2:]
    turn = _turn(here - before, after - here) if len(wall) > 2 else np.zeros(0)
    corners = np.concatenate([wall[:1], here[np.abs(turn) > 1e-6 * part.hole_diameter], wall[-1:]])
    return corners[corners[:, 0] > 0.0]


def _turn(one: Points, next_one: Points) -> Points:
    return one[:, 0] * next_one[:, 1] - one[:, 1] * next_one[:, 0]


def _met(part: CutHole, thick: float) -> Points:
    """Return the wall where seats meet inside the part, or go through it [mm]."""
    near, far = (wall_of(part, side) for side in (False, True))
    down = np.unique(np.concatenate([np.linspace(0.0, thick, 401), near[:, 1], thick - far[:, 1]]))
    down = down[(down >= 0.0) & (down <= thick)]
    radii = [
        np.interp(depth, wall[:, 1], wall[:, 0])
        for wall, depth in ((near, down), (far, thick - down))
    ]
    return np.column_stack([np.maximum(*radii), -down])
