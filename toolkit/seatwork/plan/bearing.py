"""Whether a hole leaves its fastener anything to bear on: a head falls through a wide one.

Notes
-----
A head bears on the ring between its hole and its edge. A hole of the list's loosest fit
leaves the least ring that anybody publishes; a house rule says what part of it is too little.
"""

from collections.abc import Iterator

from seatwork import hardware
from seatwork.errors import SeatworkError
from seatwork.hardware import Rivet, Screw
from seatwork.plan.order import Order
from seatwork.plan.records import Check, Given
from seatwork.quantities import INCH, Length
from seatwork.seats.under_head import ring_left

EVEN = 1e-6  # mm
LEAST_RING = "under_head.least_ring"
LOOSEST = {"inch": ("ASME B18.2.8", "loose"), "metric": ("ISO 273", "coarse")}
RIVET_OVER = 0.005 * INCH  # mm; a rivet hole's own band over its drill is less (from memory)
ASKS = "A smaller hole, a larger fastener, or is another hole meant?"


def check_bears(hole: Given, screw: Screw | None, order: Order) -> Iterator[Check]:
    """Look at whether the head bears around a plain hole, and at a hole wider than any list.

    Parameters
    ----------
    hole : Given
        The hole the screw goes through.
    screw : Screw or None
        What goes in; nothing is looked at without one.
    order : Order
        With how sizes are written, and the rule for the ring that is left.
    """
    head = _head_across(screw) if screw is not None else None
    if screw is None or head is None:
        return
    show, size = order.show_length, hole.value
    name = "head over the hole"
    if size >= head - EVEN:
        text = f"The head, {show(head)}, falls through its own hole, {show(size)}."
        yield Check(name=name, verdict="stop", sentence=text, question=f"{text} {ASKS}")
        return
    loosest = _loosest(screw)
    if not hole.noted or loosest is None or size <= loosest[0] + EVEN:
        return
    text = f"The hole, {show(size)}, is wider than the loosest listed for {screw.thread.name}, "
    text += f"{show(loosest[0])} ({loosest[1]})"
    left = ring_left(head_diameter=head, inner_diameter=size)
    share = order.shop.rules.number(LEAST_RING)
    if left < share * ring_left(head_diameter=head, inner_diameter=loosest[0]) - EVEN:
        text += f", and leaves the head {show(left)} to bear on, less than house rule {LEAST_RING}."
        yield Check(name=name, verdict="stop", sentence=text, question=f"{text} {ASKS}")
        return
    yield Check(name=name, verdict="look", sentence=f"{text}: is it meant?")


def refuse_fallen(hole: Given, screw: Screw | None) -> None:
    """Refuse a cone for a head that falls through its hole.

    Raises
    ------
    SeatworkError
        With the question to ask.
    """
    head = _head_across(screw) if screw is not None else None
    if screw is not None and head is not None and hole.value >= head - EVEN:
        raise SeatworkError(
            Length(hole.value),
            f"the head of the {screw.name}, {{head}} at its edge, falls through this hole",
            "ask whether a smaller hole or a larger screw is meant",
            head=Length(head),
        )


def check_rivet_hole(found: Rivet | None, hole: Given, order: Order) -> Iterator[Check]:
    """Look at whether a rivet's shank goes in, and fills its hole when it is driven."""
    if found is None:
        return
    show, size, usual = order.show_length, hole.value, found.drill
    name = "rivet in the hole"
    shank = f"the shank of the {found.name} rivet, {show(found.diameter)}"
    drill = f"its usual drill is {usual.name}, {show(usual.diameter)}"
    if size <= found.diameter + EVEN:
        text = f"The hole, {show(size)}, does not clear {shank}: {drill}."
        yield Check(name=name, verdict="stop", sentence=text, question=f"{text} Which holds?")
    elif size > usual.diameter + RIVET_OVER + EVEN:
        text = f"The hole, {show(size)}, is too wide for {shank} to fill: {drill}."
        asks = f"{text} That drill, or a larger rivet?"
        yield Check(name=name, verdict="stop", sentence=text, question=asks)


def _head_across(screw: Screw) -> float | None:
    """Return what the head bears with [mm]: of a hexagon its flats, of a cone its least edge."""
    flat = screw.across_flats or screw.head_diameter
    return flat or screw.rounded_edge_diameter or screw.edge_diameter or screw.sharp_diameter


def _loosest(screw: Screw) -> tuple[float, str] | None:
    """Return the widest hole [mm] that the usual list gives a screw, with the list's name."""
    standard, fit = LOOSEST[screw.thread.system]
    try:
        listed = hardware.clearance_hole(screw.thread, fit=fit, standard=standard)
    except SeatworkError:
        return None  # the list has no such size
    return max(listed.diameter, listed.greatest or 0.0), f"{fit}, {standard}"
