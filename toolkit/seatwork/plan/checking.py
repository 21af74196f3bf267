"""What is looked at before cutting: sheet, floor, wall, edge distance."""

from seatwork import hardware
from seatwork.plan.order import Order
from seatwork.plan.records import Check
from seatwork.quantities import Length
from seatwork.seats import Countersink
from seatwork.seats.sheet_metal import InSheetMetal
from seatwork.units import show_number


def check_sheet_metal(seat: Countersink, order: Order) -> tuple[Check, ...]:
    """Look at what a countersink leaves of the thickness, and at the edge of the part."""
    return (
        *_sheet(seat, order),
        *_edge(seat.diameter, seat.hole_diameter, order, other_heads="protruding"),
    )


def check_flat(
    diameter: float, depth: float | None, hole_diameter: float, order: Order
) -> tuple[Check, ...]:
    """Look at the floor under a flat seat [mm], and at the edge of the part."""
    return (*_floor(depth, order), *_edge(diameter, hole_diameter, order, other_heads="flush"))


def check_blind(seat: Countersink, hole_depth: float, order: Order) -> Check:
    """Look at whether a cone ends within the straight part of its blind hole.

    Parameters
    ----------
    seat : Countersink
        The cone.
    hole_depth : float
        Depth of the hole at full diameter, from where the cone begins [mm].
    order : Order
        With how sizes are written.
    """
    left = hole_depth - seat.depth
    if left > 0:
        sentence = f"Straight hole left under the cone: {order.show(Length(left))} of a blind hole."
        return Check(name="blind hole", verdict="holds", sentence=sentence)
    sentence = f"The cone goes deeper than its hole, {order.show(Length(hole_depth))}."
    asks = f"{sentence} Which of the two is wrong?"
    return Check(name="blind hole", verdict="stop", sentence=sentence, question=asks)


def check_wall(seat: Countersink, order: Order) -> tuple[Check, ...]:
    """Look at the edge of the part alone."""
    return _edge(seat.diameter, seat.hole_diameter, order, other_heads="flush")


def check_mouth(seat: Countersink, order: Order) -> tuple[Check, ...]:
    """Look at the chamfer of a tapped hole: at the sheet only where its thickness is known."""
    sheet = _sheet(seat, order) if order.thickness is not None else ()
    return (*sheet, *_edge(seat.diameter, seat.hole_diameter, order, other_heads="flush"))


def _sheet(seat: Countersink, order: Order) -> tuple[Check, ...]:
    if order.thickness is None:
        return (_unknown("knife edge", "the thickness of the part"),)
    sheet = InSheetMetal(seat=seat, thickness=order.thickness)
    share = order.shop.rules.number("countersink.sheet_share")
    land = order.show(Length(sheet.land))
    if sheet.knife_edge:
        grown = order.show(Length(sheet.far_diameter))
        return (
            Check(
                name="knife edge",
                verdict="stop",
                sentence=f"The cone goes through and opens the far side to {grown}: a knife edge.",
                question="The countersink goes deeper than the part is thick, "
                f"{order.show(Length(order.thickness))}: a flatter or smaller head, or a dimple?",
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
        return (
            Check(
                name="floor",
                verdict="stop",
                sentence="The seat goes through the part.",
                question="The seat is deeper than the part is thick: which of the two is wrong?",
            ),
        )
    sentence = f"Floor left under the head: {order.show(Length(left))}. Enough for the load? Ask."
    return (Check(name="floor", verdict="look", sentence=sentence),)


def _edge(
    diameter: float, hole_diameter: float, order: Order, *, other_heads: str
) -> tuple[Check, ...]:
    if order.edge is None:
        return ()
    wall = order.edge - diameter / 2
    if not wall > 0:
        return (
            Check(
                name="wall to the edge",
                verdict="stop",
                sentence="The seat breaks out at the edge.",
                question="The seat breaks out at the edge: may the hole move, or the head be less?",
            ),
        )
    left = order.show(Length(wall))
    return (_wall(left, hole_diameter, order), _published(hole_diameter, order, other_heads))


def _wall(left: str, hole_diameter: float, order: Order) -> Check:
    assert order.edge is not None
    rule = "edge.rivet_distance"
    wanted = order.shop.rules.number(rule)
    has = order.edge / hole_diameter
    kept = has >= wanted
    return Check(
        name="wall to the edge",
        verdict="holds" if kept else "look",
        sentence=f"Wall left to the edge: {left}. The hole lies {show_number(has, 2)} diameters "
        f"from it; house rule {rule} asks for {show_number(wanted, 2)}.",
    )


def _published(hole_diameter: float, order: Order, other_heads: str) -> Check:
    """Hold the edge distance against the published rules for this kind of head, each by name."""
    assert order.edge is not None
    every = hardware.edge_distances(hole_diameter)
    asked = [rule for rule in every if not rule.rule.endswith(other_heads)]
    broken = [rule for rule in asked if order.edge < rule.length]
    least, most = (order.show(Length(rule.length)) for rule in (asked[0], asked[-1]))
    text = "; ".join(f"{rule.rule}: {order.show(Length(rule.length))}" for rule in broken)
    return Check(
        name="published edge distances",
        verdict="look" if broken else "holds",
        sentence=f"Rules for rivet holes ask for {least} to {most}. "
        + (f"Closer than {text}." if broken else "None is broken."),
    )


def _unknown(name: str, what: str) -> Check:
    sentence = f"Not looked at: {what} is not known. Give it, or measure and look."
    return Check(name=name, verdict="look", sentence=sentence)
