"""Values of house rules: read from shop text, held to their limits, shown to people."""

import re
from collections.abc import Callable
from decimal import Decimal
from typing import Any

from seatwork import units
from seatwork.errors import SeatworkError

WANTED = {
    "length": "a length with its unit, such as 0.015 in or 0.4 mm",
    "angle": "an angle, such as 82°",
    "speed": "a spindle speed, such as 300 rev/min",
    "ratio": "a ratio, such as 1/2 or 0.8",
    "count": "a whole number, such as 3",
}


def read_value(value: object, facts: dict[str, Any], place: str) -> float | str:
    """Read the value of a rule.

    Parameters
    ----------
    value : object
        What the file holds: text, or a bare number where the rule has no unit.
    facts : dict
        Kind, and least and greatest or choices, of the rule.
    place : str
        File and line, for errors.

    Returns
    -------
    float or str
        Length [mm], angle [deg], speed [rev/min], ratio or count; a word for a choice.

    Raises
    ------
    SeatworkError
        For a wrong unit, a value out of range or a word that is no choice.
    """
    if isinstance(value, bool) or not isinstance(value, str | int | float):
        raise SeatworkError(place, "the value is not text", f"write {_wanted(facts)}")
    text = str(value).strip()
    if facts["kind"] == "choice":
        return _choice(text, facts, place)
    found = _number(text, facts, place)
    least, greatest = (_number(facts[key], facts, place) for key in ("least", "greatest"))
    if not least <= found <= greatest:
        raise SeatworkError(
            place,
            f"{text} is out of range",
            f"write a value from {facts['least']} to {facts['greatest']}",
        )
    return found


def show_value(kind: str, value: float | str, text: str) -> str:
    """Return a value for people, a length in both unit systems."""
    if isinstance(value, str):
        return value
    shown: dict[str, Callable[[float], str]] = {
        "length": units.show_both,
        "angle": units.show_angle,
        "speed": units.show_spindle,
    }
    return shown[kind](value) if kind in shown else text


def _choice(text: str, facts: dict[str, Any], place: str) -> str:
    for choice in facts["choices"]:
        if text.casefold() == choice.casefold():
            return str(choice)
    raise SeatworkError(place, f"{text!r} is no choice here", f"write {_wanted(facts)}")


def _number(text: str, facts: dict[str, Any], place: str) -> float:
    readers: dict[str, Callable[[str], float]] = {
        "length": units.length,
        "angle": units.angle,
        "speed": _speed,
        "ratio": _ratio,
        "count": _count,
    }
    try:
        return readers[facts["kind"]](text)
    except (SeatworkError, ValueError, ArithmeticError) as error:
        fault = error.fault if isinstance(error, SeatworkError) else "it is no such value"
        raise SeatworkError(
            place, f"{text!r} cannot stand ({fault})", f"write {_wanted(facts)}"
        ) from error


def _speed(text: str) -> float:
    found = re.fullmatch(r"(\d+(?:\.\d+)?)\s*(?:rev/min|rpm|r/min)", text, re.IGNORECASE)
    if not found:
        raise SeatworkError(text, "a spindle speed is in rev/min", WANTED["speed"])
    return float(found[1])


def _ratio(text: str) -> float:
    found = re.fullmatch(r"(\d{1,4})/(\d{1,4})", text)
    if found:
        return float(Decimal(found[1]) / Decimal(found[2]))
    return float(units.number(text))


def _count(text: str) -> float:
    if not re.fullmatch(r"\d{1,3}", text):
        raise SeatworkError(text, "that is no whole number", WANTED["count"])
    return float(text)


def _wanted(facts: dict[str, Any]) -> str:
    if facts["kind"] == "choice":
        return " or ".join(facts["choices"])
    return WANTED[facts["kind"]]
