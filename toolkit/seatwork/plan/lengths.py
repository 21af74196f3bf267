"""How long a screw has to be, worked out where the thickness is known."""

from seatwork.hardware import Screw
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
    return (
        measured,
        f"Screw length: {parts} ({why}) make {least} at least; next length up. "
        "Into a blind thread the longest is the part and the thread's depth less one pitch: next "
        "length down from there, for one that bottoms clamps nothing.",
    )


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
    return (Check(name="screw length", verdict=verdict, sentence=sentence, question=question),)


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
