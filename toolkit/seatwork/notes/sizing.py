"""Quantities of a note turned into sizes: every number goes through the units room."""

import re

from seatwork import units
from seatwork.errors import SeatworkError
from seatwork.notes.callout import NoteError
from seatwork.notes.parsing import Number, Phrase, Quantity
from seatwork.notes.sizes import Size, drill_name

DUAL_MAY_DIFFER = 0.06  # mm; both sides of a dual size are rounded, one of them to .001 in
INCH_MARKS = {"''": '"', "IN.": "in", "MM.": "mm"}


class Sizer:
    """Turns the quantities of one note into sizes.

    Parameters
    ----------
    text : str
        The note as typed, for errors.
    system : {"inch", "metric"}
        What bare numbers are in.
    """

    def __init__(self, text: str, system: str) -> None:
        self.text = text
        self.system = system
        self.differing: list[str] = []

    def size(self, phrase: Phrase) -> Size:
        """Return the size of a phrase.

        Raises
        ------
        NoteError
            At the number that cannot stand.
        """
        if phrase.quantity is None:
            return Size(name=drill_name(phrase.text))
        quantity = phrase.quantity
        if len(set(quantity.bounds)) > 1:
            raise self._fault(quantity.number, "two bounds for one size", "write one of them")
        bound = _bound(quantity, phrase)
        unit = "deg" if quantity.is_angle else self._unit(quantity.number)
        value = self._value(quantity.number, unit)
        self._compare_dual(quantity, value, unit)
        if quantity.tolerance == "one_sided":
            raise self._one_sided(quantity)
        if quantity.tolerance == "limits":
            return self._limits(quantity, value, unit, bound)
        if not value > 0 and phrase.kind != "flush_within":
            raise self._fault(quantity.number, "a size of nothing", "write the size")
        upper, lower = self._deviations(quantity, unit)
        size = Size(value=value, unit=unit, upper=upper, lower=lower, fit=quantity.fit, bound=bound)
        self._check_angle(size, quantity.number)
        return size

    def _one_sided(self, quantity: Quantity) -> NoteError:
        size, over = quantity.number.text, quantity.others[0].text
        ways = (f"{size} +{over}/-0", f"{size} ±{over}")
        error = self._fault(
            quantity.others[0],
            "one side of a tolerance is said: what is the other?",
            f"write {ways[0]} if it is nothing, or {ways[1]} if it is the same",
        )
        error.options = ways
        return error

    def _limits(self, quantity: Quantity, first: float, unit: str, bound: str) -> Size:
        """Return limits, in whichever order they stand."""
        other = quantity.others[0]
        if unit != "deg" and not other.unit:
            other = Number(other.text, quantity.number.unit, other.start, other.end)
        least, greatest = sorted((first, self._value(other, unit)))
        if not least < greatest:
            raise self._fault(
                other,
                "two limits are two sizes",
                "write both, or mark a depth with DP and a tolerance with ±",
            )
        size = Size.limits(least=least, greatest=greatest, unit=unit, bound=bound)
        self._check_angle(size, other)
        return size

    def _deviations(self, quantity: Quantity, unit: str) -> tuple[float | None, float | None]:
        if not quantity.others:
            return None, None
        amounts = [self._value(number, unit) for number in quantity.others]
        if quantity.tolerance == "plus_minus":
            return amounts[0], 0.0 - amounts[0]
        signed = sorted(
            0.0 - amount if number.sign == "-" else amount
            for amount, number in zip(amounts, quantity.others, strict=True)
        )
        return signed[1], signed[0]

    def _check_angle(self, size: Size, number: Number) -> None:
        if size.unit == "deg" and not (size.largest or 0.0) < 180:
            raise self._fault(number, "an included angle is below 180°", "check the angle")

    def _unit(self, number: Number) -> str:
        if number.unit:
            return "mm" if number.unit.startswith("MM") else "in"
        is_fraction = re.search(r"[/½¼¾⅛⅜⅝⅞]", number.text) is not None
        return "in" if is_fraction or self.system == "inch" else "mm"

    def _value(self, number: Number, unit: str) -> float:
        written = f"{number.text} {INCH_MARKS.get(number.unit, number.unit)}".strip()
        try:
            if unit == "deg":
                return units.angle(written)
            return units.length(written, "inch" if unit == "in" else "metric")
        except SeatworkError as error:
            raise self._fault(number, error.fault, error.remedy) from error

    def _compare_dual(self, quantity: Quantity, value: float, unit: str) -> None:
        """Keep a size whose other unit says another size, beyond what either is rounded by."""
        if not quantity.again or unit == "deg":
            return
        other = "metric" if unit == "in" else "inch"
        again = [units.length(f"{number:.9f}", other) for number in quantity.again]
        stated = [value]
        if quantity.tolerance == "limits" and len(again) == 2:
            stated.append(self._value(quantity.others[0], unit))
        may_differ = max(
            DUAL_MAY_DIFFER, units.length(f"{_half_of_last(quantity.dual):.9f}", other)
        )
        pairs = zip(sorted(stated), sorted(again[: len(stated)]), strict=True)
        said = f"{quantity.number.text} {quantity.dual}"
        if any(abs(a - b) > may_differ for a, b in pairs) and said not in self.differing:
            self.differing.append(said)

    def _fault(self, number: Number, fault: str, remedy: str) -> NoteError:
        return NoteError(self.text, start=number.start, end=number.end, fault=fault, remedy=remedy)


def _half_of_last(text: str) -> float:
    """Return half of the last place of the first number of a text; a fraction has none."""
    found = re.search(r"\d*[.,](\d+)|\d+(/?)", text)
    if found is None or found[2]:
        return 0.0
    return 0.5 * 10.0 ** -len(found[1] or "")


def _bound(quantity: Quantity, phrase: Phrase) -> str:
    stated = quantity.bounds[-1] if quantity.bounds else phrase.bound
    return stated or ("ref" if "reference" in phrase.marks else "")
