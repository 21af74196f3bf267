"""How an entry is read back, by what is asked for alone."""

import json
import random

import pytest
from seatwork import questions
from seatwork.entries.asked import (
    MEASURES,
    AskedChoice,
    AskedNumber,
    AskedOrder,
    as_data,
    echo,
    from_data,
)
from seatwork.questions.type.verdicts import judge_all

NO_ORDER = "Each step must stand there once; answer with the letters, such as CABD."
INCHES, MILLIMETERS = AskedNumber("LENGTH", "inch"), AskedNumber("LENGTH", "metric")
OPTIONS = AskedChoice(("above the face", "below the face"))


@pytest.mark.parametrize(
    ("typed", "asked", "said"),
    [  # one inch is 25.4 mm exactly; the places are those asked for, and one more where typed
        (".139 in", INCHES, "read as 0.139 in (3.53 mm)"),
        (".1394", INCHES, "read as 0.1394 in (3.54 mm)"),
        ("13,2 mm", INCHES, "read as 0.5197 in (13.20 mm)"),
        ("1 1/4", INCHES, "read as 1.250 in (31.75 mm)"),
        ("12.7", MILLIMETERS, "read as 12.70 mm (0.500 in)"),
        ("82", AskedNumber("ANGLE", "inch"), "read as 82.0°"),
        ("900 rpm", AskedNumber("SPINDLE_SPEED", "inch"), "read as 900 rev/min"),
        ("6", AskedNumber("COUNT", "inch"), "read as 6"),
        ("b)", OPTIONS, "read as b) below the face"),
        ("d", OPTIONS, "That is none of the options; answer with a letter from a to b."),
        ("c, a b", AskedOrder(3), "read as CAB"),
        ("caa", AskedOrder(3), NO_ORDER),
        ("  ", INCHES, ""),
    ],
)  # fmt: skip
def test_an_entry_is_read_back(typed: str, asked: object, said: str) -> None:
    """In the unit asked for, one place finer at most, and in the other system."""
    assert echo(typed, asked) == said  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "typed", ["0x1F", "=1+1", "--", "9" * 300, "</script><img src=x>", "1e999", "\ud800", "nan"]
)
def test_what_is_no_number_gets_a_sentence(typed: str) -> None:
    """A sentence that does not say "read as", whatever was typed."""
    said = echo(typed, INCHES)
    assert said
    assert not said.startswith("read as")


LARGE = ("9" * 40, "9" * 59 + "/2", "1" * 25 + ",5", "1" * 25 + " 1/2", "1" * 30 + " cm", "9" * 60)
LONG = (".1234567890123456789", "0," + "1" * 58, "1." + "0" * 50, "0." + "0" * 50 + "1")


@pytest.mark.parametrize("system", ["inch", "metric"])
def test_a_number_of_many_digits_gets_a_sentence(system: str) -> None:
    """For every measure: none raises, too large is told, and long decimals are read."""
    for measure in MEASURES:
        said = {text: echo(text, AskedNumber(measure, system)) for text in (*LARGE, *LONG)}
        assert not [text for text in LARGE if said[text].startswith("read as")]
        assert all(said[text].startswith("read as") for text in LONG[:3])


@pytest.mark.slow
@pytest.mark.parametrize("system", ["inch", "metric"])
def test_a_number_of_many_digits_is_judged(system: str) -> None:
    """No type of question fails on one, so that no hand-in stops the marking of a class."""
    for kind in questions.all_types().values():
        question = kind.draw(random.Random(4)).stated_in(system)
        for text in (*LARGE, *LONG):
            verdicts = judge_all(question, [text] * len(question.parts))
            assert text in LONG or not any(verdict.is_right for verdict in verdicts)


@pytest.mark.parametrize("asked", [INCHES, OPTIONS, AskedOrder(4)])
def test_what_is_asked_travels_as_data(asked: object) -> None:
    """What was written as data is read as the same."""
    assert from_data(json.loads(json.dumps(as_data(asked)))) == asked  # type: ignore[arg-type]


def test_every_question_type_asks_for_something_that_can_be_read_back() -> None:
    """Each number's measure has a name, each choice and order its texts and no right word."""
    for kind in questions.all_types().values():
        for part in kind.draw(random.Random(3)).parts:
            asked = part.asked
            if isinstance(asked, AskedNumber):
                assert MEASURES[asked.measure] is part.measure
            told = set(as_data(asked))
            assert told <= {"kind", "measure", "system", "options", "count"}
