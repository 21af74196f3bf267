"""The drawings of questions: what they show is stated, and nothing is given away."""

import re
from random import Random

import pytest
from seatwork.drawings.sketches.castings import PAD, sloped_pad
from seatwork.drawings.sketches.lettered import lettered_seat
from seatwork.drawings.sketches.page import Asked
from seatwork.errors import SeatworkError
from seatwork.questions import Question, all_types, judge
from seatwork.questions.checking.drawn import given_away, written
from seatwork.questions.type.parts import NumberPart
from seatwork.seats import Countersink


def seen_in(question: Question) -> str:
    """Return all that is written on a question's drawing and told of it."""
    drawing = question.drawing()
    assert drawing is not None
    return written(drawing)


def test_a_drawing_that_gives_the_answer_away_is_found() -> None:
    """The check above sees the answer, and a step, put on a drawing by mistake."""
    question = all_types()["flange-left"].draw(Random(0))
    part = question.main
    assert isinstance(part, NumberPart)
    told = part.measure.show(part.value, part.system)
    spoiled = sloped_pad({"slope": question.stated("slope"), "axis": told})
    assert given_away(question, spoiled.text) == [told]


@pytest.mark.parametrize("seed", range(6))
def test_every_letter_stands_once_on_the_seat(seed: int) -> None:
    """The five letters are on the drawing, each once, and the text tells each one's way."""
    question = all_types()["which-size"].draw(Random(seed))
    seen = seen_in(question).split("\n")
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
