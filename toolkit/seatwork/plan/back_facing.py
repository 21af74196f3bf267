"""Back spotfacing: a flat seat on the far side, cut from this side on a bar through the hole."""

from dataclasses import replace

from seatwork.plan import sentences
from seatwork.plan.order import Order
from seatwork.plan.place import Place
from seatwork.plan.records import Check, Operation
from seatwork.plan.sides import BACK, Cut
from seatwork.seats.pilots import pilot_diameter

HOW, RULE = "far_side.how", "back spotfacing"
FLAT = ("spotface", "counterbore")


def back_faced(cut: Cut, place: Place, order: Order) -> Cut:
    """Return a flat seat on the far side as cut from this side, if the house rule says so.

    Parameters
    ----------
    cut : Cut
        The seat as planned for a part that is turned over.
    place : Place
        The hole.
    order : Order
        Machine and house rules.

    Notes
    -----
    The cut pulls the bar down, out of a chuck or a bare taper: only a drawbar or a cross pin
    holds it. A quill stop does not stop an upward feed, so no travel is given.
    """
    if not cut.far or cut.seat.kind not in FLAT or order.shop.rules.word(HOW) != RULE:
        return cut
    clearance = order.shop.rules.number("pilot.clearance")
    hole = place.hole("the bar").smallest
    bar = order.show_length(pilot_diameter(hole_diameter=hole, clearance=clearance))
    seat = replace(
        cut.seat,
        operations=tuple(_step(step, bar) for step in cut.seat.operations),
        stops=(),
        checks=(_held(order), *cut.seat.checks),
        advice=(sentences.BACK_DEPTH, *cut.seat.advice),
        side=BACK,
    )
    return replace(cut, seat=seat, side=BACK)


def _step(step: Operation, bar: str) -> Operation:
    if step.name not in FLAT:
        return step
    return replace(
        step,
        name=f"back {step.name}",
        why=sentences.BACK,
        tool=sentences.BACK_TOOL.format(bar=bar),
        in_shop=False,
        by_hand=True,
        passed=(),
        grind="",
        taper_shank=False,
        tool_reason="an ordinary head put on upside down runs backward",
    )


def _held(order: Order) -> Check:
    name = "hold of the bar"
    if order.machine.kind == "mill":
        sentence = "Held by the drawbar: the cut pulls the bar down, out of a chuck or bare taper."
        return Check(name=name, verdict="look", sentence=sentence)
    sentence = (
        f"The cut pulls the bar down, and the {order.machine.name} has neither drawbar nor "
        "cross pin to hold it."
    )
    asks = f"{sentence} Turn the part over, or take the mill?"
    return Check(name=name, verdict="stop", sentence=sentence, question=asks)
