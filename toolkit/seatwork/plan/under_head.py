"""Under the head: the fillet against the edge of the hole, the ring left, the floor's corner."""

from collections.abc import Iterator

from seatwork import hardware, notes
from seatwork.hardware import Fact, Screw
from seatwork.plan.bounds import bounds_of
from seatwork.plan.order import Order
from seatwork.plan.records import Check, Given
from seatwork.quantities import Length
from seatwork.seats.under_head import corner_room, floor_leg, ring_left

CLEAR = "diameter that clears the fillet"
EVEN = 1e-6  # mm; what a sum may be off by in its last digits
LEAST_RING = "under_head.least_ring"


def fillet_sizes(screw: Screw | None) -> tuple[Given, ...]:
    """Return the diameter that clears the fillet under the head, where a list gives one."""
    found = hardware.fillet_clearance(screw) if screw else None
    return (_given(found),) if found else ()


def check_fillet(
    screw: Screw, hole: Given, order: Order, *, broken: Given | None
) -> Iterator[Check]:
    """Look at whether the edge of the hole clears the fillet under the head.

    Parameters
    ----------
    screw : Screw
        The screw.
    hole : Given
        The hole [mm].
    order : Order
        With how sizes are written, and the rule for the ring that is left.
    broken : Given or None
        Diameter of the countersink that the note asks for at the counterbore's floor [mm].
    """
    found = hardware.fillet_clearance(screw)
    if found is None:
        return
    across = max(hole.value, broken.value if broken else 0.0)
    yield _fillet(found, across, hole.value, order)
    widest = max(across, found.value)
    if screw.head_diameter is not None and widest > hole.value:
        yield _ring(screw.head_diameter, widest, hole.value, order)


def check_corner(
    note: notes.Counterbore, across: Given, hole: Given, screw: Screw | None, order: Order
) -> Iterator[Check]:
    """Look at whether the corner radius at the floor stays outside the head."""
    if note.fillet is None or note.fillet.largest is None or screw is None:
        return
    if screw.head_diameter is None:
        return
    least = bounds_of(across, system=order.system, rules=order.shop.rules).least
    middle, leaning = corner_room(
        bore_diameter=across.smallest if across.least is not None else across.value,
        head_diameter=screw.head_diameter,
        hole_diameter=hole.value,
        screw_diameter=screw.thread.diameter,
    )
    radius, worst = note.fillet.largest, middle - (across.smallest - least) / 2
    show = order.show_length
    verdict = "holds" if radius <= min(middle, worst, leaning) + EVEN else "look"
    yield Check(
        name="corner at the floor",
        verdict=verdict,
        sentence=f"A corner of {show(radius)} clears the head in the middle up to {show(middle)}, "
        f"in the least counterbore up to {show(worst)}, against its hole up to "
        f"{show(max(leaning, 0.0))}."
        + ("" if verdict == "holds" else " The head may ride on it: chamfer the head's edge, ask."),
    )


def _fillet(found: Fact, across: float, hole: float, order: Order) -> Check:
    show = order.show_length
    if across >= found.value - EVEN:
        return Check(
            name="fillet under the head",
            verdict="holds",
            sentence=f"The fillet needs {show(found.value)}, and the edge is {show(across)}.",
        )
    leg = floor_leg(hole_diameter=hole, clear_diameter=found.value)
    return Check(
        name="fillet under the head",
        verdict="look",
        sentence=f"The fillet needs {show(found.value)}, the hole is {show(hole)}: break the edge "
        f"at the counterbore floor to it, 90°, {show(leg)} deep from the floor.",
    )


def _ring(head: float, inner: float, hole: float, order: Order) -> Check:
    left = ring_left(head_diameter=head, inner_diameter=inner)
    whole = ring_left(head_diameter=head, inner_diameter=hole)
    share = order.shop.rules.number(LEAST_RING)
    enough = left >= share * whole - EVEN
    show = order.show
    return Check(
        name="ring under the head",
        verdict="holds" if enough else "look",
        sentence=f"The greatest head bears on a ring at most {show(Length(max(left, 0.0)))} wide, "
        f"of {show(Length(whole))} without the break"
        + ("." if enough else f": less than house rule {LEAST_RING} leaves. Ask."),
    )


def _given(found: Fact) -> Given:
    return Given(about=CLEAR, value=found.value, source=found.source, confirmed=found.confirmed)
