"""A thousand learners with known slips: marking finds the slip, and blames nobody else.

What is right and what slips give stands in ``tests/questions/proofs``, worked out from the
trigonometry itself and the sums of the trade; nothing of the package gives an expected value.
"""

import math
from collections import Counter
from collections.abc import Iterator
from random import Random

import pytest
from seatwork.marking import sheets
from seatwork.questions import Question, Verdict, all_types, judge
from seatwork.questions.checking.proving import Learner, learners, outcome, proven, typed
from seatwork.questions.type.parts import NumberPart

LEARNERS = 1000
SHEETS = sorted(path.stem for path in sheets.folder().glob("*.toml"))
TYPES = sorted(all_types())


def asked(name: str, count: int) -> Iterator[Question]:
    """Draw questions of a type, in both unit systems."""
    for state in range(count):
        for system in ("inch", "metric"):
            yield all_types()[name].draw(Random(state)).stated_in(system)


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
        found[outcome(question, one)] += 1
    assert found["found"] >= 0.99 * found.total() == 0.99 * LEARNERS, found.most_common(5)


def test_another_slip_than_the_one_made_does_not_count() -> None:
    """The proof counts neither a wrong code, nor a slip told on a right answer, nor silence."""
    question = all_types()["seat-depth"].draw(Random(1))
    (right, slips) = proven(question)[0]
    part = question.parts[0]
    for value, code in ((slips["M02"], "M03"), (right, "M02"), (1.37 * right, "M02")):
        wrong = Learner(typed=[typed(part, value)], place=0, code=code)
        assert outcome(question, wrong) != "found"


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
        for learner in range(100)
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
