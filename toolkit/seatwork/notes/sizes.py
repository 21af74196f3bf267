"""Sizes as a print note gives them: a value with its tolerance, limits, fit or bound."""

import re
from dataclasses import dataclass
from math import isfinite

from seatwork.errors import SeatworkError
from seatwork.units import show_angle, show_length

UNITS = ("in", "mm", "deg")
BOUNDS = ("", "max", "min", "ref")


@dataclass(frozen=True, slots=True, kw_only=True)
class Size:
    """A length or an angle as the note says it.

    Parameters
    ----------
    value : float or None
        The size [mm, or deg if `unit` says so]; the middle of limits; None where the note
        gives only the name of a drill.
    unit : {"in", "mm", "deg"}
        The unit the note is written in; `value` is mm or deg always.
    upper, lower : float or None
        Signed deviations from the value [mm or deg]; both or neither.
    least, greatest : float or None
        Limits [mm or deg], where the note gives limits and no nominal size.
    fit : str
        Tolerance class, such as H13.
    bound : {"", "max", "min", "ref"}
        Whether the size is a greatest, a least or a reference one.
    name : str
        Name of a drill, such as ``#7`` or ``F``; then there is no value.

    Raises
    ------
    SeatworkError
        If the parts contradict each other.

    Examples
    --------
    >>> Size.limits(least=9.652, greatest=9.906, unit="in").value
    9.779
    """

    value: float | None = None
    unit: str = "in"
    upper: float | None = None
    lower: float | None = None
    least: float | None = None
    greatest: float | None = None
    fit: str = ""
    bound: str = ""
    name: str = ""

    def __str__(self) -> str:
        if self.value is None:
            return self.name
        limits = [size for size in (self.least, self.greatest) if size is not None]
        stated = " to ".join(self._shown(size) for size in limits or [self.value])
        off = [self._shown(size) for size in (self.upper, self.lower) if size is not None]
        apart = f"deviations {' and '.join(off)}" if off else ""
        return " ".join(part for part in (stated, apart, self.bound) if part)

    def _shown(self, size: float) -> str:
        if self.unit == "deg":
            return show_angle(size)
        return show_length(size, "inch" if self.unit == "in" else "metric")

    def __post_init__(self) -> None:
        if self.unit not in UNITS or self.bound not in BOUNDS:
            raise SeatworkError(self.unit, "that is no unit or bound of a size", "write in or mm")
        if (self.value is None) != bool(self.name):
            raise SeatworkError(self.name or "a size", "a size is a value or a name", "give one")
        for number in (self.value, self.upper, self.lower, self.least, self.greatest):
            if number is not None and not isfinite(number):
                raise SeatworkError(number, "that is not a finite size", "check the sizes")
        self._check_order()

    def _check_order(self) -> None:
        if self.value is not None and not self.value >= 0:
            raise SeatworkError(self.value, "a size has no sign", "write it without")
        for low, high in ((self.lower, self.upper), (self.least, self.greatest)):
            if (low is None) != (high is None) or (
                low is not None and high is not None and not low <= high
            ):
                raise SeatworkError(
                    "a tolerance", "its two ends do not run from low to high", "turn them round"
                )

    @classmethod
    def limits(cls, *, least: float, greatest: float, unit: str, bound: str = "") -> "Size":
        """Return a size given by its limits [mm or deg]."""
        middle = (least + greatest) / 2
        return cls(value=middle, unit=unit, least=least, greatest=greatest, bound=bound)

    @property
    def smallest(self) -> float | None:
        """The least size the note allows [mm or deg]; the value where no tolerance is given."""
        if self.least is not None or self.value is None:
            return self.least
        return self.value + (self.lower or 0.0)

    @property
    def largest(self) -> float | None:
        """The greatest size the note allows [mm or deg]."""
        if self.greatest is not None or self.value is None:
            return self.greatest
        return self.value + (self.upper or 0.0)


def drill_name(text: str) -> str:
    """Return a drill's name as the lists have it, for ``NO. 7`` or ``LTR F``.

    Examples
    --------
    >>> drill_name("NO. 7"), drill_name("LETTER F")
    ('#7', 'F')
    """
    found = re.search(r"\d+", text)
    return f"#{int(found[0])}" if found else text.replace("⌀", "").split()[-1]
