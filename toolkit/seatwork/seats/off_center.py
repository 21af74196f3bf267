"""A seat whose axis is not the screw's.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
Shift the head sideways by e. On the side it was shifted to, a point of the head at radius r
lies over the seat at radius r + e, where the seat is higher than anywhere else that point can
be; so this side rules, and the section through it is the section of a centered head with e
added to its radii:

    S = greatest of h(r) - s(r + e).

Equal angles give e / tan(A/2) above the centered amount. That is only so while the screw is
*held* off center, by the thread below. In a clearance hole it slides down the cone until it
is centered again or its body meets the wall of the hole, and the error hides.
"""

from dataclasses import dataclass

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.seats.cones import Countersink
from seatwork.seats.heads import Head, fit


@dataclass(frozen=True, slots=True, kw_only=True)
class OffCenter:
    """A head in a seat that is off center.

    Parameters
    ----------
    amount : float
        Height of the flat top above the face [mm]; minus below it.
    rise : float
        How much of that the offset makes [mm].
    left_over : float
        Offset that remains after the screw has shifted [mm]; zero if it centers itself.
    """

    amount: float
    rise: float
    left_over: float


def off_center(head: Head, seat: Countersink, *, offset: float, play: float = 0.0) -> OffCenter:
    """Find how a head sits in a seat that is off the screw's axis.

    Parameters
    ----------
    head : Head
        The screw's head.
    seat : Countersink
        The seat.
    offset : float
        Distance between the axis of the seat and that of the screw's hole or thread [mm].
    play : float
        How far the screw can shift sideways [mm]: half of hole minus body in a clearance
        hole, zero for a screw held by its thread.

    Returns
    -------
    OffCenter
        Amount above the face, the part of it the offset makes, and the offset left over.

    Raises
    ------
    SeatworkError
        If the head leaves the seat at one side, or cannot sit in it at all.

    Examples
    --------
    >>> head = Head(sharp_diameter=12.8778, included_angle=82)
    >>> seat = Countersink(diameter=12.8778, hole_diameter=6.7564, included_angle=82)
    >>> off_center(head, seat, offset=0.127).rise / 25.4
    0.00575
    >>> off_center(head, seat, offset=0.127, play=0.2).rise
    0.0
    """
    checks.length_or_zero(offset, "offset")
    checks.length_or_zero(play, "play")
    centered = fit(head, seat).amount
    left_over = max(offset - play, 0.0)
    amount = max(_rises(head, seat, left_over)) if left_over else centered
    return OffCenter(amount=amount, rise=amount - centered, left_over=left_over)


def _rises(head: Head, seat: Countersink, offset: float) -> list[float]:
    """Heights of the top if carried at each circle that can carry, head shifted [mm]."""
    reach = seat.hole_diameter / 2 - offset
    neck = (head.neck_diameter or 0.0) / 2
    if not max(reach, neck) < head.edge / 2 or not head.edge / 2 - offset > seat.hole_diameter / 2:
        raise SeatworkError(
            Length(offset),
            "so far off center the head drops into the hole at one side",
            "cut the seat again on center",
        )
    start = max(reach, neck, 0.0)
    stop = min(head.edge / 2, seat.diameter / 2 - offset)
    radii = [start, max(start, stop)]
    return [_rise(head, seat, radius, offset) for radius in radii]


def _rise(head: Head, seat: Countersink, radius: float, offset: float) -> float:
    """Height of the top if the head's `radius` meets the seat there [mm]."""
    head_depth = (head.sharp_diameter / 2 - radius) / head.tangent
    seat_depth = max(seat.diameter / 2 - radius - offset, 0.0) / seat.tangent
    return head_depth - seat_depth
