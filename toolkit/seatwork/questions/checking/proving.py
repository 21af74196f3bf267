"""Whether a type agrees with its proof: right answers and slips worked out a second time.

A proof, ``tests/questions/proofs/NAME.py``, holds ``parts(question)``: for each part what is
right, and by code what each known slip gives. Where a code stands for two thoughts, the second
key has a letter more. For a chain it takes the learner's own values of the steps before, too.
Nothing in it comes from the package.
"""

import ast
import re
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from functools import cache
from math import isclose
from random import Random
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.questions.checking.places import project_tests, stem
from seatwork.questions.type.parts import NumberPart, OrderPart, Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.running import run_file
from seatwork.questions.type.verdicts import judge, judge_all

SYSTEMS = ("inch", "metric")
FOUND = 0.99  # share of learners with one slip who are told that slip and no other
CLOSE = 1e-9

Proof = Callable[..., list[tuple[Any, dict[str, Any]]]]


@dataclass(frozen=True, slots=True)
class Learner:
    """What one learner types, part by part, and the one slip in it."""

    typed: list[str]
    place: int
    code: str


def faults(kind: type[Question], draws: int) -> Iterator[str]:
    """Yield where a type of the package and its proof do not agree."""
    if project_tests() is None:
        return
    outcomes: Counter[str] = Counter()
    for state in range(draws):
        question = kind.draw(Random(state)).stated_in(SYSTEMS[state % 2])
        if wrong := [*_wrongly_right(question), *_unproven(question)]:
            yield from wrong
            return
        outcomes.update(outcome(question, learner) for learner in learners(question))
    if outcomes["found"] < FOUND * outcomes.total():
        yield f"slips are told wrongly or not at all: {outcomes.most_common(4)}"


@cache
def proof(name: str) -> Proof:
    """Return the proof of a type.

    Raises
    ------
    SeatworkError
        If there is none, it cannot be run, or it imports anything of the package.
    """
    folder = project_tests()
    path = folder / "proofs" / f"{stem(name)}.py" if folder else None
    if path is None or not path.is_file():
        raise SeatworkError(
            name, "it has no proof", f"write tests/questions/proofs/{stem(name)}.py"
        )
    parts: Proof = run_file(path, "seatwork_proofs").parts
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import | ast.ImportFrom) and "seatwork" in ast.unparse(node):
            raise SeatworkError(path.name, "a proof takes nothing of the package", "work it out")
    return parts


def proven(question: Question, own: tuple[float, ...] = ()) -> list[tuple[Any, dict[str, Any]]]:
    """Return what is right and what slips give, for each part."""
    return proof(question.id)(question, own) if question.is_chain else proof(question.id)(question)


def _wrongly_right(question: Question) -> Iterator[str]:
    parts, pairs = question.parts, proven(question)
    if len(parts) != len(pairs):
        yield f"the proof has {len(pairs)} parts, the type {len(parts)}"
        return
    for part, (right, _) in zip(parts, pairs, strict=True):
        if isinstance(part, NumberPart) and not isclose(part.value, right, rel_tol=CLOSE):
            numbers = f"{right:.6g} where the type gives {part.value:.6g}"
            yield f"the proof gives {numbers}, for {question.drawn()}"
        elif judge(part, typed(part, right)).kind != "right":
            yield f"the answer of the proof, {typed(part, right)}, is not marked right"
    if not all(verdict.is_right for verdict in judge_all(question, answers(question))):
        yield "all right answers of the proof together are not marked right"


def _unproven(question: Question) -> Iterator[str]:
    """Look for slips, code by code and part by part, that the proof does not hold."""
    for part, (_, slips) in zip(question.parts, proven(question), strict=False):
        own = Counter(code[:3] for code in slips)
        kept = Counter(slip.code for slip in part.slips if slip.twin_of is None)
        for code in kept - own:
            yield f"the proof has no number for slip {code}"


def typed(part: Part, value: Any) -> str:
    """Write an answer as a learner would: a number rounded half up, the letter of an option."""
    if isinstance(part, NumberPart):
        amount = Decimal(repr(float(value))) / part.measure.scale[part.system]
        if part.is_least and isclose(float(value), part.value, rel_tol=CLOSE):
            return f"{part.rounded:f}"
        return f"{amount.quantize(Decimal(1).scaleb(-part.measure.places[part.system])):f}"
    if isinstance(part, OrderPart):
        return "".join(_letter(part, step) for step in value)
    return _letter(part, value)


def _letter(part: Part, words: str) -> str:
    """Return the letter under which something is shown; a letter on a drawing is itself."""
    if re.fullmatch("[A-E]", words):
        return words
    shown = re.findall(r"([a-j])\) (.*?)(?:; |\.$)", part.request)
    found = [sign for sign, option in shown if words == option]
    found = found or [sign for sign, option in shown if words in option]
    if len(found) != 1:
        fault = f"it is shown {len(found)} times among the options"
        raise SeatworkError(words, fault, "give it in the proof as it is shown")
    return str(found[0])


def answers(question: Question, place: int = -1, code: str = "") -> list[str]:
    """Return what a learner types who makes one slip at one part and goes on from there."""
    texts: list[str] = []
    own: tuple[float, ...] = ()
    for number, part in enumerate(question.parts):
        right, slips = proven(question, own)[number]
        texts.append(typed(part, slips[code] if number == place else right))
        own += (_inside(part, texts[-1]),)
    return texts


def _inside(part: Part, text: str) -> float:
    """Return a number as typed in inside units; 0 for a letter."""
    if not isinstance(part, NumberPart):
        return 0.0
    return float(Decimal(text) * part.measure.scale[part.system])


def learners(question: Question) -> Iterator[Learner]:
    """Yield a learner for each slip that gives a number one could write down."""
    for place, (_, slips) in enumerate(proven(question)):
        for code, wrong in slips.items():
            if wrong is not None and _writable(question.parts[place], wrong):
                yield Learner(answers(question, place, code), place, code[:3])


def _writable(part: Part, wrong: Any) -> bool:
    """Whether a slip's number is zero, or at least half of the last place asked for."""
    if not isinstance(part, NumberPart):
        return True
    return bool(wrong == 0 or wrong >= float(part.step * part.measure.scale[part.system]) / 2)


def outcome(question: Question, learner: Learner) -> str:
    """Return "found" if all parts are marked as they should be, else what was said."""
    verdicts = judge_all(question, learner.typed)
    told, known = verdicts[learner.place].slips, question.parts[learner.place].slips
    slips = [slip.code for slip in told]
    # the engine may know another way to the same number: the learner says which it was
    own = {slip.code for slip in told if slip in known} | {learner.code}
    others = [v.is_right for n, v in enumerate(verdicts) if n != learner.place]
    if learner.code in slips and own == {learner.code} and all(others):
        return "found"
    return f"{question.id} part {learner.place + 1} {learner.code}: {slips} {others}"
