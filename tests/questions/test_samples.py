"""One question of each type that reads a print, gages or sets, against numbers worked by hand."""

import tomllib
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest
from seatwork.questions import Question, all_types
from seatwork.questions.type.parts import NumberPart

SAMPLES = tomllib.loads(Path(__file__).with_name("samples.toml").read_text(encoding="utf-8"))
NUMBERS = sorted(name for name, sample in SAMPLES.items() if "slips" in sample)
INCH = 25.4


def sampled(name: str) -> Question:
    """Return the question of a sample; lengths of an inch print are kept in millimeters."""
    kind, sample = all_types()[name], SAMPLES[name]
    system = sample.get("system", "inch")
    lengths = (
        {size for size, measure in kind.sizes.items() if measure.name == "length"}
        if system == "inch"
        else set()
    )
    drawn: dict[str, Any] = {
        size: value * INCH if size in lengths else value for size, value in sample["drawn"].items()
    }
    return kind(system=system, **drawn)


def half_a_place(number: float) -> Decimal:
    """Return half of the last place a number was written to, and a hair."""
    return Decimal("0.51").scaleb(Decimal(repr(number)).as_tuple().exponent)


@pytest.mark.parametrize("name", sorted(SAMPLES))
def test_the_answer_is_the_one_worked_by_hand(name: str) -> None:
    """The right answer of the sample, to every place it was worked to; and the first choice."""
    question, sample = sampled(name), SAMPLES[name]
    if "slips" not in sample:
        assert question.answer == sample["answer"]
        return
    assert isinstance(question.answer, Decimal)
    assert abs(question.answer - Decimal(repr(sample["answer"]))) <= half_a_place(sample["answer"])
    if "verdict" in sample:
        assert question.parts[0].answer == sample["verdict"]


@pytest.mark.parametrize("name", NUMBERS)
def test_each_slip_gives_the_number_worked_by_hand(name: str) -> None:
    """Every slip of the last part that gives a number one could write, and no more of them."""
    part, expected = sampled(name).main, [one for one in SAMPLES[name]["slips"] if one >= 0]
    assert isinstance(part, NumberPart)
    given = (one.value for one in part.mistakes() if one.value is not None and one.value >= 0)
    found = sorted(part.measure.amount(value, part.system) for value in given)
    for value, by_hand in zip(found, sorted(expected), strict=True):
        assert abs(value - Decimal(repr(by_hand))) <= half_a_place(by_hand)
