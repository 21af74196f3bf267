"""What a sample of measured parts says about a process, and what it does not.

Lengths are millimeters.

Notes
-----
Cp sets the tolerance against six standard deviations, Cpk the distance from the mean to the
nearer limit against three. Both are estimates, and from few parts poor ones: with n parts
drawn from a normal spread, (n - 1) s²/sigma² follows chi-squared, so the true Cp lies between

    Cp sqrt(chi2(2.5 %)/(n - 1))   and   Cp sqrt(chi2(97.5 %)/(n - 1)).

The percentage points come from the power series of the incomplete gamma function, turned
round by halving. Five parts leave Cp uncertain by more than half.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, lgamma, log, sqrt
from statistics import fmean, stdev

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length

FEW = 25
"""Samples under this are called too few (common practice, no source: 25 to 50 are asked for)."""

TAIL = 0.025
"""Share of a normal spread's samples left out at each end of the 95 % range [-]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Capability:
    """Cp and Cpk of a sample, with how far they can be trusted.

    Parameters
    ----------
    count : int
        Parts measured.
    mean : float
        Mean of the sample [mm].
    deviation : float
        Standard deviation of the sample [mm].
    cp : float
        Tolerance over six standard deviations [-].
    cpk : float
        Distance from the mean to the nearer limit over three standard deviations [-].
    cp_low : float
        Lower end of the 95 % range of Cp [-].
    cp_high : float
        Upper end of it [-].
    """

    count: int
    mean: float
    deviation: float
    cp: float
    cpk: float
    cp_low: float
    cp_high: float

    @property
    def too_few(self) -> bool:
        """Whether the sample is too small to speak of the process."""
        return self.count < FEW

    def explain(self) -> str:
        """Say Cp and Cpk with the size of the sample, never without."""
        text = (
            f"{self.count} parts: Cp {self.cp:.2f}, Cpk {self.cpk:.2f}; the true Cp may be"
            f" anything from {self.cp_low:.2f} to {self.cp_high:.2f}."
        )
        few = f" {self.count} parts are too few to speak of the process." if self.too_few else ""
        return text + few


def capability(sizes: Sequence[float], *, lower: float, upper: float) -> Capability:
    """Find Cp and Cpk of measured parts.

    Parameters
    ----------
    sizes : sequence of float
        The measured size of each part [mm], two or more.
    lower : float
        Lower limit [mm].
    upper : float
        Upper limit [mm].

    Returns
    -------
    Capability
        Both figures with their uncertainty.

    Raises
    ------
    SeatworkError
        If there are fewer than two parts, all are alike, or the limits are crossed.

    Examples
    --------
    >>> found = capability([10.0, 10.1, 9.9, 10.05, 9.95], lower=9.7, upper=10.3)
    >>> found.explain()[:75]
    '5 parts: Cp 1.26, Cpk 1.26; the true Cp may be anything from 0.44 to 2.11. '
    >>> found.too_few
    True
    """
    for size in sizes:
        checks.signed_length(size, "measured size")
    checks.signed_length(lower, "lower limit")
    checks.signed_length(upper, "upper limit")
    if not lower < upper:
        raise SeatworkError(
            Length(lower),
            "the lower limit is not below the upper, {upper}",
            "swap them",
            upper=Length(upper),
        )
    mean, deviation = _mean_and_deviation(sizes)
    cp = (upper - lower) / (6 * deviation)
    freedom = len(sizes) - 1
    low, high = (cp * sqrt(_chi_squared(freedom, share) / freedom) for share in (TAIL, 1 - TAIL))
    return Capability(
        count=len(sizes),
        mean=mean,
        deviation=deviation,
        cp=cp,
        cpk=min(upper - mean, mean - lower) / (3 * deviation),
        cp_low=low,
        cp_high=high,
    )


def _mean_and_deviation(sizes: Sequence[float]) -> tuple[float, float]:
    if len(sizes) < 2:
        raise SeatworkError(len(sizes), "so few parts have no spread", "measure more parts")
    deviation = stdev(sizes)
    if not deviation > 0:
        raise SeatworkError(
            len(sizes),
            "all parts measured alike, so no spread shows",
            "measure with a finer instrument",
        )
    return fmean(sizes), deviation


def _chi_squared(freedom: int, share: float) -> float:
    """Value that a chi-squared number stays under with probability `share`."""
    low, high = 0.0, freedom + 10 * sqrt(2 * freedom) + 10
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if _below(freedom, middle) < share else (low, middle)
    return (low + high) / 2


def _below(freedom: int, value: float) -> float:
    """Probability that a chi-squared number is under `value`."""
    shape, x = freedom / 2, value / 2
    if not x > 0:
        return 0.0
    term = total = exp(shape * log(x) - x - lgamma(shape + 1))
    step = 0
    while term > 1e-17 * total or step < x:
        step += 1
        term *= x / (shape + step)
        total += term
    return total
