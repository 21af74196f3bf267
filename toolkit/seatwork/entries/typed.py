"""A learner's number as typed: its exact decimal value and how finely it was written."""

import re
from dataclasses import dataclass, replace
from decimal import Decimal

from seatwork.entries.measures import Measure
from seatwork.entries.spelled import spelled
from seatwork.errors import SeatworkError
from seatwork.units.reading import VULGAR
from seatwork.units.showing import system_named

# A plain decimal with or without a unit: what nearly every answer is. Everything else,
# fractions and decimal commas among it, goes to the reader of shop text.
PLAIN = re.compile(r"(\d{0,7}\.?(\d{0,9})) ?([a-zA-Z°\"./]{0,12})", re.ASCII)
DECIMALS = re.compile(r"[.,](\d+)", re.ASCII)
FRACTIONS = ("/", *VULGAR)
FRACTION_PLACE = Decimal("0.001")  # an inch fraction is looked up or worked to thousandths
MOST = Decimal(10) ** 9
"""No size, angle, speed or count is so large, in any unit asked for."""


@dataclass(frozen=True, slots=True)
class Typed:
    """A number as typed.

    Parameters
    ----------
    value : Decimal
        The value in the unit asked for.
    place : Decimal
        One unit in the last place typed, in the unit asked for.
    unit_said : bool
        Whether a unit was typed with it.
    is_fraction : bool
        Whether it was typed as a fraction.
    said : {"", "proud", "below", "deep", "wide"}
        What a word beside it says of it.
    """

    value: Decimal
    place: Decimal
    unit_said: bool
    is_fraction: bool = False
    said: str = ""

    def __repr__(self) -> str:
        said = "with a unit" if self.unit_said else "without a unit"
        return f"<Typed {self.value}, to {self.place}, {said}>"


def read(text: str, measure: Measure, system: str) -> Typed:
    """Read what a learner typed for a number asked for in the unit of `system`.

    Raises
    ------
    SeatworkError
        If the text is no such number, or the system is none; the sentence says what would do.

    Examples
    --------
    >>> from seatwork.entries.measures import LENGTH
    >>> read(".139 in", LENGTH, "inch").value, read("12.7 mm", LENGTH, "inch").value
    (Decimal('0.139'), Decimal('0.5'))
    """
    system_named(system)
    typed = _read_plainly(text.strip(" "), measure, system)
    if typed:
        return typed
    plain, said = spelled(text, system, is_length=measure.name == "length")
    try:
        typed = _read_plainly(plain, measure, system) or _read_slowly(plain, measure, system)
    except SeatworkError as error:
        raise error.of(text.strip()) from error
    return replace(typed, said=said)


def _read_plainly(text: str, measure: Measure, system: str) -> Typed | None:
    """Read a plain decimal with or without a unit; None for anything else."""
    plain = PLAIN.fullmatch(text)
    if not plain or plain[1] in ("", "."):
        return None
    number, decimals, unit = plain.groups()
    if not unit:
        return Typed(Decimal(number), _place(decimals), False)
    size = measure.spellings.get(unit if unit in measure.spellings else unit.lower())
    if size is None:
        return None
    factor = size / measure.scale[system]
    return Typed(Decimal(number) * factor, _place(decimals) * factor, True)


def _place(decimals: str) -> Decimal:
    return Decimal(1).scaleb(-len(decimals))


def _read_slowly(text: str, measure: Measure, system: str) -> Typed:
    value = measure.amount(measure.read(text, system), system)
    if abs(value) >= MOST:
        raise SeatworkError(text, "that is too large for any answer here", "write fewer digits")
    unit_said = any(sign.isalpha() or sign in '"°%' for sign in text)
    if measure.name == "length" and any(sign in text for sign in FRACTIONS):
        place = FRACTION_PLACE * 25 if system == "metric" else FRACTION_PLACE
        return Typed(value, place, True, is_fraction=True)
    found = DECIMALS.search(text)
    place = _place(found[1] if found else "")
    bare = Decimal(re.sub(r"[^\d.]", "", text.replace(",", ".")).rstrip(".") or "1")
    factor = value / bare if unit_said and bare else Decimal(1)
    return Typed(value, place * factor, unit_said)
