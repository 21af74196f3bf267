"""Questions that read a print, gage, set or were merged, against numbers worked by hand."""

import tomllib
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest
from seatwork.questions import Question, all_types, judge
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
    answer = question.parts[sample.get("part", -1)].answer
    if isinstance(answer, Decimal):
        assert abs(answer - Decimal(repr(sample["answer"]))) <= half_a_place(sample["answer"])
    else:
        assert answer == sample["answer"]
    if "verdict" in sample:
        assert question.parts[0].answer == sample["verdict"]


@pytest.mark.parametrize("name", sorted(name for name in SAMPLES if "note" in SAMPLES[name]))
def test_the_note_stands_there_as_on_a_print(name: str) -> None:
    """The note is written in the signs of prints, without units, and the drawing shows it whole."""
    question, note = sampled(name), SAMPLES[name]["note"]
    assert question.note() == note  # type: ignore[attr-defined]
    drawing = question.drawing()
    assert drawing is not None
    assert note in question.text()
    assert f"Its note: {note}" in drawing.text


@pytest.mark.parametrize("name", NUMBERS)
def test_each_slip_gives_the_number_worked_by_hand(name: str) -> None:
    """Every slip of the last part that gives a number one could write, and no more of them."""
    sample = SAMPLES[name]
    part = sampled(name).parts[sample.get("part", -1)]
    expected = [one for one in sample["slips"] if one >= 0]
    assert isinstance(part, NumberPart)
    given = (one.value for one in part.mistakes() if one.value is not None and one.value >= 0)
    found = sorted(part.measure.amount(value, part.system) for value in given)
    for value, by_hand in zip(found, sorted(expected), strict=True):
        assert abs(value - Decimal(repr(by_hand))) <= half_a_place(by_hand)


@pytest.mark.parametrize("name", sorted(name for name in SAMPLES if "copied" in SAMPLES[name]))
def test_a_number_of_the_note_is_told_as_such(name: str) -> None:
    """A number written back from the note is named, though the type says nothing of it."""
    part = sampled(name).main
    for number in SAMPLES[name]["copied"]:
        told = judge(part, f"{number}")
        assert "M57" in [one.code for one in told.slips], told
