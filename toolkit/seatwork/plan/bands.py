"""Whether the one stop that decides holds the band that the limits leave."""

from collections.abc import Iterator

from seatwork.plan.order import Order
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Check, Stop
from seatwork.plan.sentences import Show
from seatwork.plan.stops import CAGE
from seatwork.quantities import Length
from seatwork.seats import Countersink
from seatwork.seats.touching_off import diameter_error

NAME = "depth stop"
ON_THE_FACE = "touch off on a solid face, where the hole plays no part"


def check_band(seat: SeatPlan, order: Order) -> Iterator[Check]:
    """Hold the step of the stop against the travel that the limits leave.

    Parameters
    ----------
    seat : SeatPlan
        The seat with its stops, the one to use first.
    order : Order
        With how sizes are written.

    Notes
    -----
    A stop holds a band that is at least two of its steps wide. Touched on the hole edge the
    band is what is left when the hole lies anywhere in its own limits.
    """
    if not seat.stops:
        yield from _without(seat, order)
        return
    stop = seat.stops[0]
    if stop.wanders:
        yield _wandering(order.show)
    elif (band := _band(stop)) is not None and stop.step is not None:
        yield _held(stop, band, seat, order.show)


def _band(stop: Stop) -> float | None:
    """Return the travel that the limits leave [mm]; None where there are no limits."""
    if stop.least is None or stop.greatest is None or not stop.greatest > stop.least:
        return None
    return stop.greatest - stop.least


def _held(stop: Stop, band: float, seat: SeatPlan, show: Show) -> Check:
    assert stop.step is not None
    narrowest = min(band, stop.any_hole.spread) if stop.any_hole is not None else band
    holds = narrowest >= 2 * stop.step * (1 - 1e-9)
    every = f", {show(Length(narrowest))} for every hole in its limits" if stop.any_hole else ""
    moves = ""
    if isinstance(seat.shape, Countersink):
        on = diameter_error(depth_error=stop.step, included_angle=seat.shape.included_angle)
        moves = f", which moves the diameter at the face by {show(Length(on))}"
    set_by_trial = "" if holds else " Set it by trial on scrap, not by its marks, or take a finer."
    return Check(
        name=NAME,
        verdict="holds" if holds else "look",
        sentence=f"The limits leave {show(Length(band))} of travel{every}; the {_named(stop)} "
        f"is marked in {show(Length(stop.step))}{moves}.{set_by_trial}",
    )


def _named(stop: Stop) -> str:
    return stop.device if stop.device == CAGE else f"{stop.device} stop"


def _wandering(show: Show) -> Check:
    return Check(
        name=NAME,
        verdict="look",
        sentence="The holes may differ by more than the seat may: no one travel from the hole "
        f"edge does for all. {ON_THE_FACE[0].upper()}{ON_THE_FACE[1:]}.",
    )


def _without(seat: SeatPlan, order: Order) -> Iterator[Check]:
    """Say that nothing stops the depth where a hand drill has no cage."""
    if order.machine.kind == "hand drill" and isinstance(seat.shape, Countersink):
        yield Check(
            name=NAME,
            verdict="look",
            sentence=f"Nothing stops the depth on the {order.machine.name}: take a stop cage, or "
            "cut shallow, try the screw or the gage, and creep down.",
        )
