"""What to change before the next part: the stop up or down, and by how much."""

from collections.abc import Iterator

from seatwork.inspection.fights import BY_BALL
from seatwork.inspection.grounds import screw_is_off
from seatwork.inspection.measured import Measured
from seatwork.inspection.records import ACCEPT, REJECT, Judged
from seatwork.plan import SeatPlan
from seatwork.plan.sentences import Show
from seatwork.quantities import Length
from seatwork.seats import Countersink

CONE, FLAT = ("stand", "diameter", "depth", "ball_top"), ("stand", "depth")
NO_MOVE = "No one setting of the stop brings all of these within their limits: measure again."
NO_DEPTH = "Measure the depth, too, before the stop is touched."
LEAST = 0.0127  # mm; half a thousandth of an inch: no stop is set finer


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
    The stop is moved to the middle of the travel that brings stand, diameter, depth and ball, as
    far as they were measured, within the limits of each. A cone grows by 2 tan(A/2) in diameter
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
    if angle is not None and angle.verdict == REJECT and angle.instrument == BY_BALL:
        yield "Measure the angle by itself before the cutter is changed."
        return
    if angle is not None and angle.verdict == REJECT:
        yield "Change the cutter for one of the print's angle; then set the stop anew on scrap."
        return
    down = travel_change(seat, found)
    if down is not None and abs(down) >= LEAST:
        yield f"Move the stop {'down' if down > 0 else 'up'} by {show(Length(abs(down)))}."
    elif down is None and _off(seat, found):
        yield NO_DEPTH if _stand_alone(seat, found) else NO_MOVE
    if measured.cleaned is False:
        yield "Go on in small steps until the ring is whole, no deeper."
    if measured.tried is False and down is None:
        yield "Find out what holds the screw before the next part: hole, burr or angle."


def travel_change(seat: SeatPlan, found: dict[str, Judged]) -> float | None:
    """Return how much further down the stop should be [mm]; minus is up, None is leave it."""
    if not _off(seat, found) or _stand_alone(seat, found):
        return None
    spans = [_span(key, found[key], seat) for key in _moved(seat) if key in found]
    spans += _of_greatest_head(seat, found)
    least, greatest = max(span[0] for span in spans), min(span[1] for span in spans)
    return (least + greatest) / 2 if least <= greatest else None


def _moved(seat: SeatPlan) -> tuple[str, ...]:
    """Return which values the stop moves: of a flat seat not its diameter."""
    return CONE if isinstance(seat.shape, Countersink) else FLAT


def _off(seat: SeatPlan, found: dict[str, Judged]) -> bool:
    return any(found[key].verdict != ACCEPT for key in _moved(seat) if key in found)


def _stand_alone(seat: SeatPlan, found: dict[str, Judged]) -> bool:
    """Tell whether a head's stand is all that is known of a flat seat's depth."""
    return not isinstance(seat.shape, Countersink) and "depth" not in found


def _span(key: str, one: Judged, seat: SeatPlan) -> tuple[float, float]:
    """Return the least and the greatest move down that bring a value within its limits [mm]."""
    assert one.value is not None
    assert one.least is not None
    assert one.greatest is not None
    if key in ("stand", "ball_top"):
        return one.value - one.greatest, one.value - one.least
    per = 1.0
    if key == "diameter" and isinstance(seat.shape, Countersink):
        per = 2 * seat.shape.tangent
    return (one.least - one.value) / per, (one.greatest - one.value) / per


def _of_greatest_head(seat: SeatPlan, found: dict[str, Judged]) -> list[tuple[float, float]]:
    """Return the span of the plan's reading over the greatest head, where no size is known."""
    stand = found.get("stand")
    reading = next((one for one in seat.readings if one.quantity == "stand"), None)
    sized = "diameter" in found or "depth" in found
    if stand is None or stand.value is None or reading is None or sized:
        return []
    return [(stand.value - reading.greatest, stand.value - reading.least)]
