"""Outlines of a seat as it was cut, right or wrong, of its screw, and of what is wrong, in mm.

The face is at height 0 and the axis at 0; a tilted pad falls from the right to the left.
"""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.path import Path

from seatwork.drawings.parts import tightening
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Point, Points
from seatwork.drawings.strokes.metal import Window
from seatwork.seats import Chamfer, Counterbore, Countersink, Head, Spotface
from seatwork.seats.faults import Allowed, CapScrew, Fault, Standing
from seatwork.seats.standing import stands, through

STUB = 0.8
"""Shank drawn of a screw that does not enter its hole, as a share of its head [-]."""

FALLEN = 0.35
"""Where the top of a screw that drops through is drawn, as a share of the part [-]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CutSeat:
    """A seat as it was cut, with the screw in it.

    Parameters
    ----------
    screw : Head or CapScrew
        A flat head for a countersink, a flat underside for every other seat.
    seat : Countersink, Counterbore, Spotface or Chamfer
        As cut.
    thickness : float
        Thickness of the part [mm].
    depth, clean : float
        Of a spotface: how far below first touch it was cut, and what cleans up all round [mm].
    hole_diameter : float
        Of the hole that a chamfer is cut on [mm].
    allowed : Allowed, optional
        What the shop takes for right.
    name : str
        What stands under the picture, such as "as worked out"; blank for the seat's kind.
    held : (float, str), optional
        Where the head is held instead of let down: height of its top above the face [mm], and
        what that is, "in the air" or "in the metal".
    """

    screw: Head | CapScrew
    seat: Countersink | Counterbore | Spotface | Chamfer
    thickness: float
    depth: float = 0.0
    clean: float = 0.0
    hole_diameter: float = 0.0
    allowed: Allowed | None = None
    name: str = ""
    held: tuple[float, str] | None = None

    def standing(self) -> Standing:
        """Find how the screw stands, and what is wrong; raises `SeatworkError` as `stands`."""
        found = stands(
            self.screw, self.seat, self.thickness, depth=self.depth, clean=self.clean,
            hole_diameter=self.hole_diameter, allowed=self.allowed,
        )  # fmt: skip
        if self.held is None:
            return found
        height, state = self.held
        faults = (Fault(name=state, amount=0.0),)
        return Standing(amount=height, bears_at=found.bears_at, left=found.left, faults=faults)

    @property
    def cone(self) -> Countersink | None:
        """The cone as the part leaves it; None for a seat with a floor."""
        if isinstance(self.seat, Chamfer):
            return through(self.seat.at_hole(self.hole_diameter), self.thickness)
        return through(self.seat, self.thickness) if isinstance(self.seat, Countersink) else None

    @property
    def across(self) -> float:
        """Diameter of the seat at the face [mm]."""
        seat: Any = self.cone or self.seat
        return float(seat.diameter)

    @property
    def head_across(self) -> float:
        """Diameter of the head [mm]."""
        return self.screw.edge if isinstance(self.screw, Head) else self.screw.head_diameter


def half_of(part: CutSeat, side: float, half: float) -> Points:
    """Give the surface of one half: from its end, along the face, down the wall, to the back [mm].

    Parameters
    ----------
    part : CutSeat
        The seat.
    side : float
        1 for the right half, -1 for the left [-].
    half : float
        How far out the part is shown [mm].
    """
    if isinstance(part.seat, Spotface):
        points = _on_pad(part, part.seat, side, half)
    else:
        points = np.array([(half, 0.0), *wall(part), (half, -part.thickness)])
    return np.asarray(_without_twice(points) * (side, 1.0))


def wall(part: CutSeat) -> list[Point]:
    """Give the right wall of a seat in a level face, from its rim to the back of the part [mm]."""
    back = -part.thickness
    if (cone := part.cone) is not None:
        return [(float(x), float(y)) for x, y in profiles.countersink_wall(cone, back)]
    seat: Any = part.seat
    if seat.depth >= part.thickness:
        return [(seat.diameter / 2, 0.0), (seat.diameter / 2, back)]
    return [(float(x), float(y)) for x, y in profiles.counterbore_wall(seat, back)]


def _on_pad(part: CutSeat, seat: Spotface, side: float, half: float) -> Points:
    """Give the surface of one half of a pad that falls to the left, faced as far as it was."""
    rim, hole = seat.diameter / 2, seat.hole_diameter / 2
    fall, back = part.clean / seat.diameter, -part.thickness - part.clean

    def rough(out: float) -> float:
        return fall * (side * out - rim)

    def faced(out: float) -> float:
        return max(min(rough(out), -part.depth), back)

    meets = side * (rim - part.depth / fall) if fall else rim
    ring = [(meets, -part.depth)] if hole < meets < rim else []
    inner = rim if -part.depth <= back else hole
    floor = [(rim, faced(rim)), *ring, (inner, faced(inner)), (inner, back)]
    return np.array([(half, rough(half)), (rim, rough(rim)), *floor, (half, back)])


def screw_path(part: CutSeat, found: Standing, window: Window) -> Path:
    """Outline the screw where it stands [page units]."""
    low = -part.thickness - part.clean - 26.0 / window.scale
    lifted = found.state == "does not enter"
    stub = STUB * part.head_across
    if isinstance(part.screw, Head):
        head, hole = part.screw, part.cone.hole_diameter if part.cone else 0.0
        neck = head.neck_diameter or profiles.CLEARANCE * hole
        shank = neck if lifted else min(neck, hole)
        top = _top(part, found, (head.height or 0.0) + stub)
        low = found.bears_at if lifted else min(low, top - profiles.cone_end(head, shank) - shank)
        points = profiles.head_points(head, shank, top, low)
        return Path(window.to_page(points), profiles.HEAD_CODES)
    bolt = tightening.Bolt(
        head=part.screw.head_diameter, height=part.screw.head_height, shank=part.screw.diameter
    )
    under = _top(part, found, part.screw.head_height + stub) - part.screw.head_height
    low = found.bears_at if lifted else low
    return tightening.bolt(bolt, window, seat=under, low=low)


def _top(part: CutSeat, found: Standing, standing_on: float) -> float:
    """Height of the head's top [mm]; `standing_on` is what is above the end of its shank."""
    if found.amount is not None:
        return found.amount
    if found.state == "does not enter":
        return found.bears_at + standing_on
    return -FALLEN * part.thickness


def marks(part: CutSeat, found: Standing) -> tuple[list[Point], list[Points]]:
    """Give what is to be ringed and what is to be underlined, right of the axis [mm]."""
    rings: list[Point] = []
    lines: list[Points] = []
    seat: Any = part.cone or part.seat
    rim, head, low = seat.diameter / 2, part.head_across / 2, found.bears_at
    back = -part.thickness - part.clean
    hole = seat.hole_diameter / 2 if part.cone or found.left > 0 else rim
    for name in found.names:
        if name in ("drops through", "does not enter"):
            rings.append((hole, max(low, back)))
        elif name in ("knife edge", "broken through"):
            rings.append((hole if part.cone else rim, back))
        elif name == "head too wide":
            rings.append((rim, 0.0))
        elif name == "no bearing":
            rings.append((head, low))
        elif name == "on a line" and found.fit is not None:
            rings.append((found.fit.contact_diameter / 2, low))
        elif name == "overhangs":
            lines.append(np.array([(rim, -part.depth), (head, -part.depth)]))
        elif name == "rattling":
            lines.append(np.array([(head, low), (rim, low)]))
        elif name == "thin":
            lines.append(np.array([(hole, back), (hole, back + found.left)]))
    if found.fit is not None and found.fit.contact == "cone":
        lines.append(np.array([(found.fit.contact_diameter / 2, low), (hole, -seat.depth)]))
    return rings, lines


def _without_twice(points: Points) -> Points:
    """Leave out a point that is the same as the one before it."""
    kept = [True, *(np.abs(np.diff(points, axis=0)).max(axis=1) > 1e-12)]
    return np.asarray(points[kept])
