"""What to change before the next part: the stop up or down, and by how much."""

from collections.abc import Iterator

from seatwork.inspection.grounds import screw_is_off
from seatwork.inspection.measured import Measured
from seatwork.inspection.records import ACCEPT, REJECT, Judged
from seatwork.plan import SeatPlan
from seatwork.plan.sentences import Show
from seatwork.quantities import Length
from seatwork.seats import Countersink

LEAST = 0.01  # mm; no stop is set finer


def changes(
    measured: Measured, seat: SeatPlan, judged: tuple[Judged, ...], show: Show
) -> Iterator[str]:
    """Yield what to change, one sentence each.

    Parameters
    ----------
    measured : Measured
        The part's values.
    seat : SeatPlan
        What it should be.
    judged : tuple of Judged
        Value by value.
    show : callable
        Writes sizes for people.

    Notes
    -----
    The stop is moved so that the value that counts most comes to the middle of its limits: the
    stand of the head, else the diameter, else the depth. A cone grows by 2 tan(A/2) in diameter
    for each unit of travel, and a head goes down by as much as the stop.
    """
    found = {one.key: one for one in judged}
    if screw_is_off(judged):
        yield "Try a screw that is good on the head gage before the stop is touched."
        return
    if measured.burr:
        yield "Take the burr off and measure again before the stop is touched."
        return
    angle = found.get("angle")
    if angle is not None and angle.verdict == REJECT:
        yield "Change the cutter for one of the print's angle; then set the stop anew on scrap."
        return
    down = travel_change(seat, found)
    if down is not None and abs(down) >= LEAST:
        yield f"Move the stop {'down' if down > 0 else 'up'} by {show(Length(abs(down)))}."
    if measured.cleaned is False:
        yield "Go on in small steps until the ring is whole, no deeper."
    if measured.tried is False and down is None:
        yield "Find out what holds the screw before the next part: hole, burr or angle."


def travel_change(seat: SeatPlan, found: dict[str, Judged]) -> float | None:
    """Return how much further down the stop should be [mm]; minus is up, None is leave it."""
    for key in ("stand", "diameter", "depth"):
        one = found.get(key)
        if one is None or one.value is None or one.least is None or one.greatest is None:
            continue
        if one.verdict == ACCEPT:
            if key == "stand":
                return None
            continue
        over = one.value - (one.least + one.greatest) / 2
        if key == "stand":
            return over
        if key == "depth":
            return -over
        if isinstance(seat.shape, Countersink):
            return -over / 2 / seat.shape.tangent
    return None
