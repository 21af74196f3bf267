"""The slips that every question with a number knows, made from its steps and its own numbers.

A number of the question written back, a step of the working taken for the answer, the angle of
another standard: a type says none of them itself. Where one of them gives the same number as a
slip of the type by another way, both are told and the learner says which it was.
"""

import re
from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from itertools import permutations
from math import isclose
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.questions.type.measures import ANGLE
from seatwork.questions.type.parts import CLEAR, NumberPart
from seatwork.questions.type.size_words import size_words
from seatwork.questions.type.slips import Slip, framed
from seatwork.questions.type.working import WorkedStep

STANDARD_ANGLES = (60.0, 82.0, 90.0, 100.0, 110.0, 120.0)
"""Included angles of seats and centers that a learner may have in mind [deg]."""
SAME = Decimal("1e-6")
USED = re.compile(r"\{(\d+)\}")
# Numbers of a text, but for sizes of screws, fractions and names of standards.
NAMES = re.compile(r"#\d+(?:-\d+)?|\b\d+(?:-\d+)?/\d+(?:-\d+)?|\b[A-Z]+\d[\d.]*")
NUMBER = re.compile(r"(?<![\w.])\d*\.?\d+(?!\w)")
STEP = "Good so far: you have {label}. Now {how}."
COPIED = "You wrote back {size}. You were asked for {label}."
OTHER_ANGLE = "You used {angle}. The question says {right}."
PAIR = "You took {narrow} off {wide}. Look again which two belong together here."
SOMETHING = "something else"


def common_slips(question: Any, part: NumberPart, unit_said: bool = False) -> tuple[Slip, ...]:
    """Return the slips that the engine names for one number of a question.

    Parameters
    ----------
    question : Question
        What is asked.
    part : NumberPart
        The number asked for.
    unit_said : bool
        Whether a unit was typed: then only numbers of that unit can have been meant.

    Returns
    -------
    tuple of Slip
        Each three tolerances from the answer at least; those of the type itself are not
        among them, nor is what a slip of the type says more closely.
    """
    own = part.slips
    steps = tuple(_leading(question, part))
    label = steps[-1][0].label if steps else SOMETHING
    found: list[Slip] = []
    for measure, one in (
        *_stopped(steps, part.system),
        *_other_angles(question, part),
        *_copied(question, part, label),
        *_other_pairs(question, part, steps),
    ):
        if unit_said and measure != part.measure.name:
            continue
        near = abs(_number(one) - part.answer) < CLEAR * part.tolerance
        if not near and not any(_says_the_same(one, other) for other in (*own, *found)):
            found.append(one)
    return tuple(found)


def _number(one: Slip) -> Decimal:
    assert isinstance(one.value, Decimal)
    return one.value


def _says_the_same(one: Slip, other: Slip) -> bool:
    """Whether a slip already known is the same thing done; a wrong angle is another thing."""
    apart = abs(_number(one) - _number(other)) > SAME
    return not apart and "M07" not in (one.code, other.code)


def _leading(question: Any, part: NumberPart) -> Iterator[tuple[WorkedStep, str]]:
    """Yield the steps that lead to a number, each with what is done after it."""
    raw, filled = tuple(question.working()), question.worked_steps()
    used = [{int(number) for number in USED.findall(step.sum)} for step in raw]
    ends = [n for n, one in enumerate(raw) if isclose(one.value, part.value, rel_tol=1e-9)]
    needed = set(ends[-1:])
    for number in reversed(range(len(raw))):
        if number in needed:
            needed |= used[number]
    for number in sorted(needed):
        after = [later for later in sorted(needed) if number in used[later]]
        yield filled[number], raw[after[0]].next if after else ""


def _stopped(steps: tuple[tuple[WorkedStep, str], ...], system: str) -> Iterator[tuple[str, Slip]]:
    """Yield the numbers of steps before the last, with what is to be done next."""
    for step, after in steps[:-1]:
        value = step.measure.amount(step.value, system)
        yield step.measure.name, framed(step.code, value, STEP, label=step.label, how=after)


def _other_angles(question: Any, part: NumberPart) -> Iterator[tuple[str, Slip]]:
    """Yield what each other standard angle gives."""
    right = getattr(question, "included_angle", None)
    if right is None or question.sizes.get("included_angle") is not ANGLE:
        return
    values = [one.value for one in question.parts if isinstance(one, NumberPart)]
    if part.value not in values:  # a step of a chain, from a learner's own step before
        return
    place = values.index(part.value)
    for angle in STANDARD_ANGLES:
        try:
            parts = replace(question, included_angle=angle).parts
            value = [one for one in parts if isinstance(one, NumberPart)][place].answer
        except (SeatworkError, ArithmeticError, ValueError):
            continue
        if angle != right:
            shown = ANGLE.show(angle, part.system), ANGLE.show(right, part.system)
            yield (
                part.measure.name,
                framed("M07", value, OTHER_ANGLE, angle=shown[0], right=shown[1]),
            )


def _copied(question: Any, part: NumberPart, label: str) -> Iterator[tuple[str, Slip]]:
    """Yield the numbers of the question, each by the name of its size."""
    sizes = {
        measure.stated(getattr(question, name), question.system): (measure.name, size_words(name))
        for name, measure in question.sizes.items()
    }
    for text in dict.fromkeys(NUMBER.findall(NAMES.sub("", question.text()))):
        measure, size = sizes.get(Decimal(text), (part.measure.name, "a number of the question"))
        yield measure, framed("M57", Decimal(text), COPIED, size=size, label=label)


def _other_pairs(
    question: Any, part: NumberPart, steps: tuple[tuple[WorkedStep, str], ...]
) -> Iterator[tuple[str, Slip]]:
    """Yield differences of two lengths of the question, and half of them, where one is needed."""
    if not any(step.code == "M52" for step, _ in steps):
        return
    lengths = {
        size_words(name): measure.stated(getattr(question, name), question.system)
        for name, measure in question.sizes.items()
        if measure.name == "length"
    }
    for (wide, more), (narrow, less) in permutations(lengths.items(), 2):
        for share in (1, 2) if more > less else ():
            value = (more - less) / share
            yield "length", framed("M61", value, PAIR, wide=wide, narrow=narrow)
