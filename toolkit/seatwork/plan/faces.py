"""Spotfaces on raw pads: from the first touch to the full ring, and the flange to be left.

Notes
-----
One stop has two limits here. It may not stop before the ring is whole, and not go on past the
least flange; both count from the first touch on the high side of the pad, the full ring at
D tan(slope), the flange at the low side of the ring.
"""

from collections.abc import Iterator

from seatwork import notes
from seatwork.plan.order import Order
from seatwork.plan.records import Check, Given, Stop
from seatwork.plan.stops import STOP_ERROR, stop_device
from seatwork.seats import Spotface
from seatwork.shop.choosing.choosing import Choice

RING, AXIS, SKIN = "first touch to full ring", "full ring at the axis", "full ring and scale"
LEFT, DEEPEST = "flange left at the low side", "deepest under the raw low side"
HIGH_SIDE = "the lips first touch the high side of the pad"
SCALE = "spotface.scale_allowance"
EVEN = 1e-6  # mm; what a sum may be off by in its last digits


def clean_up_sizes(note: notes.Spotface, seat: Spotface, order: Order) -> tuple[Given, ...]:
    """Return how far it is to the full ring, and what flange that leaves, as far as known."""
    return tuple(_sizes(note, seat, order)) if note.depth is None else ()


def clean_up_stops(
    note: notes.Spotface, seat: Spotface, order: Order, best: Choice | None
) -> tuple[Stop, ...]:
    """Return the one stop of a spotface that cleans up, with its two limits."""
    device = stop_device(order, best)
    if note.depth is not None or order.slope is None or device is None:
        return ()
    ring = seat.clean_up_on_tilt(order.slope)
    skin = ring + order.shop.rules.number(SCALE)
    least = _least_flange(note)
    known = least is not None and order.thickness is not None
    deepest = ring + order.thickness - least if known else None  # type: ignore[operator]
    return (
        Stop(
            touch=HIGH_SIDE,
            travel=skin,
            error=STOP_ERROR[order.system],
            effect=0.0,
            least=ring,
            greatest=deepest if deepest is not None and deepest > ring else None,
            device=device[0],
            step=device[1],
            short="from the high side",
        ),
    )


def check_flange(note: notes.Spotface, order: Order) -> Iterator[Check]:
    """Look at the flange that is left where the note wants one, before anything is cut."""
    least = _least_flange(note)
    if least is None:
        return
    if order.thickness is None:
        shown = order.show_length(least)
        sentence = f"Measure the flange at the low side: less the cut there it must leave {shown}."
        yield Check(name="least flange", verdict="look", sentence=f"Not looked at. {sentence}")
        return
    cut = order.shop.rules.number(SCALE) if note.depth is None else note.depth.value or 0.0
    over = order.thickness - cut - least
    yield _flange(order.thickness - cut, least, over, order)


def _flange(left: float, least: float, over: float, order: Order) -> Check:
    show = order.show_length
    text = f"Cleaned up, {show(left)} is left at the low side; the note wants {show(least)}"
    if over >= -EVEN:
        return Check(
            name="least flange", verdict="holds", sentence=f"{text}: {show(max(over, 0.0))} over."
        )
    return Check(
        name="least flange",
        verdict="stop",
        sentence=f"{text}.",
        question=f"Cleaning up leaves a flange of {show(left)}, and {show(least)} is wanted: may "
        "it be less, or may the ring stay unclean?",
    )


def _sizes(note: notes.Spotface, seat: Spotface, order: Order) -> Iterator[Given]:
    scale = order.shop.rules.number(SCALE)
    if order.slope is not None:
        ring = seat.clean_up_on_tilt(order.slope)
        worked = "worked out: slope of the pad and spotface diameter"
        yield Given(about=RING, value=ring, source=worked)
        yield Given(about=AXIS, value=ring / 2, source=worked)
        yield Given(about=SKIN, value=ring + scale, source=f"with house rule {SCALE}")
    least = _least_flange(note)
    if least is None or order.thickness is None:
        return
    left = order.thickness - scale
    yield Given(about=LEFT, value=left, source=f"flange at the low side less house rule {SCALE}")
    if order.thickness > least:
        source = "flange at the low side less the flange to be left"
        yield Given(about=DEEPEST, value=order.thickness - least, source=source)


def _least_flange(note: notes.Spotface) -> float | None:
    return note.left.smallest if note.left is not None else None
