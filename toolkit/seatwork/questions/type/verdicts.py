"""What is said of one answer: right, a known slip, or what else it may be."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from seatwork.entries.letters import NO_ORDER, no_option
from seatwork.entries.typed import Typed, read
from seatwork.errors import SeatworkError, plainly
from seatwork.questions.type.parts import ChoicePart, NumberPart, OrderPart, Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.said_beside import said_otherwise
from seatwork.questions.type.slips import Slip
from seatwork.questions.type.spoiled import is_times, other_unit, spoiled
from seatwork.rows import Blocks, Row, Shown

SURE = 100
"""Least answer, in units of the last place typed, at which a slip is told and not asked about.

Below that one number in ten is some slip's by chance."""


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Verdict(Shown):
    """What is said of one answer.

    Parameters
    ----------
    kind : str
        "right", "own step", "blank", "coarse" (rounded too far), "other unit", "slip",
        "several slips", "asks back" (written to two figures or fewer, so that it may be a
        slip by chance), "wrong" or "unreadable".
    slips : tuple of Slip
        Every way to the number, in the order to tell them: the type's own nearest first.
    fault : str
        For an unreadable answer, the sentence that says why.
    read : str
        What that sentence begins with, where it begins with what was read.
    """

    kind: str
    slips: tuple[Slip, ...] = ()
    fault: str = ""
    read: str = ""

    def _line(self) -> str:
        more = self.fault or (self.slips[0].sentence if self.slips else "")
        return f"{self.kind}: {more}" if more else self.kind

    def _blocks(self) -> Blocks:
        yield "", tuple(Row(label="may be", text=one.sentence) for one in self.slips)

    @property
    def why(self) -> str:
        """What is wrong with an unreadable answer and what would do, without what was read."""
        return self.fault.removeprefix(f"{self.read}: ") if self.read else self.fault

    @property
    def is_right(self) -> bool:
        """Whether the answer is right, or right with the learner's own earlier answers."""
        return self.kind in ("right", "own step")


RIGHT = Verdict(kind="right")
BLANK = Verdict(kind="blank")
WRONG = Verdict(kind="wrong")
OTHER_UNIT = Verdict(kind="other unit")
COARSE = Verdict(kind="coarse")
OWN_STEP = Verdict(kind="own step")


def judge(part: Part, text: str) -> Verdict:
    """Say of an answer, as typed, what it is.

    Parameters
    ----------
    part : NumberPart, ChoicePart or OrderPart
        What was asked.
    text : str
        What the learner typed; it is matched and read, never evaluated.

    Returns
    -------
    Verdict
        Never raises for any text.
    """
    if not text.strip():
        return BLANK
    if isinstance(part, NumberPart):
        return _judge_number(part, text)
    return _judge_choice(part, text) if isinstance(part, ChoicePart) else _judge_order(part, text)


def judge_all(question: Question, typed: Sequence[str]) -> tuple[Verdict, ...]:
    """Say of each part of an answer what it is.

    Parameters
    ----------
    question : Question
        What was asked.
    typed : sequence of str
        What was typed for its parts, in order; what is missing is blank.

    Returns
    -------
    tuple of Verdict
        In a chain, a step that follows from the learner's own earlier steps is right, and a
        slip is looked for with them: a right step, rounded, moves the slips of the next.
    """
    parts = question.parts
    texts = [*typed, *[""] * (len(parts) - len(typed))]
    verdicts = [judge(part, text) for part, text in zip(parts, texts, strict=False)]
    for number, text in enumerate(texts[: len(parts)]):
        if fault := said_otherwise(question, number, texts):
            typed = text.strip()
            verdicts[number] = Verdict(kind="unreadable", fault=f"{typed}: {fault}", read=typed)
    if question.is_chain and not all(verdict.is_right for verdict in verdicts):
        return _followed_through(question, parts, texts, verdicts)
    return tuple(verdicts)


def _followed_through(
    question: Question, parts: tuple[Part, ...], texts: Sequence[str], verdicts: list[Verdict]
) -> tuple[Verdict, ...]:
    values = [_own_value(part, text) for part, text in zip(parts, texts, strict=False)]
    own_parts = question.parts_given(values)
    found = list(verdicts)
    for number in range(1, len(parts)):
        if verdicts[number].kind in ("right", "blank", "unreadable"):
            continue
        own = judge(own_parts[number], texts[number])
        early = all(verdict.kind == "right" for verdict in verdicts[:number])
        if own.slips or own.is_right or not early:
            found[number] = OWN_STEP if own.is_right else own
    return tuple(found)


def _own_value(part: Part, text: str) -> float | None:
    """Return what a learner found in a step, in inside units; None if it cannot be read."""
    if not isinstance(part, NumberPart):
        return None
    try:
        return part.measure.inside(read(text, part.measure, part.system).value, part.system)
    except SeatworkError:
        return None


def _judge_number(part: NumberPart, text: str) -> Verdict:
    try:
        typed = read(text, part.measure, part.system)
    except SeatworkError as error:
        return Verdict(kind="unreadable", fault=str(error), read=plainly(error.value))
    low, high = part.band
    if low <= typed.value <= high:
        return RIGHT
    if part.is_listed:  # 2 is the length 2, not 1.875 rounded
        typed = replace(typed, place=min(typed.place, part.step))
    if typed.place > part.step and _is_rounded(part, typed):
        return COARSE
    slips = _ways(part, typed, text)
    if _right_in_other_unit(part, typed):
        return OTHER_UNIT
    if not slips:
        return WRONG
    if max(typed.value, part.answer) < SURE * typed.place:
        return Verdict(kind="asks back", slips=slips)
    return Verdict(kind="slip" if len(slips) == 1 else "several slips", slips=slips)


def _is_rounded(part: NumberPart, typed: Typed) -> bool:
    """Whether a number typed is the right one, or that one as asked for, rounded again."""
    return min(abs(right - typed.value) for right in (part.answer, part.rounded)) <= typed.place / 2


def _ways(part: NumberPart, typed: Typed, text: str) -> tuple[Slip, ...]:
    """Return every way to a number, the type's own nearest first, then those of the engine."""
    own = part.matching(typed.value, typed.place)
    near = [*part.more(part, typed), *spoiled(part, typed, text)]
    angles = [one for one in near if one.code == "M07"]  # these say which angle it was
    own = tuple(one for one in own if not (angles and one.code == "M07"))
    return (*own, *(one for one in near if one.code not in [other.code for other in own]))


def _right_in_other_unit(part: NumberPart, typed: Typed) -> bool:
    """Whether a number without a unit is the right one in the unit of the other system."""
    return not typed.unit_said and is_times(part, typed, other_unit(part))


def _judge_choice(part: ChoicePart, text: str) -> Verdict:
    word = part.chosen(text)
    if word is None:
        return Verdict(kind="unreadable", fault=no_option(len(part.options)))
    if word == part.right:
        return RIGHT
    slips = tuple(slip for slip in part.slips if slip.value == word)
    return Verdict(kind="slip", slips=slips) if slips else WRONG


def _judge_order(part: OrderPart, text: str) -> Verdict:
    letters = part.chosen(text)
    if letters is None:
        return Verdict(kind="unreadable", fault=NO_ORDER)
    if letters == part.right:
        return RIGHT
    broken = tuple(
        slip
        for slip in part.slips
        if letters.index(str(slip.value)[0]) > letters.index(str(slip.value)[1])
    )
    return Verdict(kind="slip", slips=broken[:1]) if broken else WRONG
