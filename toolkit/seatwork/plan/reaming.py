"""A reamed hole: the drill under it, the reamer, and the plug that gages it."""

from collections.abc import Iterator
from dataclasses import replace

from seatwork import notes
from seatwork.errors import SeatworkError
from seatwork.hardware.reaming import drill_under
from seatwork.plan import sentences
from seatwork.plan.blind import ROOM, Bottom
from seatwork.plan.drilled import drilled
from seatwork.plan.order import Cutting, Order, operation
from seatwork.plan.plug import plug_readings
from seatwork.plan.records import Check, Given, Operation, Reading
from seatwork.plan.resolving import stated
from seatwork.quantities import INCH
from seatwork.units import show_note, show_number

HOLE, UNDER, LEFT = "hole", "drill under the reamer", "left for the reamer"
RULE = "ream.under"
LEAST, MOST = 0.003 * INCH, INCH / 32  # mm; what a machine reamer takes (common practice)
HAND = (0.002 * INCH, 0.005 * INCH)  # mm; what a hand reamer takes (common practice, no source)
FLUTES = 6
NEAR = 1e-6


def reamed_hole(note: notes.Hole) -> Given:
    """Return the reamed hole with its limits; those of a fit that no table has stay open.

    Raises
    ------
    SeatworkError
        If the note gives the reamed hole no size.
    """
    if note.diameter is None:
        raise SeatworkError(
            "REAM", "the note gives the reamed hole no size", "ask for it, with its limits"
        )
    try:
        return stated(note.diameter, HOLE)
    except SeatworkError:
        if not note.diameter.fit:
            raise
        return stated(replace(note.diameter, fit=""), HOLE)


def drilled_under(note: notes.Hole | None, reamed: Given, order: Order) -> Given:
    """Return the drill under a reamer: the note's, else by the house rule."""
    if note is not None and note.diameter is not None:
        return drilled(stated(note.diameter, UNDER), note.diameter)
    drill = drill_under(reamed.value, system=order.system, rules=order.shop.rules)
    return Given(
        about=UNDER,
        value=drill.diameter,
        source=f"house rule {RULE}: {drill.source}",
        confirmed=drill.confirmed,
        name=drill.name,
    )


def ream_sizes(reamed: Given, drilled: Given) -> tuple[Given, ...]:
    """Return the drill and what it leaves."""
    left = reamed.value - drilled.value
    return (drilled, Given(about=LEFT, value=left, source="worked out: reamer less drill"))


def ream_step(reamed: Given, order: Order) -> Operation:
    """Return the reaming."""
    cut = Cutting(operation="ream", diameter=reamed.value, hole_diameter=0.0, flutes=FLUTES)
    tool = f"machine reamer {order.show_length(reamed.value)}"
    oil = "" if order.material.dry else " Oil as for drilling."
    step = operation(order, cut, name="ream", why=f"{sentences.REAM}{oil}", tool=tool)
    # torque of a drill says nothing of a reamer's thin chips
    size = show_note(reamed.value, order.system)
    return replace(
        step, load=None, power=None, tool_reason=sentences.REAMER, short=f"machine reamer {size}"
    )


def ream_checks(
    note: notes.Hole, reamed: Given, drilled: Given, bottom: Bottom | None, order: Order
) -> tuple[Check, ...]:
    """Look at what is left for the reamer, and at limits that no table gives."""
    found = [_left(reamed, drilled, order), *_blind(note, bottom, order)]
    if note.diameter is not None and note.diameter.fit and reamed.least is None:
        fit = note.diameter.fit
        found.append(
            Check(
                name="limits of the reamed hole",
                verdict="look",
                sentence=f"Limits of {fit}: from your table; none is held here for this size.",
            )
        )
    return tuple(found)


def _blind(note: notes.Hole, bottom: Bottom | None, order: Order) -> Iterator[Check]:
    """Look at whether the drill goes deep enough beyond the reamed part."""
    if bottom is None or note.depth is None:
        return
    name, room = "room below the reamer", bottom.depth.value - stated(note.depth, HOLE).largest
    wanted, shown = order.shop.rules.number(ROOM), order.show_length(abs(room))
    if room < 0:
        sentence = f"The reamed depth is {shown} deeper than its drill."
        asks = f"{sentence} Which yields?"
        yield Check(name=name, verdict="stop", sentence=sentence, question=asks)
        return
    holds = room >= wanted - NEAR
    sentence = f"The drill goes {shown} deeper than the reamer; house rule {ROOM} asks for "
    yield Check(
        name=name,
        verdict="holds" if holds else "look",
        sentence=f"{sentence}{order.show_length(wanted)}.",
    )


def _left(reamed: Given, drilled: Given, order: Order) -> Check:
    name, left = LEFT, reamed.value - drilled.value
    shown = order.show_length(abs(left))
    under, over = drilled.name or order.show_length(drilled.value), order.show_length(reamed.value)
    if LEAST - NEAR <= left <= MOST + NEAR:
        low, high = (order.show_length(one) for one in HAND)
        sentence = f"{shown} is left for a machine reamer; a hand reamer wants {low} to {high}."
        return Check(name=name, verdict="holds", sentence=sentence)
    what = f"only {shown}" if 0 < left < LEAST else shown
    sentence = (
        f"The drill {under} leaves {what} for the reamer of {over}."
        if left > 0
        else f"The drill {under} is not under the reamer of {over}."
    )
    return Check(
        name=name,
        verdict="stop",
        sentence=sentence,
        question=f"{sentence} A machine reamer takes {order.show_length(LEAST)} to "
        f"{order.show_length(MOST)}: which drill?",
    )


def ream_readings(reamed: Given) -> tuple[Reading, ...]:
    """Return the plug gage of a reamed hole: GO its low limit, NOT GO its high one."""
    return plug_readings(reamed, "ream", "reamed hole")


def ream_advice(reamed: Given, order: Order) -> tuple[str, ...]:
    """Say that a reamer's size is bought, not set."""
    if order.system == "inch":
        wide = "+.0002 to +.0005 in"
    else:
        wide = f"+{show_number(0.005, 3)} to +{show_number(0.013, 3)} mm"
    limits = "; that may be the whole tolerance" if _narrow(reamed) else ""
    return (f"Try the reamer on scrap: it cuts full, expect {wide}{limits}.",)


def _narrow(reamed: Given) -> bool:
    """Tell whether what a reamer cuts full can use up the limits."""
    if reamed.least is None or reamed.greatest is None:
        return False
    return reamed.greatest - reamed.value <= 0.0005 * INCH + NEAR
