"""What every question type keeps, over many draws."""

from decimal import Decimal
from random import Random

import pytest
from seatwork.questions import Question, all_types, judge
from seatwork.questions.checking.contract import lacks
from seatwork.questions.type.measures import ANGLE
from seatwork.questions.type.parts import NumberPart
from seatwork.questions.type.question import too_close

DRAWS = 300
TYPES = sorted(all_types().items())
EVERY_TYPE = pytest.mark.parametrize(("name", "kind"), TYPES, ids=[name for name, _ in TYPES])


def draws(kind: type[Question], count: int = DRAWS) -> list[Question]:
    """Draw questions from the states 0, 1, 2, ..., half of them asked in the other system."""
    drawn = [kind.draw(Random(state)) for state in range(count)]
    return [
        question.stated_in("metric" if question.system == "inch" else "inch") if n % 2 else question
        for n, question in enumerate(drawn)
    ]


@EVERY_TYPE
def test_the_same_state_gives_the_same_question(name: str, kind: type[Question]) -> None:
    """A state of the generator decides the question, and nothing else does."""
    assert kind.id == name
    for state in range(20):
        first, second = kind.draw(Random(state)), kind.draw(Random(state))
        assert first == second
        assert first.ask() == second.ask()
    assert len({kind.draw(Random(state)).ask() for state in range(40)}) >= 5


@pytest.mark.slow
@EVERY_TYPE
def test_every_draw_keeps_the_contract(name: str, kind: type[Question]) -> None:
    """Over 300 draws in both systems: right is right, slips stand apart, sizes are stated."""
    for question in draws(kind):
        for part in question.parts:
            if isinstance(part, NumberPart):
                check_number(part)
            else:
                assert judge(part, str(part.answer)).is_right
                for slip in part.slips:
                    assert not judge(part, str(slip.value)).is_right
        check_text(question)


def check_number(part: NumberPart) -> None:
    """Check that exact and rounded answers are right, and that slips stand apart."""
    assert part.tolerance > 0
    assert part.tolerance >= Decimal(1).scaleb(-part.measure.places[part.system]) / 2
    assert judge(part, f"{part.answer:.9f}").is_right
    assert judge(part, f"{part.rounded:f}").is_right
    low, high = part.band
    assert judge(part, f"{low:f}").is_right
    assert judge(part, f"{high:f}").is_right
    assert not judge(part, f"{high + part.tolerance / 100:f}").is_right
    assert too_close(part) == []
    codes = {slip.code for slip in part.slips}
    for slip in part.slips:
        assert slip.sentence
        if slip.twin_of:
            assert slip.twin_of in codes
        elif isinstance(slip.value, Decimal):
            verdict = judge(part, f"{slip.value:.7f}")
            assert [found.code for found in verdict.slips] == [slip.code]


def check_text(question: Question) -> None:
    """Check that every drawn size stands in the text with its unit."""
    text = question.ask()
    for size in question.sizes:
        assert question.said(size) in text, f"{size} is not stated"
    assert "None" not in text
    assert "nan" not in text
    assert question.worked().strip()


@EVERY_TYPE
def test_a_type_lacks_nothing(name: str, kind: type[Question]) -> None:
    """Goal, difficulty, hints, both systems, reasons, and worked answers: all are there.

    ``test_own_types`` plants a fault of each kind and sees that it is said.
    """
    assert lacks(kind, 20) == ()


@EVERY_TYPE
def test_no_right_angle_hides_a_slip(name: str, kind: type[Question]) -> None:
    """Where the tangent of the half angle is what is asked, 90° is not drawn for the seat."""
    hides = {slip.code for slip in kind.draw(Random(0)).slips} & {"M04", "M09"}
    if hides and ANGLE in kind.sizes.values():
        for question in draws(kind, 100):
            angles = [
                getattr(question, size) for size, measure in kind.sizes.items() if measure is ANGLE
            ]
            assert 90.0 not in angles
