"""What a question type still lacks, said in plain sentences to whoever writes one."""

import re
from collections.abc import Iterator
from random import Random

from seatwork.errors import SeatworkError
from seatwork.questions.type.parts import NumberPart
from seatwork.questions.type.question import Question, too_close
from seatwork.questions.type.verdicts import judge

DRAWS = 100
SYSTEMS = ("inch", "metric")
FORMULA = re.compile(r"[=×÷√*]| [/+−-] \S|\d\s*/\s*\S")
MOST_DRAWS = 10_000
SHORTEST_REASON = 20
OTHER_UNIT = {"inch": re.compile(r"\d mm\b"), "metric": re.compile(r"\d in\b")}


def lacks(kind: type[Question], draws: int = DRAWS) -> tuple[str, ...]:
    """Return what a question type lacks; nothing if it keeps the contract.

    Parameters
    ----------
    kind : type
        The question type.
    draws : int
        How many questions are drawn and looked at, each in both unit systems.
    """
    if not 1 <= draws <= MOST_DRAWS:
        raise SeatworkError(draws, f"draws go from 1 to {MOST_DRAWS:,}", f"take {DRAWS}")
    said = list(_said(kind))
    if said:
        return tuple(said)
    try:
        questions = [kind.draw(Random(state)) for state in range(draws)]
    except SeatworkError as error:
        return (str(error),)
    if questions[0] != kind.draw(Random(0)):
        said.append("the same state of the generator gives another question")
    for question in questions:
        for system in SYSTEMS:
            said.extend(_faults(question.stated_in(system)))
    return tuple(dict.fromkeys(said))


def _said(kind: type[Question]) -> Iterator[str]:
    """Look at what a type says of itself."""
    for name in ("id", "goal", "difficulty", "sizes", "hints"):
        if not hasattr(kind, name):
            yield f"{name} is missing"
    if not getattr(kind, "goal", ".").strip().endswith("."):
        yield "the goal is no sentence"
    if getattr(kind, "difficulty", 1) not in (1, 2, 3):
        yield "the difficulty is not 1, 2 or 3"
    hints = getattr(kind, "hints", ("", ""))
    if len(hints) < 2:
        yield "the hints are not in steps; give two or more"
    for hint in hints:
        if FORMULA.search(hint):
            yield f"a hint holds a formula: {hint}"


def _faults(question: Question) -> Iterator[str]:
    """Look at one question as it is read and answered."""
    text = question.ask()
    for name in question.sizes:
        if question.said(name) not in text:
            yield f"the size {name} is not stated in the question"
    if OTHER_UNIT[question.system].search(text):
        yield f"a question in {question.system} units states a size in the other unit"
    if "None" in text or "nan" in text:
        yield "a size is missing in the question"
    worked = question.worked()
    if not worked.strip():
        yield "the worked answer is empty"
    for part in question.parts:
        if isinstance(part, NumberPart):
            yield from _number_faults(part)
            if worked.strip() and not any(number in worked for number in _written(part)):
                yield "the worked answer does not come to the answer"
        elif not judge(part, str(part.answer)).is_right:
            yield "the right option is not marked right"


def _written(part: NumberPart) -> Iterator[str]:
    """Give the answer as a working may write it: in full, as shown, or as notes do."""
    yield f"{part.rounded:f}".lstrip("0")
    yield part.measure.show(part.value, part.system)
    yield f"{part.rounded.normalize():f}".lstrip("0")


def _number_faults(part: NumberPart) -> Iterator[str]:
    if len(part.reason) < SHORTEST_REASON:
        yield "the tolerance has no reason"
    if not part.tolerance > 0:
        yield "the tolerance is not above zero"
    elif not judge(part, f"{part.rounded:f}").is_right:
        yield "the answer, rounded as asked, is not marked right"
    for slip in part.slips:
        if not slip.sentence:
            yield f"the slip {slip.code} has no sentence"
    for first, second in too_close(part):
        yield f"{first} and {second} are closer than three tolerances"
