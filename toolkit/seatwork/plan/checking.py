"""What is looked at before cutting: sheet, floor, wall, edge distance."""

from seatwork.errors import Length
from seatwork.plan.order import Order
from seatwork.plan.records import Check
from seatwork.seats import Countersink
from seatwork.seats.sheet import InSheet


def check_sheet(seat: Countersink, order: Order) -> tuple[Check, ...]:
    """Look at what a countersink leaves of the thickness, and at the edge of the part."""
    return (*_sheet(seat, order), *_edge(seat.diameter, order))


def check_flat(diameter: float, depth: float | None, order: Order) -> tuple[Check, ...]:
    """Look at the floor under a flat seat [mm], and at the edge of the part."""
    return (*_floor(depth, order), *_edge(diameter, order))


def _sheet(seat: Countersink, order: Order) -> tuple[Check, ...]:
    if order.thickness is None:
        return (_unknown("knife edge", "the thickness of the part"),)
    sheet = InSheet(seat=seat, thickness=order.thickness)
    share = order.shop.rules.number("countersink.sheet_share")
    land = order.show(Length(sheet.land))
    if sheet.knife_edge:
        grown = order.show(Length(sheet.far_diameter))
        return (
            Check(
                name="knife edge",
                verdict="stop",
                sentence=f"The cone goes through and opens the far side to {grown}: a knife edge.",
            ),
        )
    inside = sheet.share <= share
    rule = "house rule countersink.sheet_share"
    return (
        Check(
            name="knife edge",
            verdict="holds" if inside else "look",
            sentence=f"Straight hole left under the cone: {land}. "
            + (f"Within {rule}." if inside else f"Deeper than {rule} allows: ask."),
        ),
    )


def _floor(depth: float | None, order: Order) -> tuple[Check, ...]:
    if depth is None:
        return ()
    if order.thickness is None:
        return (_unknown("floor", "the thickness of the part"),)
    left = order.thickness - depth
    if not left > 0:
        return (Check(name="floor", verdict="stop", sentence="The seat goes through the part."),)
    sentence = f"Floor left under the head: {order.show(Length(left))}."
    return (Check(name="floor", verdict="look", sentence=sentence),)


def _edge(diameter: float, order: Order) -> tuple[Check, ...]:
    if order.edge is None:
        return ()
    wall = order.edge - diameter / 2
    if not wall > 0:
        return (
            Check(
                name="wall to the edge", verdict="stop", sentence="The seat breaks out at the edge."
            ),
        )
    sentence = f"Wall left to the edge: {order.show(Length(wall))}."
    return (Check(name="wall to the edge", verdict="look", sentence=sentence),)


def _unknown(name: str, what: str) -> Check:
    sentence = f"Not looked at: {what} is not known. Give it, or measure and look."
    return Check(name=name, verdict="look", sentence=sentence)
