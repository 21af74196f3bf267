"""A bare 82 beside CSK: in a shop it is the angle, though no degree sign stands behind it.

``CSK 82 X 1/2``, ``CSK 1/2 X 82`` and ``CSK 82 TO 1/2`` are one thing, and so is ``CHAM .03 X 45``.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from seatwork.notes.callout import Assumption, NoteError
from seatwork.notes.features import Chamfer, Countersink, Feature
from seatwork.notes.marking import BREAKS, IDLE
from seatwork.notes.parsing import Phrase
from seatwork.notes.sizes import Size
from seatwork.shop import HouseRules

RULE = "note.bare_angle"
ANGLES = ("60", "82", "90", "100", "120")
"""Included angles of countersinks in the trade, in degrees, as they are typed."""
SIDES = ("45",)
"""Angles of a chamfer's side, in degrees, as they are typed behind its leg."""

OWN_MARKS = ("DIA", "DEEP", "BOUND", "THICKNESS", "HOLE")
_CONE = (Countersink, "CSK", "included")
BETWEEN = ("plain", "diameter", "DIA", "BY", "SIDE")
"""What may stand between a countersink's word and the angle behind an X."""


def with_bare_angles(text: str, phrases: list[Phrase], rules: HouseRules) -> tuple[Phrase, ...]:
    """Turn bare angles beside a countersink's or chamfer's word into angles, and return them.

    Parameters
    ----------
    text : str
        The note, for errors.
    phrases : list of Phrase
        As parsed; those that are bare angles are changed, and ``82 TO .5`` becomes two.
    rules : HouseRules
        The house rules in force; `note.bare_angle` may say to ask.

    Raises
    ------
    NoteError
        Where the rule says to ask.
    """
    _part_from_diameters(phrases)
    row = [one for one in phrases if one.kind not in IDLE]
    found = []
    for at, word in enumerate(row):
        bare = None
        if word.kind == "COUNTERSINK":
            bare = _bare(row, at) or _by_x(row, at, ANGLES)
        elif word.kind == "CHAMFER":
            bare = _by_x(row, at, SIDES)
        if bare is None or bare.quantity is None:
            continue
        if rules.word(RULE) == "ask":
            raise _asked(text, bare)
        number = replace(bare.quantity.number, unit="°")
        bare.quantity = replace(bare.quantity, number=number)
        found.append(bare)
    return tuple(found)


def assumed_angles(
    features: Sequence[Feature], bare: Sequence[Phrase], rules: HouseRules
) -> Iterator[Assumption]:
    """Yield what was taken of each bare angle, at the feature that has it."""
    rule = rules[RULE]
    for text in dict.fromkeys(one.quantity.number.text for one in bare if one.quantity):
        kind, word, way = (Chamfer, "CHAM", "a side") if text in SIDES else _CONE
        degrees = float(text) * (2 if text in SIDES else 1)
        at = next((at for at, one in enumerate(features) if _has(one, kind, degrees)), 0)
        yield Assumption(
            feature=at,
            field="angle",
            value=degrees,
            rule=rule.name,
            sentence=f"{word} {text} has no degree sign: taken as {text}° {way}, house rule "
            f"{rule.name} ({rule.source}).",
        )


def _has(feature: Feature, kind: type[Feature], degrees: float) -> bool:
    angle = getattr(feature, "angle", None)
    return isinstance(feature, kind) and isinstance(angle, Size) and angle.value == degrees


def _part_from_diameters(phrases: list[Phrase]) -> None:
    """Part ``CSK 82 TO .5``, parsed as limits, into an angle and a diameter."""
    for at, one in enumerate(phrases):
        quantity = one.quantity
        if quantity is None or quantity.tolerance != "limits" or one.kind != "plain":
            continue
        before = [other for other in phrases[:at] if other.kind not in IDLE]
        if not before or before[-1].kind != "COUNTERSINK" or " TO " not in f" {one.text} ":
            continue
        wide = quantity.others[0]
        first = replace(quantity, tolerance="", others=(), bounds=(), dual="")
        if first.number.text not in ANGLES or first.number.unit or wide.text in ANGLES:
            continue
        phrases[at] = replace(one, end=first.number.end, text=first.number.text, quantity=first)
        rest = replace(quantity, number=wide, tolerance="", others=())
        phrases.insert(at + 1, replace(one, start=wide.start, text=wide.text, quantity=rest))


def _by_x(row: list[Phrase], at: int, angles: tuple[str, ...]) -> Phrase | None:
    """Return the bare angle behind the X of ``CSK 1/2 X 82``, ``.03 X 45 CHAM``."""
    stretch = _stretch(row, at)
    if any(one.is_angle for one in stretch):
        return None
    start, end = at, at + 1
    while start > 0 and row[start - 1] in stretch and row[start - 1].kind in BETWEEN:
        start -= 1
    while end < len(row) and row[end] in stretch and row[end].kind in BETWEEN:
        end += 1
    for place in range(start + 2, end):
        one = row[place]
        marked = place + 1 < len(row) and row[place + 1].kind in OWN_MARKS
        sized = row[place - 2].kind in ("plain", "diameter", "DIA")
        if row[place - 1].kind == "BY" and sized and not marked and _may_be(one, angles):
            return one
    return None


def _bare(row: list[Phrase], at: int) -> Phrase | None:
    """Return the bare angle right behind or before a countersink's word."""
    stretch = _stretch(row, at)
    if any(one.is_angle for one in stretch):
        return None
    for place in (at + 1, at - 1):
        one = row[place] if 0 <= place < len(row) else None
        marked = place + 1 < len(row) and row[place + 1].kind in OWN_MARKS
        if one is not None and one in stretch and not marked and _may_be(one, ANGLES):
            return one
    return None


def _may_be(one: Phrase, angles: tuple[str, ...]) -> bool:
    quantity = one.quantity
    if one.kind != "plain" or quantity is None or quantity.number.text not in angles:
        return False
    plain = not (quantity.tolerance or quantity.dual or quantity.fit or quantity.bounds)
    return plain and not quantity.number.unit


def _stretch(row: list[Phrase], at: int) -> list[Phrase]:
    """Return the phrases around a word, from one separator to the next."""
    start = next((n + 1 for n in range(at, -1, -1) if row[n].kind in BREAKS), 0)
    end = next((n for n in range(at, len(row)) if row[n].kind in BREAKS), len(row))
    return row[start:end]


def _asked(text: str, bare: Phrase) -> NoteError:
    number = bare.quantity.number.text if bare.quantity else ""
    ways = (f"{number}°", f"⌀{number}")
    way = "a side" if number in SIDES else "included"
    return NoteError(
        text,
        start=bare.start,
        end=bare.end,
        fault=f"{number}° {way}, or {number} wide?",
        remedy=f"write {' or '.join(ways)}",
        options=ways,
    )
