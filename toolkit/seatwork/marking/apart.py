"""Questions of one form kept apart: no number printed in one is the answer to another.

A learner who copies a number from the question before would else be told "right". Where a
draw gives such a pair, the later question is drawn again, always in the same way.
"""

import re
from collections.abc import Iterable
from decimal import Decimal

from seatwork.quantities import EXACT_INCH
from seatwork.questions import Question
from seatwork.questions.type.parts import NumberPart

PRINTED = re.compile(
    r"(?<![\w/.#-])(?P<number>\d+/\d+|\d*\.\d+|\d+)(?![\w/.-]*\d)\s?(?P<unit>in\b|mm\b)?"
)


def clash(one: Question, other: Question) -> bool:
    """Tell whether a number printed in one question is an answer of the other, either way.

    Examples
    --------
    >>> from random import Random
    >>> from seatwork.questions import named
    >>> asked = named("seat-depth").draw(Random(1))
    >>> clash(asked, asked)
    False
    """
    return _answers(printed(one), other) or _answers(printed(other), one)


def printed(question: Question) -> frozenset[tuple[Decimal, str]]:
    """Return the numbers in a question's text, each with its unit, "" for one without.

    A fraction without a unit is inches, as it is when it is typed into an answer.
    """
    found = PRINTED.finditer(question.text())
    return frozenset(
        (_value(one["number"]), one["unit"] or ("in" if "/" in one["number"] else ""))
        for one in found
    )


def _value(text: str) -> Decimal:
    top, _, bottom = text.partition("/")
    return Decimal(top) / Decimal(bottom) if bottom.strip("0") else Decimal(top)


def _answers(numbers: Iterable[tuple[Decimal, str]], question: Question) -> bool:
    """Tell whether one of the numbers, copied as it is or with its unit, is accepted."""
    bands = [(part.band, part.unit) for part in question.parts if isinstance(part, NumberPart)]
    return any(
        least <= value <= most
        for (least, most), asked in bands
        for number, unit in numbers
        for value in (number, *_converted(number, unit, asked))
    )


def _converted(number: Decimal, unit: str, asked: str) -> tuple[Decimal, ...]:
    """Return a length in the other unit, where it is asked for in that."""
    if (unit, asked) == ("in", "mm"):
        return (number * EXACT_INCH,)
    return (number / EXACT_INCH,) if (unit, asked) == ("mm", "in") else ()
