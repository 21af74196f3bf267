"""What a question type still lacks, said in plain sentences to whoever writes one."""

from collections.abc import Iterator
from random import Random

from seatwork.errors import SeatworkError
from seatwork.questions.parts import NumberPart
from seatwork.questions.question import Question, too_close
from seatwork.questions.verdicts import judge

DRAWS = 100
FORMULA_SIGNS = set("=×÷√*")


def lacks(kind: type[Question], draws: int = DRAWS) -> tuple[str, ...]:
    """Return what a question type lacks; nothing if it keeps the contract.

    Parameters
    ----------
    kind : type
        The question type.
    draws : int
        How many questions are drawn and looked at.
    """
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
        said.extend(_faults(question))
    return tuple(dict.fromkeys(said))


def _said(kind: type[Question]) -> Iterator[str]:
    for name in ("id", "goal", "difficulty", "sizes", "hints"):
        if not hasattr(kind, name):
            yield f"{name} is missing"
    for hint in getattr(kind, "hints", ()):
        if set(hint) & FORMULA_SIGNS:
            yield f"a hint holds a formula: {hint}"
    accepted = getattr(kind, "accepted", None)
    if accepted is not None and not accepted.reason:
        yield "the tolerance has no reason"


def _faults(question: Question) -> Iterator[str]:
    text = question.ask()
    for name in question.sizes:
        if question.said(name) not in text:
            yield f"the size {name} is not stated in the question"
    if not question.worked().strip():
        yield "the worked answer is empty"
    for part in question.parts:
        if isinstance(part, NumberPart):
            yield from _number_faults(part)
        elif not judge(part, str(part.answer)).is_right:
            yield "the right option is not marked right"


def _number_faults(part: NumberPart) -> Iterator[str]:
    if not part.tolerance > 0:
        yield "the tolerance is not above zero"
    elif not judge(part, f"{part.rounded:f}").is_right:
        yield "the answer, rounded as asked, is not marked right"
    for first, second in too_close(part):
        yield f"{first} and {second} are closer than three tolerances"
