"""The drill under a machine reamer, by the house rule."""

from seatwork.hardware.drill_list import Drill, drills, next_drill
from seatwork.quantities import INCH
from seatwork.shop import HouseRules

RULE = "ream.under"

FRACTIONS = ((1 / 2, 1 / 64), (1.5, 1 / 32))  # in: up to this size, leave this
SMALL, LEAVE_SMALL = 3 / 16, 0.005  # in; .005 to .010
METRIC = ((5.0, 0.1), (20.0, 0.2), (30.0, 0.3))  # mm; a table book, from memory
TABLE = ((1 / 4, 0.010), (1 / 2, 0.015), (3 / 4, 0.018), (1.0, 0.020), (1.5, 0.025))  # in
SAME = 1e-6  # mm


def drill_under(diameter: float, *, system: str, rules: HouseRules) -> Drill:
    """Return the drill that leaves a machine reamer its cut.

    Parameters
    ----------
    diameter : float
        Diameter of the reamer [mm].
    system : {"inch", "metric"}
        Whose drills.
    rules : HouseRules
        The rules in force; `ream.under` says how much is left.

    Raises
    ------
    SeatworkError
        If no listed drill lies under it.

    Examples
    --------
    >>> from seatwork.shop import rules
    >>> drill_under(6.35, system="inch", rules=rules()).name
    '15/64'
    >>> drill_under(8.0, system="metric", rules=rules()).name
    '7.8 mm'
    """
    inches = diameter / INCH
    if system == "metric":
        return next_drill(diameter - _left(METRIC, diameter), "down", "metric")
    if rules.word(RULE) == "by table":
        return next_drill(diameter - INCH * _left(TABLE, inches), "down", "inch")
    if inches < SMALL - SAME:
        return next_drill(diameter - INCH * LEAVE_SMALL, "down", "inch")
    wanted = diameter - INCH * _left(FRACTIONS, inches)
    fractions = (each for each in drills("inch") if each.series == "fraction")
    return min(fractions, key=lambda each: abs(each.diameter - wanted))


def _left(steps: tuple[tuple[float, float], ...], diameter: float) -> float:
    """Return what is left for the reamer: the first step that takes in the diameter."""
    return next((left for upto, left in steps if diameter <= upto + SAME), steps[-1][1])
