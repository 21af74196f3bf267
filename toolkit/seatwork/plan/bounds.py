"""Limits of a size for gaging: its own, or those of the usual title block."""

from dataclasses import dataclass

from seatwork.plan.records import Given
from seatwork.shop import HouseRules

TITLE_BLOCK = {"inch": "note.inch_tolerance", "metric": "note.metric_tolerance"}
ANGLE = "note.angle_tolerance"


@dataclass(frozen=True, slots=True, kw_only=True)
class Bounds:
    """Between what a measured size is good, and who says so.

    Parameters
    ----------
    least, greatest : float
        Limits [mm or deg].
    source : str
        Where they come from.
    aim : float or None
        What was aimed at when it was cut [mm or deg]; None where the plan does not say.
    """

    least: float
    greatest: float
    source: str
    aim: float | None = None


def bounds_of(given: Given, *, system: str, rules: HouseRules) -> Bounds:
    """Return the limits of a size of a plan.

    Parameters
    ----------
    given : Given
        The size.
    system : {"inch", "metric"}
        System of the print, whose title block stands in where the size has no limits.
    rules : HouseRules
        The rules in force.
    """
    if given.least is not None and given.greatest is not None:
        return Bounds(
            least=given.least, greatest=given.greatest, source=given.source, aim=given.value
        )
    rule = ANGLE if given.kind == "angle" else TITLE_BLOCK[system]
    over = rules.number(rule)
    return Bounds(
        least=given.value - over if given.least is None else given.least,
        greatest=given.value + over if given.greatest is None else given.greatest,
        source=f"house rule {rule}",
        aim=given.value,
    )
