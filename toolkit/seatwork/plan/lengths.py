"""How long a screw has to be, worked out where the thickness is known."""

from seatwork.hardware import Screw
from seatwork.hardware.taps import pitched
from seatwork.plan import sentences
from seatwork.plan.order import Order
from seatwork.plan.plans import Shape
from seatwork.plan.records import Check
from seatwork.seats import Counterbore

RULE = "tapped_hole.engagement"


def screw_length(screw: Screw, shape: Shape | None, order: Order) -> tuple[str, ...]:
    """Say how the screw's length is measured, and how long it must be.

    Parameters
    ----------
    screw : Screw
        The screw.
    shape : Countersink, Counterbore, Spotface, Chamfer or None
        Its seat; only a counterbore takes from what is clamped.
    order : Order
        With the thickness of the part [mm] where it is known.
    """
    measured = sentences.FLAT_LENGTH if screw.seat_angle else sentences.OTHER_LENGTH
    clamped = clamped_length(shape, order)
    if clamped is None:
        return (measured,)
    thread, why = engagement(screw, order)
    least = order.show_length(clamped + thread)
    parts = f"{order.show_length(clamped)} in the part and {order.show_length(thread)} of thread"
    shortest = f"Screw length: {parts} ({why}) make {least} at least; next length up."
    return (measured, f"{shortest} {_longest(screw, clamped, order)}")


def _longest(screw: Screw, clamped: float, order: Order) -> str:
    """Say how long the screw may be into a blind thread: one that bottoms clamps nothing."""
    room = room_below(screw, order)
    if room is None:
        return (
            "Into a blind thread the longest is the part and the thread's depth less one pitch: "
            "next length down from there, for one that bottoms clamps nothing."
        )
    return (
        f"Into the blind thread below, {order.show_length(clamped + room)} at most, one pitch off "
        "its end: next length down from there, for one that bottoms clamps nothing."
    )


def room_below(screw: Screw, order: Order) -> float | None:
    """Return how far a screw may go into the blind thread below [mm]; None where it is not known.

    Notes
    -----
    Full thread less one pitch; of a screw named without its pitch, the coarse one.
    """
    if order.thread_below is None:
        return None
    thread = screw.thread
    if thread.pitch is None:
        series = " UNC" if thread.system == "inch" else ""
        thread = pitched(f"{thread.size}{series}")
    return max(order.thread_below - (thread.pitch or 0.0), 0.0)


def check_length(screw: Screw, shape: Shape | None, order: Order) -> tuple[Check, ...]:
    """Look at whether a screw whose length the note names reaches far enough."""
    clamped = clamped_length(shape, order)
    if screw.length is None or clamped is None:
        return ()
    wanted, why = engagement(screw, order)
    left = screw.length - clamped
    sentence = (
        f"{order.show_length(left)} of thread is left beyond the part; "
        f"{order.show_length(wanted)} is wanted ({why})."
        if left > 0
        else "The screw is not longer than the part is thick: it does not come out."
    )
    verdict = "holds" if left >= wanted else ("look" if left > 0 else "stop")
    question = "Which screw length is meant?" if verdict == "stop" else ""
    reach = Check(name="screw length", verdict=verdict, sentence=sentence, question=question)
    return (reach, *_check_bottom(screw, left, wanted, order))


def _check_bottom(screw: Screw, left: float, wanted: float, order: Order) -> tuple[Check, ...]:
    """Look at whether the screw bottoms in the blind thread below, and what may engage there."""
    room = room_below(screw, order)
    if room is None or left <= 0:
        return ()
    show = order.show_length
    depth = order.thread_below or 0.0
    if left > room:
        sentence = (
            f"The screw goes {show(left)} into a thread {show(depth)} deep; {show(room)} is the "
            "most, one pitch off its end. It bottoms and clamps nothing."
        )
        return (
            Check(
                name="end of the screw",
                verdict="stop",
                sentence=sentence,
                question=f"{sentence} A shorter screw, or a deeper thread?",
            ),
        )
    short = wanted > room
    sentence = f"The screw ends {show(depth - left)} before the end of its thread." + (
        f" Even the longest engages {show(room)}, under the {show(wanted)} wanted." if short else ""
    )
    return (
        Check(name="end of the screw", verdict="look" if short else "holds", sentence=sentence),
    )


def clamped_length(shape: Shape | None, order: Order) -> float | None:
    """Return the part of the screw's length that lies in the part [mm]; None if unknown.

    Notes
    -----
    A flat head is measured overall and lies in the part, so the whole thickness counts; any
    other head is measured under the head, which stands on the floor of its counterbore.
    """
    if order.thickness is None:
        return None
    deep = shape.depth if isinstance(shape, Counterbore) else 0.0
    return order.thickness - deep if order.thickness > deep else None


def engagement(screw: Screw, order: Order) -> tuple[float, str]:
    """Return the thread to engage [mm], and who says so."""
    if order.engagement is not None:
        return order.engagement, "as given"
    return order.shop.rules.number(RULE) * screw.thread.diameter, f"house rule {RULE}"
