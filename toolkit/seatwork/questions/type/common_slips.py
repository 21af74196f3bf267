"""The slips that every question with a number knows, made from its steps and its own numbers.

A number of the question written back, a step of the working taken for the answer, the angle of
another standard: a type says none of them itself. Where one of them gives the same number as a
slip of the type by another way, both are told and the learner says which it was.
"""

import re
from collections.abc import Callable, Iterator, Sequence
from decimal import Decimal
from functools import partial
from itertools import permutations
from math import isclose
from typing import Any, NamedTuple

from seatwork.entries.measures import ANGLE
from seatwork.entries.typed import Typed
from seatwork.errors import SeatworkError
from seatwork.questions.type.parts import CLEAR, NumberPart
from seatwork.questions.type.size_words import size_words
from seatwork.questions.type.slips import Slip, framed
from seatwork.questions.type.working import WorkedStep

STANDARD_ANGLES = (60.0, 82.0, 90.0, 100.0, 120.0)
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


def common_slips(question: Any, part: NumberPart, typed: Typed | None = None) -> tuple[Slip, ...]:
    """Return the slips that the engine names for one number of a question.

    Parameters
    ----------
    question : Question
        What is asked.
    part : NumberPart
        The number asked for.
    typed : Typed, optional
        The wrong answer: then only the ways to its number; where a unit was typed, only those
        whose number has that unit.

    Returns
    -------
    tuple of Slip
        Each three tolerances from the answer at least; those of the type itself are not
        among them, nor is what a slip of the type says more closely.
    """
    raw = tuple(question.working())
    ways = (
        *_stopped(question, part, raw),
        *_other_angles(question, part),
        *_copied(question, part, raw, typed),
        *_other_pairs(question, part, raw),
    )
    found: list[Slip] = []
    own = None
    for way in ways:
        if typed and not _is_meant(way, typed, part):
            continue
        if abs(way.value - part.answer) < CLEAR * part.tolerance:
            continue
        own = part.slips if own is None else own
        if not any(_says_the_same(way, other) for other in (*own, *found)):
            found.append(way.slip())
    return tuple(found)


class Way(NamedTuple):
    """One way to a wrong number; its sentence is made when it is told."""

    measure: str
    code: str
    value: Decimal
    told: Callable[[], tuple[str, dict[str, str]]]

    def slip(self) -> Slip:
        """Return the slip with its sentence."""
        frame, words = self.told()
        return framed(self.code, self.value, frame, **words)


def _words(frame: str, **words: str) -> tuple[str, dict[str, str]]:
    """Return a frame with its words."""
    return frame, words


def _is_meant(way: Way, typed: Typed, part: NumberPart) -> bool:
    """Whether a way leads to the number typed, in a unit that may have been typed with it."""
    if abs(way.value - typed.value) > typed.place / 2:
        return False
    return not typed.unit_said or way.measure == part.measure.name


def _says_the_same(way: Way, other: Slip) -> bool:
    """Whether a slip already known is the same thing done; a wrong angle is another thing."""
    assert isinstance(other.value, Decimal)
    return abs(way.value - other.value) <= SAME and "M07" not in (way.code, other.code)


def _leading(part: NumberPart, raw: Sequence[WorkedStep]) -> dict[int, str]:
    """Return the numbers of the steps that lead to a part, each with what is done after it."""
    used = [{int(number) for number in USED.findall(step.sum)} for step in raw]
    ends = [n for n, one in enumerate(raw) if isclose(one.value, part.value, rel_tol=1e-9)]
    needed = set(ends[-1:])
    for number in reversed(range(len(raw))):
        if number in needed:
            needed |= used[number]
    after = {n: [later for later in sorted(needed) if n in used[later]] for n in sorted(needed)}
    return {number: raw[later[0]].next if later else "" for number, later in after.items()}


def _stopped(question: Any, part: NumberPart, raw: Sequence[WorkedStep]) -> Iterator[Way]:
    """Yield the numbers of steps before the last, with what is to be done next."""
    leading = _leading(part, raw)
    for number, how in leading.items():
        if how:
            step = raw[number]
            value = step.measure.amount(step.value, question.system)
            told = partial(_words, STEP, label=step.label, how=how)
            yield Way(step.measure.name, step.code, value, told)


def _other_angles(question: Any, part: NumberPart) -> Iterator[Way]:
    """Yield what each other standard angle gives."""
    right = float(getattr(question, question.counting_angle, 0.0))
    if question.sizes.get("included_angle") is not ANGLE or part.measure is ANGLE:
        return
    values = [one.value for one in question.parts if isinstance(one, NumberPart)]
    if part.value not in values:  # a step of a chain, from a learner's own step before
        return
    place = values.index(part.value)
    for angle in STANDARD_ANGLES:
        try:
            other = question.at_angle(angle)
            parts = other.parts if other else ()
            value = [one for one in parts if isinstance(one, NumberPart)][place].answer
        except (SeatworkError, ArithmeticError, LookupError, ValueError):
            continue
        if angle != right:
            told = partial(_angle_told, angle, right)
            yield Way(part.measure.name, "M07", value, told)


def _angle_told(angle: float, right: float) -> tuple[str, dict[str, str]]:
    """Say which angle was used, and which is right."""
    return OTHER_ANGLE, {"angle": ANGLE.show(angle, "inch"), "right": ANGLE.show(right, "inch")}


def _copied(
    question: Any, part: NumberPart, raw: Sequence[WorkedStep], typed: Typed | None
) -> Iterator[Way]:
    """Yield the numbers of the question, each by the name of its size."""
    for text in dict.fromkeys(NUMBER.findall(NAMES.sub("", question.text()))):
        value = Decimal(text)
        if typed is None or abs(value - typed.value) <= typed.place / 2:
            name = next((one for one in question.sizes if _stated(question, one) == value), "")
            measure = question.sizes[name] if name else part.measure
            yield Way(measure.name, "M57", value, partial(_copy_told, name, part, raw))


def _stated(question: Any, name: str) -> Decimal:
    """Return a size as the question states it, a number without its unit."""
    number: Decimal = question.sizes[name].stated(getattr(question, name), question.system)
    return number


def _copy_told(
    name: str, part: NumberPart, raw: Sequence[WorkedStep]
) -> tuple[str, dict[str, str]]:
    """Say which size was written back, and what was asked for."""
    last = [one.label for one in raw if isclose(one.value, part.value, rel_tol=1e-9)]
    size = size_words(name) if name else "a number of the question"
    return COPIED, {"size": size, "label": last[-1] if last else SOMETHING}


def _other_pairs(question: Any, part: NumberPart, raw: Sequence[WorkedStep]) -> Iterator[Way]:
    """Yield differences of two lengths of the question, and half of them, where one is needed."""
    if part.measure.name != "length" or not any(step.code == "M52" for step in raw):
        return
    lengths = {
        name: _stated(question, name)
        for name, measure in question.sizes.items()
        if measure.name == "length"
    }
    for (wide, more), (narrow, less) in permutations(lengths.items(), 2):
        words = {"wide": size_words(wide), "narrow": size_words(narrow)}
        for share in (1, 2) if more > less else ():
            yield Way("length", "M61", (more - less) / share, partial(_words, PAIR, **words))
