"""How sure a measured size is, and what may be said of it at a limit.

Notes
-----
A formula carries the uncertainty of what was put in by its slopes: each size's uncertainty
times the change of the result per unit of that size. Independent errors add by squares (the
root of their sum); if all are worst at once, by amounts. The slopes are taken by a small step
up and down, which is exact to about a billionth of the slope for the smooth formulas here.

At a limit the rule of ISO 14253-1 (from memory: check your copy) is that uncertainty always
counts against whoever wants to prove something: a part is proven good only if it lies inside
the limits by the expanded uncertainty, proven bad only if it lies outside by it.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from math import hypot
from statistics import fmean
from typing import Literal

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.seats.heads import state_of

STEP = 1e-4
"""Step for the slopes, in the unit of each size [mm or deg]; far under any tolerance."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Uncertainty:
    """A result with what the uncertainty of its sizes makes of it.

    Parameters
    ----------
    value : float
        The result, in its own unit [mm or deg].
    combined : float
        Uncertainty of independent errors, root of the sum of squares [mm or deg].
    worst : float
        Greatest error if all are worst at once [mm or deg].
    slopes : mapping of str to float
        Change of the result per unit of each size [-].
    """

    value: float
    combined: float
    worst: float
    slopes: Mapping[str, float]


def uncertainty(
    formula: Callable[..., float], sizes: Mapping[str, float], plus_minus: Mapping[str, float]
) -> Uncertainty:
    """Carry the uncertainty of sizes through a formula.

    Parameters
    ----------
    formula : callable
        Takes the sizes by name and gives one number.
    sizes : mapping of str to float
        The sizes as measured [mm or deg].
    plus_minus : mapping of str to float
        Uncertainty of those that have one [same unit as the size]; the others count as exact.

    Returns
    -------
    Uncertainty
        Result, combined and worst uncertainty, and the slopes.

    Raises
    ------
    SeatworkError
        If a size has no formula to go with, or the formula refuses it.

    Examples
    --------
    .001 in of height is about half a degree with two balls:

    >>> from seatwork.seats.gaging import angle_from_two_balls
    >>> found = uncertainty(angle_from_two_balls,
    ...     dict(small_diameter=9.525, large_diameter=15.875, small_top=0, large_top=8.0137),
    ...     dict(large_top=0.0254))
    >>> found.value, found.combined
    (82.0, 0.52)
    """
    strangers = sorted(set(plus_minus) - set(sizes))
    if strangers:
        raise SeatworkError(
            strangers[0],
            "an uncertainty is given for a size that is not there",
            "name it as the sizes are named",
        )
    slopes = {name: _slope(formula, sizes, name) for name in plus_minus}
    parts = [abs(slopes[name]) * _amount(plus_minus[name]) for name in plus_minus]
    return Uncertainty(
        value=formula(**sizes),
        combined=hypot(*parts),
        worst=sum(parts),
        slopes=slopes,
    )


def _amount(value: float) -> float:
    checks.length_or_zero(value, "uncertainty")
    return value


def _slope(formula: Callable[..., float], sizes: Mapping[str, float], name: str) -> float:
    above = formula(**{**sizes, name: sizes[name] + STEP})
    below = formula(**{**sizes, name: sizes[name] - STEP})
    return (above - below) / (2 * STEP)


@dataclass(frozen=True, slots=True, kw_only=True)
class Decision:
    """What may be said of a part at its limits.

    Parameters
    ----------
    verdict : str
        "inside", "outside" or "cannot be told".
    margin : float
        Distance of the value from the nearer limit [mm]; minus outside.
    uncertainty : float
        Expanded uncertainty used [mm].
    """

    verdict: Literal["inside", "outside", "cannot be told"]
    margin: float
    uncertainty: float


def decide(value: float, *, lower: float, upper: float, uncertainty: float) -> Decision:
    """Decide whether a measured value is proven inside or outside its limits.

    Parameters
    ----------
    value : float
        The size as measured [mm].
    lower : float
        Lower limit [mm].
    upper : float
        Upper limit [mm].
    uncertainty : float
        Expanded uncertainty of the measurement [mm].

    Returns
    -------
    Decision
        "inside" if proven good, "outside" if proven bad, else "cannot be told".

    Raises
    ------
    SeatworkError
        If a size is no number, or the limits are crossed.

    Notes
    -----
    Rule of ISO 14253-1, from memory: check your copy of the standard.

    Examples
    --------
    >>> decide(12.05, lower=12.0, upper=12.2, uncertainty=0.02).verdict
    'inside'
    >>> decide(12.01, lower=12.0, upper=12.2, uncertainty=0.02).verdict
    'cannot be told'
    """
    for size, name in ((value, "measured value"), (lower, "lower limit"), (upper, "upper limit")):
        checks.signed_length(size, name)
    checks.length_or_zero(uncertainty, "uncertainty")
    if not lower <= upper:
        raise SeatworkError(
            Length(lower),
            "the lower limit is above the upper, {upper}",
            "swap them",
            upper=Length(upper),
        )
    margin = min(value - lower, upper - value)
    verdict: Literal["inside", "outside", "cannot be told"] = "cannot be told"
    if margin >= uncertainty:
        verdict = "inside"
    elif margin < -uncertainty:
        verdict = "outside"
    return Decision(verdict=verdict, margin=margin, uncertainty=uncertainty)


@dataclass(frozen=True, slots=True, kw_only=True)
class Flushness:
    """What an indicator or depth micrometer found over a head.

    Parameters
    ----------
    amount : float
        Height of the head's top above the face, mean of the readings [mm]; minus below it.
    state : str
        "proud", "flush" or "below".
    least : float
        Lowest place of the head against the mean face [mm].
    greatest : float
        Highest place of the head against the mean face [mm]; "never proud" is about this one.
    """

    amount: float
    state: Literal["proud", "flush", "below"]
    least: float
    greatest: float


def flushness(*, face: Sequence[float], head: Sequence[float]) -> Flushness:
    """Find how a head stands from readings taken on the face round it and on its top.

    Parameters
    ----------
    face : sequence of float
        Readings on the face, up is plus [mm]; several, since faces are not flat.
    head : sequence of float
        Readings on the head from the same zero [mm].

    Returns
    -------
    Flushness
        Mean amount, its state, and the lowest and highest place of the head.

    Raises
    ------
    SeatworkError
        If there are no readings on one of them, or one is no number.

    Examples
    --------
    >>> found = flushness(face=[0.0, 0.01, -0.01], head=[-0.10, -0.12])
    >>> found.amount, found.state
    (-0.11, 'below')
    """
    for readings, place in ((face, "face"), (head, "head")):
        if not readings:
            raise SeatworkError("", f"there is no reading on the {place}", "take at least one")
        for reading in readings:
            checks.signed_length(reading, f"reading on the {place}")
    level = fmean(face)
    amount = fmean(head) - level
    return Flushness(
        amount=amount,
        state=state_of(amount),
        least=min(head) - level,
        greatest=max(head) - level,
    )
