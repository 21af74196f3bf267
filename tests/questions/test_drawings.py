"""The drawings of questions: what they show is stated, and nothing is given away."""

import re
from random import Random

import pytest
from seatwork.drawings.sketches.castings import PAD, sloped_pad
from seatwork.drawings.sketches.lettered import lettered_seat
from seatwork.drawings.sketches.page import Asked
from seatwork.errors import SeatworkError
from seatwork.questions import Question, all_types, judge
from seatwork.questions.type.parts import NumberPart
from seatwork.seats import Countersink

WITHOUT = {name for name, kind in all_types().items() if kind.undrawn}
NO_MARK = {name for name, kind in all_types().items() if kind.unmarked}
DRAWN = sorted(set(all_types()) - WITHOUT)
NUMBER = re.compile(r"\d*\.?\d+(?: in| mm|°)")


def drawn(name: str, count: int = 4) -> list[Question]:
    """Draw questions of a type in both unit systems."""
    kind = all_types()[name]
    return [
        kind.draw(Random(state)).stated_in(system)
        for state in range(count)
        for system in ("inch", "metric")
    ]


def written(question: Question) -> str:
    """Return all that is written on a question's drawing and told of it."""
    drawing = question.drawing()
    assert drawing is not None
    words = [text.get_text() for axes in drawing.figure.axes for text in axes.texts]  # type: ignore[attr-defined]
    return "\n".join([drawing.text, *words])


def given_away(question: Question, seen: str) -> list[str]:
    """Return the numbers of a drawing that the question does not state.

    A size in the other unit system, in brackets after the first, counts as stated.
    """
    stated = set(NUMBER.findall(question.ask()))
    plain = re.sub(r"\(\d*\.?\d+ (?:in|mm)\)", "", seen)
    return sorted(set(NUMBER.findall(plain)) - stated)


@pytest.mark.slow
def test_types_without_a_drawing_are_known() -> None:
    """Every type that has no drawing says why, and no other."""
    assert {name for name in all_types() if drawn(name, 1)[0].drawing() is None} == WITHOUT


@pytest.mark.slow
@pytest.mark.parametrize("name", DRAWN)
def test_a_drawing_shows_only_what_is_stated(name: str) -> None:
    """Neither the answer nor a step on the way to it stands on the drawing."""
    for question in drawn(name):
        assert given_away(question, written(question)) == []


@pytest.mark.parametrize("name", DRAWN)
def test_what_is_asked_for_is_a_question_mark(name: str) -> None:
    """A number asked for is a "?" on the drawing, and told as to be found."""
    for question in drawn(name, 1):
        seen = written(question)
        if isinstance(question.main, NumberPart) and name not in NO_MARK:
            assert len(re.findall(r"^[⌀↧±+ ]*\?", seen, re.M)) >= 1
            assert "to be found" in seen
        else:
            assert "?" not in seen


def test_a_drawing_that_gives_the_answer_away_is_found() -> None:
    """The check above sees the answer, and a step, put on a drawing by mistake."""
    question = drawn("spotface-axis", 1)[0]
    part = question.main
    assert isinstance(part, NumberPart)
    told = part.measure.show(part.value, part.system)
    spoiled = sloped_pad({"slope": question.said("slope"), "axis": told})
    assert given_away(question, spoiled.text) == [told]


@pytest.mark.parametrize("seed", range(6))
def test_every_letter_stands_once_on_the_seat(seed: int) -> None:
    """The five letters are on the drawing, each once, and the text tells each one's way."""
    question = all_types()["which-size"].draw(Random(seed))
    seen = written(question).split("\n")
    assert sorted(seen[1:]) == ["A", "B", "C", "D", "E"]
    for letter in "ABCDE":
        assert re.search(rf"\b{letter} (from|straight|across|along)", seen[0])
    for name in ("diameter", "depth", "width"):
        assert name not in seen[0]


def test_a_size_is_picked_by_its_letter_alone() -> None:
    """Upper or lower case will do; the name in the question, typed again, is no answer."""
    part = all_types()["which-size"].draw(Random(1)).parts[0]
    letter = str(part.answer)
    assert judge(part, letter).is_right
    assert judge(part, f" {letter.lower()})").is_right
    for word in ("depth", "diameter", "hole", "apex", "slant"):
        assert judge(part, word).kind == "unreadable"


def test_a_letter_left_out_is_refused() -> None:
    """A size without a letter cannot be asked for."""
    seat = Countersink(diameter=12.7, hole_diameter=6.6, included_angle=82)
    with pytest.raises(SeatworkError, match="no letter"):
        lettered_seat(seat, {"diameter": "A", "hole": "B", "depth": "C", "apex": "D"})


def test_a_size_the_sketch_does_not_have_is_refused() -> None:
    """A label without a place would be lost, so it is refused by name."""
    with pytest.raises(SeatworkError, match="no such size"):
        Asked(title="A pad", names=PAD, labels={"depht": "?"})
