"""One size said twice: ``#7 (.201)``, ``17/64 (.266)``, ``.201 (#7)``."""

import re
from dataclasses import replace
from decimal import Decimal
from functools import cache

from seatwork import hardware, units
from seatwork.errors import SeatworkError
from seatwork.notes.parsing import Phrase
from seatwork.notes.sizes import drill_name

FINE = 9  # decimal places of an inch that sizes are held against each other in
NEAR = 0.1  # share; a size in brackets so near in the other unit is meant to be the same
BESIDE = ("PROCESS", "HOLE", "DIA")
"""Words that may stand between a size and the bracket that says it again."""

UNDER = ("THICKNESS", "LEAVE", "FILLET")
"""Words that make of a size in brackets one to be kept, and no reference."""

FRACTION = re.compile(r"[/½¼¾⅛⅜⅝⅞]")


def repeated_in_brackets(phrases: list[Phrase]) -> list[Phrase]:
    """Return the phrases, a size in brackets hung on the one it repeats or marked a reference.

    Parameters
    ----------
    phrases : list of Phrase
        As parsed.
    """
    kept: list[Phrase] = []
    place = 0
    while place < len(phrases):
        closing = _closing(phrases, place)
        inner = phrases[place + 1 : closing]
        size = _only_size(inner) if closing else None
        before = _before(kept)
        if size is not None and before is not None and _is_pair(before, size, inner):
            before.also = size
            place = closing + 1
            continue
        if size is not None and not any(one.kind in UNDER for one in inner):
            size.marks.add("reference")
        kept.append(phrases[place])
        place += 1
    return kept


def with_both_units(phrases: list[Phrase]) -> list[Phrase]:
    """Return the phrases, the bracket of ``.281 (7.1)`` taken for the size in the other unit.

    Parameters
    ----------
    phrases : list of Phrase
        As parsed; a size said twice takes the second one as its dual.
    """
    kept: list[Phrase] = []
    place = 0
    while place < len(phrases):
        closing = _closing(phrases, place)
        size = _only_size(phrases[place + 1 : closing]) if closing else None
        before = _before(kept)
        if size is not None and before is not None and _is_in_other_unit(before, size):
            assert before.quantity is not None
            assert size.quantity is not None
            before.quantity = replace(before.quantity, dual=f"({size.quantity.number.text})")
            place = closing
        else:
            kept.append(phrases[place])
        place += 1
    return kept


def repeats(first: Phrase, second: Phrase) -> bool:
    """Tell whether a decimal right behind a drill's name is that drill's size."""
    if first.kind != "drill_name" or first.also or second.kind not in ("plain", "diameter"):
        return False
    return _is_decimal(second) and agree(first, second)


def agree(first: Phrase, second: Phrase) -> bool:
    """Tell whether two ways to say a size agree to the places of the decimal among them."""
    sizes = [_inches(first), _inches(second)]
    places = max(_places(first), _places(second))
    if None in sizes or not places:
        return sizes[0] == sizes[1]
    apart = abs(sizes[0] - sizes[1])  # type: ignore[operator]
    return bool(apart <= Decimal(5).scaleb(-places - 1))


def shown(phrase: Phrase) -> str:
    """Return a size as a note writes it."""
    return drill_name(phrase.text) if phrase.quantity is None else phrase.quantity.number.text


def _closing(phrases: list[Phrase], place: int) -> int:
    """Return where the bracket that opens at a place closes, or 0."""
    if phrases[place].kind != "LEFT":
        return 0
    later = range(place + 1, min(place + 6, len(phrases)))
    return next((at for at in later if phrases[at].kind == "RIGHT"), 0)


def _only_size(inner: list[Phrase]) -> Phrase | None:
    sizes = [one for one in inner if one.kind in ("plain", "diameter", "depth", "drill_name")]
    return sizes[0] if len(sizes) == 1 and not sizes[0].is_angle else None


def _before(kept: list[Phrase]) -> Phrase | None:
    """Return the size that a bracket may repeat."""
    for phrase in reversed(kept[-3:]):
        if phrase.kind not in BESIDE:
            return phrase if phrase.kind in ("plain", "diameter", "drill_name") else None
    return None


def _is_pair(before: Phrase, size: Phrase, inner: list[Phrase]) -> bool:
    """Tell whether one of two sizes is a drill's name or a fraction, the other its decimal."""
    is_reference = any(one.kind in ("DEEP", "BOUND") for one in inner) or size.kind == "depth"
    if is_reference or (size.quantity and size.quantity.bounds) or before.is_angle:
        return False
    return (_is_name(before) and _is_decimal(size)) or (_is_decimal(before) and _is_name(size))


def _is_in_other_unit(before: Phrase, size: Phrase) -> bool:
    """Tell whether ``.281 (7.1)`` is one size, in inches and in millimeters."""
    first, second = before.quantity, size.quantity
    if first is None or second is None or first.dual or before.is_angle:
        return False
    if size.kind != "plain" or second.tolerance or second.bounds or second.number.unit:
        return False
    numbers = first.number.text, second.number.text
    for systems in (("metric", "inch"), ("inch", "metric")):
        if any(FRACTION.search(n) and s == "metric" for n, s in zip(numbers, systems, strict=True)):
            continue
        try:
            one, other = (units.length(n, s) for n, s in zip(numbers, systems, strict=True))
        except SeatworkError:
            return False
        if abs(one - other) <= NEAR * one:
            return True
    return False


def _is_name(phrase: Phrase) -> bool:
    if phrase.kind == "drill_name":
        return True
    return phrase.quantity is not None and FRACTION.search(phrase.quantity.number.text) is not None


def _is_decimal(phrase: Phrase) -> bool:
    quantity = phrase.quantity
    if quantity is None or quantity.tolerance or quantity.number.unit not in ("", "IN", '"', "IN."):
        return False
    return re.fullmatch(r"\d*\.\d+", quantity.number.text) is not None


def _places(phrase: Phrase) -> int:
    if phrase.quantity is None or FRACTION.search(phrase.quantity.number.text):
        return 0
    return len(phrase.quantity.number.text.partition(".")[2])


def _inches(phrase: Phrase) -> Decimal | None:
    """Return a size's inches; None for a drill that no list has."""
    try:
        if phrase.quantity is None:
            return _drill_inches(drill_name(phrase.text))
        mm = units.length(f"{phrase.quantity.number.text} in")
    except SeatworkError:
        return None
    return units.rounded_length(mm, "inch", FINE)


@cache
def _drill_inches(name: str) -> Decimal:
    return units.rounded_length(hardware.drill(name).diameter, "inch", FINE)


def true_size(name: Phrase) -> str:
    """Return what a drill's name or a fraction is in inches, as notes write it."""
    inches = _inches(name)
    if inches is None:
        return "no drill of the lists"
    text = f"{inches.quantize(Decimal('.0001')):f}".rstrip("0")
    return text.removeprefix("0").ljust(4, "0")


def threads_of(size: str) -> tuple[str, ...]:
    """Return the coarse and the fine thread of a size: ``1/4-20`` and ``1/4-28``."""
    found = []
    for series in ("UNC", "UNF"):
        try:
            found.append(hardware.thread(f"{size} {series}").name)
        except SeatworkError:
            continue
    return tuple(dict.fromkeys(found))
