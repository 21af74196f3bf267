"""Run chart and histogram of one quantity: the numbers only, drawn elsewhere."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from math import floor
from statistics import fmean

from seatwork.errors import SeatworkError
from seatwork.inspection.findings import PartVerdict
from seatwork.seats.capability import Capability, capability

SAME_SIDE = 7  # parts in a row beside the middle that say something changed
MOST_BINS = 12
SAME = 1e-6  # mm or deg


@dataclass(frozen=True, slots=True, kw_only=True)
class RunChart:
    """One quantity part by part, in the order of cutting.

    Parameters
    ----------
    about : str
        What it is.
    parts : tuple of str
        Marks of the parts.
    values : tuple of float
        As measured [mm or deg].
    least, greatest : float
        Limits [mm or deg].
    uncertainty : float
        Expanded uncertainty of the measurement [mm or deg].
    aim : float or None
        What the plan aims at [mm or deg]; the middle of the limits where it does not say.
    """

    about: str
    parts: tuple[str, ...]
    values: tuple[float, ...]
    least: float
    greatest: float
    uncertainty: float
    aim: float | None = None

    @property
    def middle(self) -> float:
        """Mean of the values [mm or deg]."""
        return fmean(self.values)

    @property
    def signal(self) -> str:
        """What the order of the values says; empty where it says nothing.

        Notes
        -----
        Seven in a row on one side of what is aimed at: common practice, no source. Where the
        plan aims at a limit itself, as house rule `flush.aim` does, parts lie on the good side
        of it anyway; there the far half of the limits is what says that something moved.
        """
        tail = self.values[-SAME_SIDE:]
        if len(tail) < SAME_SIDE:
            return ""
        middle = (self.least + self.greatest) / 2
        aim = middle if self.aim is None else self.aim
        at_least, at_most = aim <= self.least + SAME, aim >= self.greatest - SAME
        line = middle if at_least or at_most else aim
        about = "the middle of the limits" if abs(line - middle) <= SAME else "what was aimed at"
        if all(value > line for value in tail) and not at_most:
            return f"Seven in a row over {about}: the stop has moved. Set it anew."
        if all(value < line for value in tail) and not at_least:
            return f"Seven in a row under {about}: the stop has moved. Set it anew."
        return ""

    def capability(self) -> Capability:
        """Return Cp and Cpk of the sample.

        Raises
        ------
        SeatworkError
            If there are too few parts, or all are alike.
        """
        return capability(self.values, lower=self.least, upper=self.greatest)


@dataclass(frozen=True, slots=True, kw_only=True)
class Histogram:
    """How often each size was found.

    Parameters
    ----------
    edges : tuple of float
        Borders of the bins, one more than bins [mm or deg].
    counts : tuple of int
        Parts in each bin; a value on a border counts above it.
    """

    edges: tuple[float, ...]
    counts: tuple[int, ...]


def run_chart(parts: Sequence[PartVerdict], key: str) -> RunChart:
    """Gather one quantity of the parts of one feature.

    Parameters
    ----------
    parts : sequence of PartVerdict
        Parts of one feature, in the order of cutting.
    key : {"diameter", "depth", "stand", "angle"}
        Which quantity.

    Raises
    ------
    SeatworkError
        If no part has it.
    """
    found = [(part, one) for part in parts if (one := part.value_of(key)) and one.value is not None]
    if not found:
        raise SeatworkError(key, "no part has such a value", "measure it, or name another")
    first = found[0][1]
    return RunChart(
        about=first.about,
        parts=tuple(part.measured.part for part, _ in found),
        values=tuple(one.value for _, one in found if one.value is not None),
        least=_number(first.least),
        greatest=_number(first.greatest),
        uncertainty=first.uncertainty,
        aim=first.aim,
    )


def histogram(values: Sequence[float], *, width: float) -> Histogram:
    """Count values in bins.

    Parameters
    ----------
    values : sequence of float
        As measured [mm or deg].
    width : float
        Width of a bin [mm or deg]; doubled until there are 12 bins at most.

    Raises
    ------
    SeatworkError
        If there are no values, or no width.

    Examples
    --------
    >>> histogram([1.0, 1.1, 1.9, 2.5], width=1.0)
    Histogram(edges=(1.0, 2.0, 3.0), counts=(3, 1))
    """
    if not values or not 0 < width < float("inf"):
        raise SeatworkError(len(values), "that makes no histogram", "give values and a bin width")
    while max(values) - min(values) >= (MOST_BINS - 1) * width:
        width *= 2
    places = Counter(floor(value / width + 1e-9) for value in values)
    first, last = min(places), max(places)
    return Histogram(
        edges=tuple(place * width for place in range(first, last + 2)),
        counts=tuple(places[place] for place in range(first, last + 1)),
    )


def _number(value: float | None) -> float:
    return 0.0 if value is None else value
