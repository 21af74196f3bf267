"""One measured value against note and house limits, with the uncertainty of the measuring."""

from collections.abc import Iterator

from seatwork.inspection.measured import QUANTITIES, Measured
from seatwork.inspection.records import ACCEPT, REJECT, UNKNOWN, Judged
from seatwork.plan import SeatPlan
from seatwork.plan.bounds import Bounds, bounds_of
from seatwork.seats.measuring import decide
from seatwork.shop import HouseRules

WORDS = {"inside": ACCEPT, "outside": REJECT, "cannot be told": UNKNOWN}
ACROSS = (
    "diameter at the face",
    "counterbore diameter",
    "spotface diameter",
    "mouth of the center hole",
)
DEEP = ("depth from the face", "depth of the cone")
SAID = "as the print note says"
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
    return (*_sizes(measured, seat, system, rules), *_answers(measured))


def worst(judged: tuple[Judged, ...]) -> str:
    """Return the verdict of a part: one reject rejects it, one doubt leaves it open."""
    found = {one.verdict for one in judged}
    return next((verdict for verdict in WORST if verdict in found), UNKNOWN)


def limits_of(key: str, seat: SeatPlan, *, system: str, rules: HouseRules) -> Bounds | None:
    """Return the limits of a quantity [mm or deg]; None where the plan has no such size."""
    if key == "stand":
        return _stand(seat, rules)
    names = {"diameter": ACROSS, "depth": DEEP, "angle": ("included angle",)}[key]
    given = next((size for name in names if (size := seat.size(name))), None)
    return None if given is None else bounds_of(given, system=system, rules=rules)


def _stand(seat: SeatPlan, rules: HouseRules) -> Bounds | None:
    """Return how the job's screw may stand: the plan's reading, else the house rules."""
    if seat.screw is None:
        return None
    reading = next((one for one in seat.readings if "over the head" in one.instrument), None)
    across = seat.size("diameter at the face")
    below, proud = "flush.greatest_below", "flush.greatest_proud"
    if reading is None or across is None:
        return None
    if across.source.endswith(SAID):
        return Bounds(least=reading.least, greatest=reading.greatest, source=across.source)
    return Bounds(
        least=-rules.number(below),
        greatest=rules.number(proud),
        source=f"house rules {below} and {proud}",
    )


def _sizes(measured: Measured, seat: SeatPlan, system: str, rules: HouseRules) -> Iterator[Judged]:
    for key in ("diameter", "depth", "stand", "angle"):
        value = getattr(measured, key)
        if value is None:
            continue
        bounds = limits_of(key, seat, system=system, rules=rules)
        if bounds is not None:
            yield _judged(key, value, bounds, measured)


def _judged(key: str, value: float, bounds: Bounds, measured: Measured) -> Judged:
    sure = measured.uncertainty(key)
    found = decide(value, lower=bounds.least, upper=bounds.greatest, uncertainty=sure)
    return Judged(
        key=key,
        about=QUANTITIES[key].about,
        value=value,
        least=bounds.least,
        greatest=bounds.greatest,
        uncertainty=sure,
        instrument=measured.instrument(key),
        source=bounds.source,
        verdict=WORDS[found.verdict],
    )


def _answers(measured: Measured) -> Iterator[Judged]:
    for key in ("tried", "cleaned"):
        answer = getattr(measured, key)
        if answer is not None:
            yield Judged(
                key=key,
                about=QUANTITIES[key].about,
                value=None,
                verdict=ACCEPT if answer else REJECT,
            )
