"""Where the head of a rivet sits in its seat, against what the note wants."""

from dataclasses import replace

from seatwork import notes
from seatwork.hardware import Rivet
from seatwork.plan.order import Order
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Check
from seatwork.plan.standing import stand_of
from seatwork.quantities import Length
from seatwork.seats import Countersink, fit

NEAR = 1e-6  # mm
NAME = "head of the rivet"


def check_rivet_head(plan: SeatPlan, note: notes.Countersink, rivet: Rivet, order: Order) -> Check:
    """Hold where the head sits, in the least and the greatest seat, against the note's window.

    Parameters
    ----------
    plan : SeatPlan
        The seat.
    note : Countersink
        What the note says of it.
    rivet : Rivet
        The rivet.
    order : Order
        With how sizes are written.
    """
    across, seat = plan.size("diameter at the face"), plan.shape
    assert across is not None
    assert isinstance(seat, Countersink)
    high, aim, low = (
        fit(rivet.head, replace(seat, diameter=one)).amount
        for one in (across.smallest, across.value, across.largest)
    )
    text = f"The rivet's head, from memory, sits {_stands(high, order)} to {_stands(low, order)}."
    window = _window(note, order)
    if window is None:
        return Check(name=NAME, verdict="look", sentence=f"{text} Try the job's own rivet.")
    least, most = window[0] - NEAR, window[1] + NEAR
    if least <= low and high <= most:
        return Check(name=NAME, verdict="holds", sentence=text)
    if least <= aim <= most:
        return Check(name=NAME, verdict="look", sentence=f"{text} The note allows less.")
    asks = f"{text} The note wants it elsewhere: does the seat's diameter hold, or the head?"
    return Check(name=NAME, verdict="stop", sentence=text, question=asks)


def _window(note: notes.Countersink, order: Order) -> tuple[float, float] | None:
    """Return where the head may stand: the note's numbers, or the house's for a bare FLUSH."""
    if note.head is None:
        return None
    rules = order.shop.rules
    stand = stand_of(note.head, system=order.system, rules=rules)
    return stand.lowest, stand.top(rules)


def _stands(amount: float, order: Order) -> str:
    where = "proud" if amount > 0 else "below"
    return f"{order.show(Length(abs(amount)))} {where}"
