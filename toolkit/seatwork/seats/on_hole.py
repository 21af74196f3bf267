"""A head in a seat that sits beside its hole, on a part that lay crooked.

Lengths are millimeters, angles are degrees.

Notes
-----
Hole and seat lean together: the part lay on a chip, or a pilot followed a crooked hole. The screw
follows the hole, so it leans with them. How it stands along the hole is `off_center`'s sum; on
the face its flat top then runs from high to low. With the top S above the seat's face, measured
along the hole, the head's edge at radius R and a lean of t, the two sides stand

    S cos t + R sin t    and    S cos t - R sin t

above the face. The head touches where no gap is left. In the direction v from the side that
touches, the gap is least at the hole edge, at the seat's rim or at the head's own edge, since
along that ray the two slopes part the more the farther they are from one of them.
"""

from dataclasses import dataclass
from math import cos, radians, sin

import numpy as np
from numpy.typing import NDArray

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Angle
from seatwork.seats.cones import Countersink
from seatwork.seats.heads import BEDDED, Head
from seatwork.seats.off_center import off_center

STEEPEST = 30.0
"""Greatest lean taken [deg]: a drill walks off long before."""

TURNS = 1801
"""Directions looked at over half a turn [-]: every tenth of a degree."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OnHole:
    """How a head stands in a seat beside its hole.

    Parameters
    ----------
    amount : float
        Height of the top's middle above the seat's face, along the hole [mm]; minus below it.
    left_over : float
        Offset that remains after the screw has shifted [mm].
    high, low : float
        Heights of the head's edge above the face, on the side that leans up and opposite [mm].
    arc : float
        How much of the turn touches [deg]: 360 for a seat on its hole.
    gap : float
        Widest gap between head and seat, along the hole, opposite the side that touches [mm].
    """

    amount: float
    left_over: float
    high: float
    low: float
    arc: float
    gap: float

    def __repr__(self) -> str:
        return (
            f"<OnHole {self.high:.3f} and {self.low:.3f} mm above the face, touches over "
            f"{self.arc:g}°>"
        )


def on_hole(
    head: Head, seat: Countersink, *, offset: float, lean: float, play: float = 0.0
) -> OnHole:
    """Find how a head stands on two sides, and how much of it touches.

    Parameters
    ----------
    head : Head
        The screw's head.
    seat : Countersink
        The seat, its diameter measured square to the hole.
    offset : float
        Distance between the axis of the seat and that of the screw's hole or thread [mm].
    lean : float
        How far hole and seat lean from square to the face [deg], 0 to 30; the side that the seat
        was moved away from is the high one, which is the worst case.
    play : float
        How far the screw can shift sideways [mm]; zero for a screw held by its thread.

    Returns
    -------
    OnHole
        Heights on two sides, contact and gap.

    Raises
    ------
    SeatworkError
        If the lean is out of range, the head leaves the seat at one side, or cannot sit in it.

    Examples
    --------
    >>> head = Head(sharp_diameter=12.8778, included_angle=82)
    >>> seat = Countersink(diameter=12.8778, hole_diameter=6.7564, included_angle=82)
    >>> found = on_hole(head, seat, offset=0.127, lean=0)
    >>> found.high / 25.4, found.gap / 25.4
    (0.00575, 0.0115)
    >>> found = on_hole(head, seat, offset=0, lean=1)
    >>> (found.high - found.low) / 25.4
    0.00885
    """
    _refuse_a_lean_beyond_drilling(lean)
    lies = off_center(head, seat, offset=offset, play=play)
    gaps = _gaps(head, seat, lies.left_over, lies.amount)
    up, across = lies.amount * cos(radians(lean)), head.edge / 2 * sin(radians(lean))
    return OnHole(
        amount=lies.amount,
        left_over=lies.left_over,
        high=up + across,
        low=up - across,
        arc=360.0 * _share(gaps <= BEDDED),
        gap=float(gaps.max()),
    )


def lean_from_chip(*, chip: float, width: float) -> float:
    """Find how far a part leans that lies on a chip.

    Parameters
    ----------
    chip : float
        Thickness of the chip under one edge [mm].
    width : float
        Width of the part, from that edge to the other one [mm].

    Returns
    -------
    float
        Lean of the face [deg].

    Raises
    ------
    SeatworkError
        If a size is out of range, or the chip is thicker than the part is wide.

    Examples
    --------
    >>> lean_from_chip(chip=0.127, width=50.8)
    0.1432
    """
    checks.length_or_zero(chip, "chip")
    checks.length(width, "width of the part")
    checks.smaller(chip, "chip", width, "width of the part")
    return float(np.degrees(np.arcsin(chip / width)))


def _refuse_a_lean_beyond_drilling(lean: float) -> None:
    if not checks.is_number(lean) or not checks.between(lean, 0.0, STEEPEST):
        raise SeatworkError(
            checks.shown(lean, Angle),
            "a hole leans between 0° and 30° from square",
            "give the lean from square to the face",
        )


def _gaps(head: Head, seat: Countersink, offset: float, amount: float) -> NDArray[np.float64]:
    """Gaps along the hole, from the side that touches to the opposite one [mm]."""
    turn = np.linspace(0.0, np.pi, TURNS)
    along, beside = offset * np.cos(turn), offset * np.sin(turn)
    neck = (head.neck_diameter or 0.0) / 2
    inner = np.maximum(np.sqrt((seat.hole_diameter / 2) ** 2 - beside**2) - along, neck)
    rim = np.sqrt((seat.diameter / 2) ** 2 - beside**2) - along
    outer = np.maximum(np.minimum(rim, head.edge / 2), inner)
    highest = np.maximum(*(_rises(head, seat, radius, along, beside) for radius in (inner, outer)))
    return np.maximum(amount - highest, 0.0)


def _rises(
    head: Head,
    seat: Countersink,
    radius: NDArray[np.float64],
    along: NDArray[np.float64],
    beside: NDArray[np.float64],
) -> NDArray[np.float64]:
    """Heights of the top if the head's `radius` met the seat there, all round [mm]."""
    away = np.hypot(radius + along, beside)
    head_depth = (head.sharp_diameter / 2 - radius) / head.tangent
    seat_depth = np.maximum(seat.diameter / 2 - away, 0.0) / seat.tangent
    return np.asarray(head_depth - seat_depth)


def _share(touching: NDArray[np.bool_]) -> float:
    """Share of the turn that touches: each direction stands for the piece round it [-]."""
    weights = np.ones(len(touching))
    weights[[0, -1]] = 0.5
    return float(weights[touching].sum() / weights.sum())
