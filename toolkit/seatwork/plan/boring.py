"""A hole that no drill makes: one that says BORE, or with limits closer than a drill holds.

Notes
-----
A twist drill cuts .002 to .005 in over its size (common practice, no source): limits that lie
nearer together than that spread are not a drill's. The hole is drilled under, as for a reamer,
and brought to size by a single point or a reamer.
"""

from collections.abc import Iterator
from dataclasses import replace

from seatwork import notes
from seatwork.hardware.reaming import drill_under
from seatwork.plan import sentences
from seatwork.plan.drilled import drilled
from seatwork.plan.order import Order, by_hand
from seatwork.plan.plug import plug_readings
from seatwork.plan.records import Check, Given, Operation, Reading
from seatwork.plan.resolving import stated
from seatwork.quantities import INCH
from seatwork.units import show_note

BORE, UNDER, LEFT = "bore", "drill under the bore", "left for the bore"
SPREAD = 0.003 * INCH  # mm; from .002 to .005 over is what a drill's holes differ by
NEAR = 1e-6  # mm
RULE = "ream.under"
REAMED = 0.75 * INCH  # mm; a reamer is handier up to here (judgement, no source)
REAMER = "reamer"
BARS = {"lathe": "boring bar", "mill": "boring head"}


def bored_hole(note: notes.Hole | None) -> Given | None:
    """Return a hole at what to aim for where it must be bored or reamed; None for a drill's.

    Parameters
    ----------
    note : Hole or None
        The hole as the note says it.
    """
    if note is None or note.diameter is None or note.diameter.value is None:
        return None
    size = stated(note.diameter, "hole")
    close = False
    if size.least is not None and size.greatest is not None:
        narrow = size.greatest - size.least < SPREAD - NEAR
        close = narrow or not drilled(size, note.diameter).name
        size = replace(size, value=(size.least + size.greatest) / 2)
    return size if close or note.process == BORE else None


def drilled_to_bore(hole: Given, order: Order) -> Given:
    """Return the drill under a bore: as under a machine reamer, by the same house rule."""
    drill = drill_under(hole.value, system=order.system, rules=order.shop.rules)
    return Given(
        about=UNDER,
        value=drill.diameter,
        source=f"house rule {RULE}: {drill.source}",
        confirmed=drill.confirmed,
        name=drill.name,
    )


def to_size_step(note: notes.Hole, hole: Given, order: Order) -> Operation:
    """Return the boring or reaming to size."""
    across, by = _called(note, hole, order), _by(note, hole, order)
    why = sentences.BORE if by[0] != REAMER else f"{sentences.TO_SIZE} Reamer: {sentences.REAMER}."
    made = by_hand("bore" if by[0] != REAMER else "ream", why)
    tool = f"{' or '.join(by)}, to {order.show_length(hole.value)}"
    return replace(made, tool=tool, short=f"{by[0]} {across}")


def _called(note: notes.Hole, hole: Given, order: Order) -> str:
    """Name the size: a fit by its own sign, limits by what to aim for."""
    assert note.diameter is not None
    if note.diameter.fit:
        return f"{show_note(note.diameter.value or 0.0, order.system)} {note.diameter.fit}"
    places = {"inch": 4, "metric": 3}[order.system] if hole.least is not None else None
    return show_note(hole.value, order.system, places)


def _by(note: notes.Hole, hole: Given, order: Order) -> tuple[str, ...]:
    """Name what brings the hole to size on this machine, the likelier first."""
    bar = BARS.get(order.machine.kind)
    if bar is None:
        return (REAMER,)
    if note.process == BORE:
        return (bar,)
    return (REAMER, bar) if hole.value <= REAMED else (bar, REAMER)


def bore_sizes(hole: Given, under: Given) -> tuple[Given, ...]:
    """Return the drill and what it leaves."""
    left = Given(about=LEFT, value=hole.value - under.value, source="worked out: bore less drill")
    return (under, left)


def bore_readings(note: notes.Hole, hole: Given, order: Order) -> tuple[Reading, ...]:
    """Return the plug gage of a hole with limits: GO its low one, NOT GO its high one."""
    return plug_readings(hole, to_size_step(note, hole, order).name, "hole")


def check_bored(note: notes.Hole, hole: Given, under: Given, order: Order) -> Iterator[Check]:
    """Say why a drill alone does not make the hole, and where the machine does not bore."""
    by = " or ".join(_by(note, hole, order))
    if hole.least is not None and hole.greatest is not None:
        close = hole.greatest - hole.least < SPREAD - NEAR
        spread = order.show_length(SPREAD)
        why = (
            f"The limits are closer than drilled holes keep, about {spread}"
            if close
            else "No listed drill lies inside the limits"
        )
        sentence = f"{why}: drill {under.name} under, then bring it to size by {by}, and gage it."
        yield Check(name="hole to size", verdict="look", sentence=sentence)
    if note.process == BORE and order.machine.kind not in BARS:
        yield Check(
            name="boring",
            verdict="look",
            sentence=f"The note says BORE and the {order.machine.name} does not bore: a reamer "
            "makes the size but not the place; a lathe or a mill makes both. Ask.",
        )
