"""Whether a wrench socket comes down to a screw's head, and how the head then lies.

Lengths are millimeters, heights are counted from the face, upward.

Notes
-----
A head lies on the floor of its seat, or on its washer. A wrench socket that is wider than the
seat comes to rest on the rim of it; only what of the head stands above that rim is inside the
socket.
"""

from dataclasses import dataclass

from seatwork import checks
from seatwork.seats.counterbores import Counterbore


@dataclass(frozen=True, slots=True, kw_only=True)
class Reached:
    """A head in its seat and the wrench socket over it.

    Parameters
    ----------
    amount : float
        How far the head's top stands above the face, minus below it [mm].
    goes_in : bool
        Whether the socket goes into the seat.
    rests_at : float
        Height of what the socket's rim rests on [mm].
    hold : float
        Height of the head inside the socket [mm]; zero if they do not meet.
    """

    amount: float
    goes_in: bool
    rests_at: float
    hold: float


def reached(
    seat: Counterbore,
    *,
    room: float,
    head_height: float,
    washer_thickness: float = 0.0,
    rim: float = 0.0,
) -> Reached:
    """Find how a head lies in its seat and what a wrench socket takes hold of.

    Parameters
    ----------
    seat : Counterbore
        The counterbore, or the spotface on a boss.
    room : float
        Least diameter of a seat that the socket goes into [mm].
    head_height : float
        Height of the head [mm].
    washer_thickness : float
        Thickness of the washer under it [mm]; zero without one.
    rim : float
        Height of what the seat is cut into [mm]: zero for the face, else the boss as cast.

    Returns
    -------
    Reached
        Where the head's top lies, where the socket rests, and what it holds.

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    A head 6.2 mm high in a bore cut for it, and in one that takes the socket:

    >>> tight = Counterbore(diameter=17.3, depth=6.5, hole_diameter=10.3)
    >>> reached(tight, room=28, head_height=6.2).hold
    0.0
    >>> wide = Counterbore(diameter=28, depth=6.5, hole_diameter=10.3)
    >>> reached(wide, room=28, head_height=6.2).hold
    6.2
    """
    checks.length(room, "room for the wrench socket")
    checks.length(head_height, "head height")
    checks.length_or_zero(washer_thickness, "washer thickness")
    checks.length_or_zero(rim, "height of the boss")
    under = rim - seat.depth + washer_thickness
    amount = under + head_height
    goes_in = room <= seat.diameter + checks.SMALLEST
    rests_at = under if goes_in else rim
    hold = min(head_height, max(0.0, amount - rests_at))
    return Reached(amount=amount, goes_in=goes_in, rests_at=rests_at, hold=hold)
