"""Refuse sizes no cut can have, each in one plain sentence."""

from collections.abc import Callable
from math import inf

from seatwork.errors import Angle, Length, SeatworkError


def positive(value: float, name: str, unit: str = "") -> None:
    """Refuse a value that is not a number above zero.

    Parameters
    ----------
    value : float
        What was given, in the unit named by `unit` [any].
    name : str
        What the value is called in the shop.
    unit : str
        Unit shown behind the value; ``"mm"`` makes it a length.

    Raises
    ------
    SeatworkError
        If `value` is zero, below zero, endless or not a number.
    """
    if not 0 < value < inf:
        raise SeatworkError(
            _shown(value, unit), f"the {name} is not above zero", f"give a {name} above zero"
        )


def not_below(value: float, least: float, name: str, unit: str = "") -> None:
    """Refuse a value under `least`, or one that is not a finite number.

    Raises
    ------
    SeatworkError
        If `value` is below `least`, endless or not a number.
    """
    if not least <= value < inf:
        raise SeatworkError(
            _shown(value, unit),
            f"the {name} is less than {least:g}",
            f"give a {name} of {least:g} or more",
        )


def cutter_angle(value: float) -> None:
    """Refuse an included angle that is not above 0 and at most 180 degrees.

    Raises
    ------
    SeatworkError
        If no cutter can have that angle; 180 is a counterbore, cutting on its face.
    """
    if not 0 < value <= 180:
        raise SeatworkError(
            Angle(value),
            "the included angle of a cutter lies above 0° and goes up to 180°",
            "give the full angle between opposite lips",
        )


def cone_of_cut(diameter: float, hole_diameter: float) -> None:
    """Refuse a cut that is not wider than the hole it starts from.

    Raises
    ------
    SeatworkError
        If the sizes leave nothing to cut.
    """
    positive(diameter, "cutting diameter", "mm")
    if not 0 <= hole_diameter < diameter:
        raise SeatworkError(
            Length(diameter),
            "the cut is not wider than the hole, {hole}",
            "make the cut wider or the hole smaller",
            hole=Length(hole_diameter),
        )


def _shown(value: float, unit: str) -> object:
    wrap: dict[str, Callable[[float], object]] = {"mm": Length, "deg": Angle}
    return wrap[unit](value) if unit in wrap else f"{value:g} {unit}".strip()
