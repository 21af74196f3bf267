"""Tolerance stacks: worst case, root-sum-square, and simulation.

Lengths are millimeters.

Notes
-----
A gap, a height or a depth is a sum of sizes, each going in with a direction: +1 if the gap
grows with the size, -1 if it shrinks, or any slope, such as 1/(2 tan(A/2)) for a diameter
that a cone turns into height. Worst case adds the tolerances; root-sum-square adds their
squares, which is what happens to many independent, centered sizes; simulation draws them.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot
from typing import TYPE_CHECKING, Literal

from seatwork import checks
from seatwork.errors import SeatworkError

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

Spread = Literal["normal", "uniform"]

SIGMAS = 3.0
"""A tolerance is taken as this many standard deviations of a normal spread [-]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Term:
    """One size of a stack.

    Parameters
    ----------
    nominal : float
        Middle of the size's limits [mm].
    tolerance : float
        Plus-or-minus tolerance round it [mm].
    direction : float
        Change of the result per unit of this size [-]: +1, -1, or a slope.
    spread : str
        "normal" with the tolerance as three standard deviations, or "uniform" over it.

    Raises
    ------
    SeatworkError
        If a number is out of range.
    """

    nominal: float
    tolerance: float
    direction: float = 1.0
    spread: Spread = "normal"

    def __post_init__(self) -> None:
        checks.signed_length(self.nominal, "nominal size")
        checks.length_or_zero(self.tolerance, "tolerance")
        checks.signed_length(self.direction, "direction")
        if self.spread not in ("normal", "uniform"):
            raise SeatworkError(
                self.spread, "a size spreads in one of two ways", 'say "normal" or "uniform"'
            )


@dataclass(frozen=True, slots=True, kw_only=True)
class Result:
    """What a stack comes to.

    Parameters
    ----------
    nominal : float
        With every size at its middle [mm].
    plus_minus : float
        Tolerance of the result [mm].
    """

    nominal: float
    plus_minus: float

    @property
    def least(self) -> float:
        """Lower end [mm]."""
        return self.nominal - self.plus_minus

    @property
    def greatest(self) -> float:
        """Upper end [mm]."""
        return self.nominal + self.plus_minus


def _nominal(terms: Sequence[Term]) -> float:
    if not terms:
        raise SeatworkError("", "the stack has no sizes", "give at least one")
    return sum(term.direction * term.nominal for term in terms)


def worst_case(terms: Sequence[Term]) -> Result:
    """Add a stack with every size at its worst at once.

    Parameters
    ----------
    terms : sequence of Term
        The sizes [mm].

    Returns
    -------
    Result
        Nominal and the sum of all tolerances [mm].

    Raises
    ------
    SeatworkError
        If there are no sizes.

    Examples
    --------
    >>> worst_case([Term(nominal=40, tolerance=0.1),
    ...             Term(nominal=25, tolerance=0.05, direction=-1)])
    Result(nominal=15.0, plus_minus=0.15)
    """
    nominal = _nominal(terms)
    return Result(
        nominal=nominal, plus_minus=sum(abs(term.direction) * term.tolerance for term in terms)
    )


def rss(terms: Sequence[Term]) -> Result:
    """Add a stack by the root of the sum of squares.

    Parameters
    ----------
    terms : sequence of Term
        The sizes [mm].

    Returns
    -------
    Result
        Nominal and the root of the summed squares of the tolerances [mm].

    Raises
    ------
    SeatworkError
        If there are no sizes.

    Notes
    -----
    Holds for independent sizes, centered in their limits. Three parts or a tool that drifts
    are not that; then use the worst case.

    Examples
    --------
    >>> rss([Term(nominal=0, tolerance=0.3), Term(nominal=0, tolerance=0.4)]).plus_minus
    0.5
    """
    nominal = _nominal(terms)
    return Result(
        nominal=nominal,
        plus_minus=hypot(*(term.direction * term.tolerance for term in terms)),
    )


def simulate(
    terms: Sequence[Term], rng: "np.random.Generator", *, count: int = 100_000
) -> "NDArray[np.float64]":
    """Draw a stack many times.

    Parameters
    ----------
    terms : sequence of Term
        The sizes [mm].
    rng : numpy.random.Generator
        Where the draws come from; the same generator state gives the same draws.
    count : int
        How many assemblies, 1 to 10,000,000.

    Returns
    -------
    numpy.ndarray
        Shape (count,): the result of each assembly [mm].

    Raises
    ------
    SeatworkError
        If there are no sizes or the count is out of range.

    Examples
    --------
    >>> import numpy as np
    >>> drawn = simulate([Term(nominal=5, tolerance=0.3)], np.random.default_rng(1))
    >>> float(drawn.mean()), float(drawn.std())
    (5.00, 0.10)
    """
    checks.count(count, "number of assemblies")
    import numpy as np

    if not isinstance(rng, np.random.Generator):
        raise SeatworkError(rng, "no numbers can be drawn from it", "give a numpy Generator")
    total = np.full(count, float(_nominal(terms)))
    for term in terms:
        total += (term.direction * term.tolerance) * _drawn(term.spread, rng, count)
    return total


def _drawn(spread: Spread, rng: "np.random.Generator", count: int) -> "NDArray[np.float64]":
    """Deviations in units of the tolerance, shape (count,)."""
    if spread == "uniform":
        return rng.uniform(-1.0, 1.0, count)
    return rng.standard_normal(count) / SIGMAS
