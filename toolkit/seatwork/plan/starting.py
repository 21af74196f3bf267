"""Where a drill is started: a pad that slopes makes it wander."""

from collections.abc import Iterator

from seatwork.plan.order import Order
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Check
from seatwork.quantities import Angle

RULE = "drill.start_slope"
STARTS = ("drill", "lead drill", "center drill", "spot drill")


def check_start(seat: SeatPlan, order: Order) -> Iterator[Check]:
    """Look at the slope of the raw pad where a drill is the first tool on it.

    Parameters
    ----------
    seat : SeatPlan
        The seat, its operations in order.
    order : Order
        With the slope of the pad [deg] and the house rules.
    """
    first = seat.operations[0].name if seat.operations else ""
    if order.slope is None or first not in STARTS:
        return
    steepest = order.shop.rules.number(RULE)
    if order.slope <= steepest:
        return
    yield Check(
        name="start of the drill",
        verdict="look",
        sentence=f"The pad slopes {order.show(Angle(order.slope))}, over house rule {RULE}: a "
        "drill wanders on it. Face it first, or start with a spot drill or a center-cutting end "
        "mill.",
    )
