"""A bare 82 beside CSK: in a shop it is the angle, though no degree sign stands behind it."""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from seatwork.notes.callout import Assumption, NoteError
from seatwork.notes.features import Countersink, Feature
from seatwork.notes.marking import BREAKS, IDLE
from seatwork.notes.parsing import Phrase
from seatwork.notes.sizes import Size
from seatwork.shop import HouseRules

RULE = "note.bare_angle"
ANGLES = ("60", "82", "90", "100", "120")
"""Included angles of countersinks in the trade, in degrees, as they are typed."""
OWN_MARKS = ("DIA", "DEEP", "BOUND", "THICKNESS", "HOLE")


def with_bare_angles(text: str, phrases: list[Phrase], rules: HouseRules) -> tuple[Phrase, ...]:
    """Turn bare angles beside a countersink's word into angles, and return them.

    Parameters
    ----------
    text : str
        The note, for errors.
    phrases : list of Phrase
        As parsed; those that are bare angles are changed.
    rules : HouseRules
        The house rules in force; `note.bare_angle` may say to ask.

    Raises
    ------
    NoteError
        Where the rule says to ask.
    """
    row = [one for one in phrases if one.kind not in IDLE]
    found = []
    for at, word in enumerate(row):
        bare = _bare(row, at) if word.kind == "COUNTERSINK" else None
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
        at = next((at for at, one in enumerate(features) if _has(one, float(text))), 0)
        yield Assumption(
            feature=at,
            field="angle",
            value=float(text),
            rule=rule.name,
            sentence=f"CSK {text} has no degree sign: taken as {text}° included, house rule "
            f"{rule.name} ({rule.source}).",
        )


def _has(feature: Feature, degrees: float) -> bool:
    if not isinstance(feature, Countersink) or not isinstance(feature.angle, Size):
        return False
    return feature.angle.value == degrees


def _bare(row: list[Phrase], at: int) -> Phrase | None:
    """Return the bare angle right behind or before a countersink's word."""
    stretch = _stretch(row, at)
    if any(one.is_angle for one in stretch):
        return None
    for place in (at + 1, at - 1):
        one = row[place] if 0 <= place < len(row) else None
        marked = place + 1 < len(row) and row[place + 1].kind in OWN_MARKS
        if one is not None and one in stretch and not marked and _may_be(one):
            return one
    return None


def _may_be(one: Phrase) -> bool:
    quantity = one.quantity
    if one.kind != "plain" or quantity is None or quantity.number.text not in ANGLES:
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
    return NoteError(
        text,
        start=bare.start,
        end=bare.end,
        fault=f"{number}° included, or {number} wide?",
        remedy=f"write {' or '.join(ways)}",
        options=ways,
    )
