"""Diameter and depth of one cone, where the note gives both: they must belong together."""

from collections.abc import Iterator

from seatwork import notes
from seatwork.plan.bounds import bounds_of
from seatwork.plan.countersinks import SizedCountersink
from seatwork.plan.order import Order
from seatwork.plan.records import Check
from seatwork.quantities import Length
from seatwork.seats.touching_off import Limits, depth_limits


def check_depth_agrees(
    note: notes.Countersink, sized: SizedCountersink, order: Order
) -> Iterator[Check]:
    """Hold the depth that a note gives against the one its diameter, hole and angle give.

    Parameters
    ----------
    note : Countersink
        What the note says.
    sized : SizedCountersink
        The seat: angle, diameter and depth, in this order.
    order : Order
        With the house rules, whose title block stands where a size has no limits.
    """
    if note.depth is None or note.diameter is None:
        return
    across, deep = (
        bounds_of(one, system=order.system, rules=order.shop.rules) for one in sized.sizes[1:3]
    )
    hole = sized.seat.hole_diameter
    worked_out = depth_limits(
        diameter=Limits(least=max(across.least, hole), greatest=across.greatest),
        hole_diameter=Limits(least=hole, greatest=hole),
        included_angle=sized.seat.included_angle,
    )
    if deep.least <= worked_out.greatest and worked_out.least <= deep.greatest:
        return
    own, stated = order.show(Length(sized.seat.depth)), order.show(Length(sized.sizes[2].value))
    sentence = f"This diameter and angle are {own} deep on this hole; the note says {stated}."
    yield Check(
        name="diameter against depth",
        verdict="stop",
        sentence=sentence,
        question=f"{sentence} Which of the two holds?",
    )
