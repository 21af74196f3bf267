"""One measured value against note and house limits, with the uncertainty of the measuring."""

from collections.abc import Iterator
from dataclasses import replace

from seatwork.inspection.cuts import readings_of, size_of, stands_in_bore
from seatwork.inspection.fights import BY_BALL, angle_by_ball
from seatwork.inspection.measured import QUANTITIES, Measured
from seatwork.inspection.records import ACCEPT, REJECT, UNKNOWN, Judged
from seatwork.plan import SeatPlan
from seatwork.plan.bounds import Bounds, bounds_of
from seatwork.seats import Countersink, ball_top
from seatwork.seats.measuring import decide
from seatwork.shop import HouseRules
from seatwork.units import show_both

WORDS = {"inside": ACCEPT, "outside": REJECT, "cannot be told": UNKNOWN}
SIZED = ("diameter", "depth", "stand", "angle", "ball_top", "protrusion")
ANSWERS = ("tried", "go", "not_go", "hole", "cleaned")
WORST = (REJECT, UNKNOWN, ACCEPT)


def judge(
    measured: Measured, seat: SeatPlan, *, system: str, rules: HouseRules
) -> tuple[Judged, ...]:
    """Judge every value of a part that its plan gives a limit for.

    Parameters
    ----------
    measured : Measured
        The part's values.
    seat : SeatPlan
        What it should be.
    system : {"inch", "metric"}
        System of the print.
    rules : HouseRules
        The rules in force.
    """
    return (*_sizes(measured, seat, system, rules), *_answers(measured, seat))


def worst(judged: tuple[Judged, ...]) -> str:
    """Return the verdict of a part: one reject rejects it, one doubt leaves it open."""
    found = {one.verdict for one in judged}
    return next((verdict for verdict in WORST if verdict in found), UNKNOWN)


def limits_of(
    key: str, seat: SeatPlan, *, system: str, rules: HouseRules, ball: float | None = None
) -> Bounds | None:
    """Return the limits of a quantity; None where the plan has no such size.

    Parameters
    ----------
    key : str
        Which quantity.
    seat : SeatPlan
        What the part should be.
    system : {"inch", "metric"}
        System of the print.
    rules : HouseRules
        The rules in force.
    ball : float, optional
        Diameter of the ball, for the height of its top [mm].

    Returns
    -------
    Bounds or None
        The limits [mm or deg].

    Raises
    ------
    SeatworkError
        If the ball does not touch the cone at both limits.
    """
    if key == "stand":
        return _stand(seat, system, rules)
    if key == "protrusion":
        return _protrusion(seat)
    if key == "ball_top":
        across = limits_of("diameter", seat, system=system, rules=rules)
        return None if ball is None or across is None else _over_ball(seat, ball, across)
    given = size_of(key, seat)
    return None if given is None else bounds_of(given, system=system, rules=rules)


def _over_ball(seat: SeatPlan, ball: float, across: Bounds) -> Bounds | None:
    """Return where the top of a ball stands in the widest and the narrowest good seat."""
    cone = seat.shape
    if not isinstance(cone, Countersink):
        return None
    least, greatest = (
        ball_top(ball, replace(cone, diameter=size)) for size in (across.greatest, across.least)
    )
    return Bounds(least=least, greatest=greatest, source=across.source)


def _protrusion(seat: SeatPlan) -> Bounds | None:
    gage = seat.screw.gage if seat.screw else None
    if gage is None:
        return None
    return Bounds(least=gage.least, greatest=gage.greatest, source="head gage")


def _in_bore(seat: SeatPlan, system: str, rules: HouseRules) -> Bounds | None:
    """Return how a head may stand in its counterbore: never proud, its floor the other end."""
    deep, screw, proud = size_of("depth", seat), seat.screw, "flush.greatest_proud"
    if deep is None or screw is None or screw.head_height is None:
        return None
    depth = bounds_of(deep, system=system, rules=rules)
    highest = max(screw.head_height - depth.least, rules.number(proud))
    source = f"house rule {proud}, and the limits of the depth"
    return Bounds(least=-depth.greatest, greatest=highest, source=source, aim=highest)


def _stand(seat: SeatPlan, system: str, rules: HouseRules) -> Bounds | None:
    """Return how the job's screw may stand: the plan's reading, else the house rules."""
    if seat.screw is None:
        return None
    if stands_in_bore(seat):
        return _in_bore(seat, system, rules)
    reading = next((one for one in seat.readings if one.quantity == "stand"), None)
    below, proud = "flush.greatest_below", "flush.greatest_proud"
    if reading is None:
        return None
    if reading.noted:
        return Bounds(
            least=reading.least,
            greatest=reading.greatest,
            source="print note",
            aim=reading.value,
        )
    return Bounds(
        least=-rules.number(below),
        greatest=0.0 if reading.capped else rules.number(proud),
        source=f"the print note and house rule {below}"
        if reading.capped
        else f"house rules {below} and {proud}",
        aim=reading.value,
    )


def _sizes(measured: Measured, seat: SeatPlan, system: str, rules: HouseRules) -> Iterator[Judged]:
    for key in SIZED:
        value = getattr(measured, key)
        if value is None:
            continue
        bounds = limits_of(key, seat, system=system, rules=rules, ball=measured.ball)
        if bounds is not None:
            judged = _judged(key, value, bounds, measured)
            yield replace(judged, about=_about(key, seat, system))
    if measured.angle is None and not measured.burr:
        yield from _by_ball(measured, seat, system, rules)


def _by_ball(
    measured: Measured, seat: SeatPlan, system: str, rules: HouseRules
) -> Iterator[Judged]:
    """Yield the angle that ball and diameter give, where the seat wants one or it is off."""
    found = angle_by_ball(measured, seat)
    bounds = limits_of("angle", seat, system=system, rules=rules)
    if found is None or bounds is None:
        return
    judged = _held("angle", found.value, bounds, found.combined, BY_BALL)
    if seat.screw is not None or judged.verdict == REJECT:
        yield judged


def _about(key: str, seat: SeatPlan, system: str) -> str:
    """Say what a value is of; a head gage by its hole, without which it is no gage."""
    gage = seat.screw.gage if seat.screw and key == "protrusion" else None
    hole = f", hole {show_both(gage.diameter, system)}" if gage else ""
    return f"{QUANTITIES[key].about}{hole}"


def _judged(key: str, value: float, bounds: Bounds, measured: Measured) -> Judged:
    return _held(key, value, bounds, measured.uncertainty(key), measured.instrument(key))


def _held(key: str, value: float, bounds: Bounds, sure: float, instrument: str) -> Judged:
    found = decide(value, lower=bounds.least, upper=bounds.greatest, uncertainty=sure)
    return Judged(
        key=key,
        about=QUANTITIES[key].about,
        value=value,
        least=bounds.least,
        greatest=bounds.greatest,
        uncertainty=sure,
        instrument=instrument,
        source=bounds.source,
        aim=bounds.aim,
        verdict=WORDS[found.verdict],
    )


def _answers(measured: Measured, seat: SeatPlan) -> Iterator[Judged]:
    for one in readings_of(seat):
        answer = getattr(measured, one.key)
        if one.key in ANSWERS and answer is not None:
            yield Judged(
                key=one.key,
                about=one.about,
                value=None,
                verdict=ACCEPT if answer else REJECT,
            )
