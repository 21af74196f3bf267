"""A thousand learners with known slips: marking finds the slip, and blames nobody else.

The formulas stand in ``formulas/``, written once more from the trigonometry itself and the
sums of the trade; nothing of the package gives an expected value.
"""

import importlib.util
import math
import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path
from random import Random
from typing import Any

import pytest
from seatwork.marking import sheets
from seatwork.questions import Question, Verdict, all_types, judge, judge_all
from seatwork.questions.type.parts import NumberPart, OrderPart, Part

LEARNERS = 1000
SHEETS = sorted(path.stem for path in sheets.folder().glob("*.toml"))
TYPES = sorted(all_types())
SYSTEMS = ("inch", "metric")


def table(name: str) -> dict[str, Any]:
    """Gather the formulas of all files, by question type."""
    found: dict[str, Any] = {}
    for path in sorted(Path(__file__).with_name("formulas").glob("*.py")):
        spec = importlib.util.spec_from_file_location(f"formulas_{path.stem}", path)
        assert spec is not None
        assert spec.loader is not None
        module = importlib.util.module_from_spec(spec)
        spec.loader.exec_module(module)
        found |= getattr(module, name, {})
    return found


FORMULAS, CHAINS = table("FORMULAS"), table("CHAINS")


@dataclass(frozen=True)
class Learner:
    """What one learner types, part by part, and the one slip in it."""

    typed: list[str]
    place: int
    code: str


def formulas(question: Question, own: tuple[float, ...] = ()) -> Any:
    """Return what is right and what slips give, for each part."""
    chain = CHAINS.get(question.id)
    return chain(question, own) if chain else FORMULAS[question.id](question)


def typed(part: Part, value: Any) -> str:
    """Write an answer as a learner would: a number rounded half up, the letter of an option."""
    if isinstance(part, NumberPart):
        amount = Decimal(repr(float(value))) / part.measure.scale[part.system]
        return f"{amount.quantize(Decimal(1).scaleb(-part.measure.places[part.system])):f}"
    if isinstance(part, OrderPart):
        return "".join(letter(part, step) for step in value)
    return letter(part, value)


def letter(part: Part, words: str) -> str:
    """Return the letter under which something is shown; a letter on a drawing is itself."""
    if re.fullmatch("[A-E]", words):
        return words
    shown = re.findall(r"([a-j])\) (.*?)(?:; |\.$)", part.request)
    found = [sign for sign, option in shown if words == option]
    found = found or [sign for sign, option in shown if words in option]
    assert len(found) == 1, f"{words!r} is shown {len(found)} times in {part.request!r}"
    return found[0]


def inside(part: Part, text: str) -> float:
    """Return a number as typed in inside units; 0 for a letter."""
    if not isinstance(part, NumberPart):
        return 0.0
    return float(Decimal(text) * part.measure.scale[part.system])


def answers(question: Question, place: int = -1, code: str = "") -> list[str]:
    """Return what a learner types who makes one slip at one part and goes on from there."""
    texts: list[str] = []
    own: tuple[float, ...] = ()
    for number, part in enumerate(question.parts):
        right, slips = formulas(question, own)[number]
        texts.append(typed(part, slips[code] if number == place else right))
        own += (inside(part, texts[-1]),)
    return texts


def learners(question: Question) -> Iterator[Learner]:
    """Yield a learner for each slip that gives a number one could write down."""
    for place, (_, slips) in enumerate(formulas(question)):
        part = question.parts[place]
        for code, wrong in slips.items():
            if wrong is None or (isinstance(wrong, float) and not writable(part, wrong)):
                continue
            yield Learner(typed=answers(question, place, code), place=place, code=code[:3])


def writable(part: Part, wrong: float) -> bool:
    """Whether a slip's number is zero, or at least half of the last place asked for."""
    assert isinstance(part, NumberPart)
    least = float(part.step * part.measure.scale[part.system]) / 2
    return wrong == 0 or wrong >= least


def told(question: Question, learner: Learner) -> str:
    """Return "found" if all parts are marked as they should be, else what was said."""
    verdicts = judge_all(question, learner.typed)
    slips = [slip.code for slip in verdicts[learner.place].slips]
    others = [v.is_right for n, v in enumerate(verdicts) if n != learner.place]
    if slips == [learner.code] and all(others):
        return "found"
    return f"{question.id} part {learner.place + 1} {learner.code}: {slips} {others}"


def asked(name: str, count: int) -> Iterator[Question]:
    """Draw questions of a type, in both unit systems."""
    for state in range(count):
        for system in SYSTEMS:
            yield all_types()[name].draw(Random(state)).stated_in(system)


def test_every_type_has_formulas_here() -> None:
    """All question types are proven, none is left out, and none has two proofs."""
    assert sorted([*FORMULAS, *CHAINS]) == TYPES
    assert len(TYPES) >= 46


@pytest.mark.parametrize("name", TYPES)
def test_right_answers_are_right(name: str) -> None:
    """What the formulas here give is right, and equals the package's number, over 100 draws."""
    for question in asked(name, 50):
        for part, (right, _) in zip(question.parts, formulas(question), strict=True):
            if isinstance(part, NumberPart):
                assert part.value == pytest.approx(right, rel=1e-9)
            assert judge(part, typed(part, right)).kind == "right"
        verdicts = judge_all(question, answers(question))
        assert all(verdict.is_right for verdict in verdicts)


@pytest.mark.parametrize("name", TYPES)
def test_each_slip_of_a_type_has_a_formula_here(name: str) -> None:
    """No slip is told that was not written down here too, code by code and part by part."""
    for question in asked(name, 20):
        for part, (_, slips) in zip(question.parts, formulas(question), strict=True):
            own = Counter(code[:3] for code in slips)
            kept = Counter(slip.code for slip in part.slips if slip.twin_of is None)
            assert not kept - own, f"{name}: no formula for {kept - own}"


@pytest.mark.parametrize("name", TYPES)
def test_known_slips_of_a_type_are_found(name: str) -> None:
    """Each slip of each type is told in at least 99 % of 120 draws, and nothing else is."""
    found: Counter[str] = Counter()
    for question in asked(name, 60):
        found.update(told(question, learner) for learner in learners(question))
    assert found["found"] >= 0.99 * found.total(), found.most_common(6)
    assert found.total() >= 60


@pytest.mark.slow
@pytest.mark.parametrize("name", SHEETS)
def test_known_slips_on_a_sheet_are_found(name: str) -> None:
    """Of 1,000 learners with one slip each, at least 99 % are told that slip."""
    sheet, rng = sheets.load(name), Random(20)
    found: Counter[str] = Counter()
    for learner in range(LEARNERS):
        item = sheet.items[int(rng.random() * len(sheet.items))]
        question = sheets.draw_item(item, f"learner {learner}".encode())
        slipping = list(learners(question))
        one = slipping[int(rng.random() * len(slipping))]
        found[told(question, one)] += 1
    assert found["found"] >= 0.99 * found.total() == 0.99 * LEARNERS, found.most_common(5)


def test_another_slip_than_the_one_made_does_not_count() -> None:
    """The proof counts neither a wrong code, nor a slip told on a right answer, nor silence."""
    question = all_types()["seat-depth"].draw(Random(1))
    (right, slips) = formulas(question)[0]
    part = question.parts[0]
    for value, code in ((slips["M02"], "M03"), (right, "M02"), (1.37 * right, "M02")):
        wrong = Learner(typed=[typed(part, value)], place=0, code=code)
        assert told(question, wrong) != "found"


def blamed(questions: Iterator[Question], rng: Random) -> tuple[int, int]:
    """Count the random wrong numbers taken for a slip, and all of them.

    Uniform from 0.2 to 3 times the answer, three figures.
    """
    verdicts: list[Verdict] = []
    for question in questions:
        for part in question.parts:
            if isinstance(part, NumberPart) and part.value > 0:
                number = float(part.answer) * (0.2 + 2.8 * rng.random())
                places = max(0, 2 - math.floor(math.log10(number)))
                verdicts.append(judge(part, f"{number:.{places}f}"))
    return sum(bool(verdict.slips) for verdict in verdicts), len(verdicts)


@pytest.mark.slow
@pytest.mark.parametrize("name", SHEETS)
def test_random_numbers_are_rarely_blamed(name: str) -> None:
    """Of random wrong numbers on a sheet at most 2 % are taken for a slip."""
    sheet = sheets.load(name)
    drawn = (
        question
        for learner in range(300)
        for question in sheet.draw(f"learner {learner}".encode()).values()
    )
    wrong, count = blamed(drawn, Random(21))
    assert wrong <= 0.02 * max(count, 1), f"{wrong} of {count}"


@pytest.mark.long
@pytest.mark.parametrize("name", TYPES)
def test_random_numbers_are_rarely_blamed_on_a_type(name: str) -> None:
    """Type by type, too, at most 2 % of random wrong numbers are taken for a slip."""
    wrong, count = blamed(asked(name, 500), Random(3))
    assert wrong <= 0.02 * max(count, 1), f"{wrong} of {count}"
