"""What wear moves first, and where the size then goes."""

from seatwork.plan.plans import SeatPlan
from seatwork.seats import Counterbore, Countersink, Spotface

STOP = "Chips under the part or the stop make it shallow, a stop that creeps makes it deep."
CONE = f"What wear moves first: dull lips leave the seat small and the head high. {STOP}"
FLAT = f"What wear moves first: a dull cutter bores toward the low limit. {STOP}"
FACE = "What wear moves first: a dull cutter faces toward the low limit of the diameter."
DRILL = "What wear moves first: a dull or uneven drill cuts over, toward the high limit."
ANGLE = "The limits of the angle check the cutter, not the stop: wrong angle, another cutter."


def wear_of(seat: SeatPlan) -> tuple[str, ...]:
    """Return what wear moves first in a seat, and what the limits of its angle are for.

    Parameters
    ----------
    seat : SeatPlan
        The seat as planned.

    Notes
    -----
    Common practice, no source.
    """
    by_shape = {Countersink: CONE, Counterbore: FLAT, Spotface: FACE}
    moved = by_shape.get(type(seat.shape), DRILL if seat.kind == "hole" else "")
    if seat.kind == "center":
        moved = ""  # no head lies in it; its mouth is gaged after each
    angle = seat.size("included angle")
    checked = angle is not None and angle.least is not None
    return tuple(one for one in (moved, ANGLE if checked else "") if one)
