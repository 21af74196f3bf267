"""Refuse sizes that no part and no cut can have, before a formula meets them.

Every check begins with "is it a number", and every comparison is written so that NaN fails it:
text, None, lists and endless numbers end in the same plain sentence as a size below zero.
"""

from numbers import Real
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.quantities import Angle, Length

SMALLEST, LARGEST = 1e-6, 10_000.0
"""Lengths taken [mm]: from a nanometer, under any surface's roughness, to ten meters."""

SMALLEST_QUANTITY, LARGEST_QUANTITY = 1e-12, 1e18
"""Forces, stresses, speeds and the like taken; outside them a unit was mixed up."""

LARGEST_COUNT = 10_000_000
"""Largest number of things drawn or measured at once; more would fill the memory."""

LEAST_ANGLE, GREATEST_ANGLE = 1.0, 179.0
"""Included angles taken [deg]. Outside them the cone is a taper or a flat, not a seat."""


def is_number(value: object) -> bool:
    """Tell whether `value` is a number a formula can take; text, None, True and 10**400 are not."""
    if type(value) is float:
        return True
    if isinstance(value, bool) or not isinstance(value, Real):
        return False
    try:
        float(value)
    except OverflowError:
        return False
    return True


def between(value: Any, least: float, most: float) -> bool:
    """Tell whether `value` is a number from `least` to `most`."""
    if type(value) is float:
        return least <= value <= most
    return is_number(value) and bool(least <= value <= most)


def shown(value: Any, kind: type[float] = Length) -> object:
    """Give `value` the kind that the reader's units understand, or leave it as it is."""
    return kind(value) if is_number(value) else value


def length(value: float, name: str) -> None:
    """Refuse a length [mm] that is not above zero."""
    if not between(value, SMALLEST, LARGEST):
        _refuse_length(value, f"the {name} must be above zero and below {{largest}}", name)


def length_or_zero(value: float, name: str) -> None:
    """Refuse a length [mm] below zero."""
    if not between(value, 0, LARGEST):
        _refuse_length(value, f"the {name} cannot be below zero or above {{largest}}", name)


def signed_length(value: float, name: str) -> None:
    """Refuse a signed length [mm] that is no number or out of all proportion."""
    if not between(value, -LARGEST, LARGEST):
        fault = f"the {name} is not a length between -{{largest}} and {{largest}}"
        _refuse_length(value, fault, name)


def _refuse_length(value: object, fault: str, name: str) -> None:
    remedy = f"measure the {name} again and give it as a number"
    raise SeatworkError(shown(value), fault, remedy, largest=Length(LARGEST))


def included_angle(value: float, name: str = "included angle") -> None:
    """Refuse an included angle [deg] that makes no cone."""
    if type(value) is float and LEAST_ANGLE <= value <= GREATEST_ANGLE:
        return
    if not between(value, LEAST_ANGLE, GREATEST_ANGLE):
        raise SeatworkError(
            shown(value, Angle),
            f"the {name} must lie between {{least}} and {{greatest}}",
            "give the whole angle across the cone, such as 82, 90 or 100 degrees",
            least=Angle(LEAST_ANGLE),
            greatest=Angle(GREATEST_ANGLE),
        )


def cutter_angle(value: float) -> None:
    """Refuse an included angle [deg] no cutter can have; 180 cuts on its face, a counterbore."""
    if not between(value, SMALLEST, 180):
        raise SeatworkError(
            shown(value, Angle),
            "the included angle of a cutter lies above 0° and goes up to 180°",
            "give the full angle between opposite lips",
        )


def smaller(small: float, small_name: str, large: float, large_name: str) -> None:
    """Refuse a length [mm] that is not smaller than another."""
    if not (is_number(small) and is_number(large) and small < large):
        raise SeatworkError(
            shown(small),
            f"the {small_name} must be smaller than the {large_name}, {{large}}",
            f"make the {large_name} larger or the {small_name} smaller",
            large=shown(large),
        )


def not_larger(small: float, small_name: str, large: float, large_name: str) -> None:
    """Refuse a length [mm] that is larger than another; equal is allowed."""
    if not (is_number(small) and is_number(large) and small <= large):
        raise SeatworkError(
            shown(small),
            f"the {small_name} cannot be larger than the {large_name}, {{large}}",
            f"make the {large_name} larger or the {small_name} smaller",
            large=shown(large),
        )


def cone_of_cut(diameter: float, hole_diameter: float) -> None:
    """Refuse a cut [mm] that is not wider than the hole [mm] it starts from."""
    length(diameter, "cutting diameter")
    length_or_zero(hole_diameter, "hole diameter")
    if not hole_diameter < diameter:
        raise SeatworkError(
            Length(diameter),
            "the cut is not wider than the hole, {hole}",
            "make the cut wider or the hole smaller",
            hole=Length(hole_diameter),
        )


def quantity(value: float, name: str, unit: str = "") -> None:
    """Refuse a force, speed, stress or the like [in `unit`] that is not above zero."""
    if not between(value, SMALLEST_QUANTITY, LARGEST_QUANTITY):
        unit = f", in {unit}" if unit else ""
        raise SeatworkError(value, f"the {name} must be a number above zero{unit}", _again(name))


def not_below(value: float, least: float, name: str, unit: str = "") -> None:
    """Refuse a value [in `unit`] under `least`, or one that is not a finite number."""
    if not between(value, least, LARGEST_QUANTITY):
        unit = f" {unit}" if unit else ""
        fault = f"the {name} must be a number, {least:g}{unit} or more"
        raise SeatworkError(value, fault, _again(name))


def _again(name: str) -> str:
    return f"give the {name} again, within reason"


def not_too_many(amount: float, most: int, what: str) -> None:
    """Refuse work [number of `what`] that would fill the memory, or take an hour."""
    if not between(amount, 0, most):
        text = f"{amount:,.0f} {what}" if is_number(amount) else what
        raise SeatworkError(text, f"that is more than {most:,} {what}", "ask for less at once")


def frequency(value: float) -> None:
    """Refuse a chatter frequency [Hz], its sign aside, that nothing in a shop has."""
    if not (between(value, -1e6, 1e6) and value):
        raise SeatworkError(value, "nothing in a shop sounds so", "give a frequency up to 1 MHz")


def flutes(value: int) -> None:
    """Refuse a number of flutes that is not a whole number from 1 to 100."""
    if not (between(value, 1, 100) and value == int(value)):
        raise SeatworkError(
            value, "a cutter has a whole number of flutes, 1 to 100", "give 1 or more"
        )


def count(value: int, name: str) -> None:
    """Refuse a count that is no whole number from 1 to ten million."""
    if isinstance(value, bool) or not (isinstance(value, int) and 1 <= value <= LARGEST_COUNT):
        raise SeatworkError(
            value,
            f"the {name} must be a whole number from 1 to {LARGEST_COUNT:,}",
            "give a smaller or a whole number",
        )
