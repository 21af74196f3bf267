"""Refuse sizes that no part can have, before a formula meets them.

Every comparison is written so that NaN fails it, and what is not a number at all is refused
with the same sentence, so nothing but ``SeatworkError`` leaves this room.
"""

from numbers import Real
from typing import Any

from seatwork.errors import Angle, Length, SeatworkError

LARGEST = 10_000.0
"""Largest length taken [mm]. No seat is ten meters wide; beyond it a unit was mixed up."""

SMALLEST = 1e-6
"""Smallest length that counts as above zero [mm]: a nanometer, under any surface's roughness."""

LARGEST_QUANTITY = 1e12
"""Largest force or stress taken [N, MPa]; beyond it a unit was mixed up."""

LARGEST_COUNT = 10_000_000
"""Largest number of things drawn or measured at once; more would fill the memory."""

LEAST_ANGLE = 1.0
GREATEST_ANGLE = 179.0
"""Included angles taken [deg]. Outside them the cone is a taper or a flat, not a seat."""


def is_number(value: object) -> bool:
    """Tell whether `value` is a number at all; text and None are not."""
    return type(value) is float or isinstance(value, Real)


def shown(value: Any, kind: type[float] = Length) -> object:
    """Give `value` the kind that the reader's units understand, or leave it as it is."""
    return kind(value) if is_number(value) else value


def length(value: float, name: str) -> None:
    """Refuse a length [mm] that is not above zero."""
    if not (is_number(value) and SMALLEST <= value <= LARGEST):
        raise SeatworkError(
            shown(value),
            f"the {name} must be above zero and below {{largest}}",
            f"measure the {name} again and give it as a number",
            largest=Length(LARGEST),
        )


def length_or_zero(value: float, name: str) -> None:
    """Refuse a length [mm] below zero."""
    if not (is_number(value) and 0 <= value <= LARGEST):
        raise SeatworkError(
            shown(value),
            f"the {name} cannot be below zero or above {{largest}}",
            f"measure the {name} again and give it as a number",
            largest=Length(LARGEST),
        )


def signed_length(value: float, name: str) -> None:
    """Refuse a signed length [mm] that is no number or out of all proportion."""
    if not (is_number(value) and -LARGEST <= value <= LARGEST):
        raise SeatworkError(
            shown(value),
            f"the {name} is not a length between -{{largest}} and {{largest}}",
            f"measure the {name} again and give it as a number",
            largest=Length(LARGEST),
        )


def included_angle(value: float, name: str = "included angle") -> None:
    """Refuse an included angle [deg] that makes no cone."""
    if not (is_number(value) and LEAST_ANGLE <= value <= GREATEST_ANGLE):
        raise SeatworkError(
            shown(value, Angle),
            f"the {name} must lie between {{least}} and {{greatest}}",
            "give the whole angle across the cone, such as 82, 90 or 100 degrees",
            least=Angle(LEAST_ANGLE),
            greatest=Angle(GREATEST_ANGLE),
        )


def smaller(small: float, small_name: str, large: float, large_name: str) -> None:
    """Refuse a length [mm] that is not smaller than another."""
    if not small < large:
        raise SeatworkError(
            Length(small),
            f"the {small_name} must be smaller than the {large_name}, {{large}}",
            f"make the {large_name} larger or the {small_name} smaller",
            large=Length(large),
        )


def not_larger(small: float, small_name: str, large: float, large_name: str) -> None:
    """Refuse a length [mm] that is larger than another; equal is allowed."""
    if not small <= large:
        raise SeatworkError(
            Length(small),
            f"the {small_name} cannot be larger than the {large_name}, {{large}}",
            f"make the {large_name} larger or the {small_name} smaller",
            large=Length(large),
        )


def quantity(value: float, name: str, unit: str) -> None:
    """Refuse a force, stress or the like [N, MPa] that is not above zero."""
    if not (is_number(value) and 0 < value <= LARGEST_QUANTITY):
        raise SeatworkError(
            value,
            f"the {name} must be a number above zero, in {unit}",
            f"give the {name} again",
        )


def count(value: int, name: str) -> None:
    """Refuse a count that is no whole number from 1 to ten million."""
    if not (isinstance(value, int) and 1 <= value <= LARGEST_COUNT):
        raise SeatworkError(
            value,
            f"the {name} must be a whole number from 1 to {LARGEST_COUNT:,}",
            "give a smaller or a whole number",
        )
