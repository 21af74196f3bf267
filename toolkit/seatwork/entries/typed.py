"""A learner's number as typed: its exact decimal value and how finely it was written."""

import re
from dataclasses import dataclass
from decimal import Decimal

from seatwork.entries.measures import Measure
from seatwork.units.showing import system_named

# A plain decimal with or without a unit: what nearly every answer is. Everything else,
# fractions and decimal commas among it, goes to the reader of shop text.
PLAIN = re.compile(r"(\d{0,7}\.?(\d{0,9})) ?([a-zA-Z°\"./]{0,12})", re.ASCII)
DECIMALS = re.compile(r"[.,](\d+)", re.ASCII)
FRACTION_PLACE = Decimal("0.001")  # an inch fraction is looked up or worked to thousandths


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
    """

    value: Decimal
    place: Decimal
    unit_said: bool

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
    plain = PLAIN.fullmatch(text.strip(" "))
    if plain and plain[1] not in ("", "."):
        number, decimals, unit = plain.groups()
        if not unit:
            return Typed(Decimal(number), _place(decimals), False)
        size = measure.spellings.get(unit if unit in measure.spellings else unit.lower())
        if size is not None:
            factor = size / measure.scale[system]
            return Typed(Decimal(number) * factor, _place(decimals) * factor, True)
    return _read_slowly(text, measure, system)


def _place(decimals: str) -> Decimal:
    return Decimal(1).scaleb(-len(decimals))


def _read_slowly(text: str, measure: Measure, system: str) -> Typed:
    value = measure.amount(measure.read(text, system), system)
    unit_said = any(sign.isalpha() or sign in '"°%' for sign in text)
    if "/" in text and measure.name == "length":
        return Typed(value, FRACTION_PLACE * 25 if system == "metric" else FRACTION_PLACE, True)
    found = DECIMALS.search(text)
    place = _place(found[1] if found else "")
    bare = Decimal(re.sub(r"[^\d.]", "", text.replace(",", ".")).strip(".") or "1")
    factor = value / bare if unit_said and bare else Decimal(1)
    return Typed(value, place * factor, unit_said)
