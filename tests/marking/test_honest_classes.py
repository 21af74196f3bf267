"""Honest made-up classes in which all make the same slips: nobody is asked about for nothing."""

from random import Random

import pytest
from seatwork.marking import sheets
from seatwork.marking.alike import alike
from seatwork.marking.seeds import PRACTICE_KEY, sheet_seed
from seatwork.marking.text import right_answer
from seatwork.questions import Question, judge_all
from seatwork.questions.type.parts import NumberPart, Part

pytestmark = pytest.mark.long
SEATS = [f"L{number:02d}" for number in range(1, 17)]
SHEETS = (
    "angles",
    "castings_and_edges",
    "cones",
    "counterbores",
    "cutters_and_chatter",
    "flushness",
)
CLASSES, SLIPS = 5, 0.3
Typed = dict[str, list[str]]


def answered(part: Part, rng: Random) -> str:
    """Answer a part rightly, or by the first of its slips, which is the slip of the whole class."""
    slip = next((one for one in part.slips if not one.twin_of), None)
    if slip is None or not isinstance(part, NumberPart) or rng.random() >= SLIPS:
        return right_answer(part)
    return f"{slip.value:.{part.measure.places[part.system]}f}"


def row(learner: str, questions: dict[str, Question], typed: Typed) -> dict:
    """Make a row of results."""
    judged = {name: judge_all(one, typed[name]) for name, one in questions.items()}
    return {
        "learner": learner,
        "questions": [
            {"id": name, "typed": typed[name], "verdicts": [one.kind for one in found]}
            for name, found in judged.items()
        ],
    }


@pytest.mark.parametrize("name", SHEETS)
def test_an_honest_class_is_not_asked_about_and_a_copied_sheet_is(name: str) -> None:
    """No pair of five classes of 16; who copies a whole longer sheet from a neighbor always is."""
    plan = sheets.load(name)
    asked = caught = 0
    for number in range(CLASSES):
        rng = Random(f"{name} {number}")
        drawn, typed = {}, {}
        for code in SEATS:
            drawn[code] = plan.draw(sheet_seed(PRACTICE_KEY, f"{code}-{number}", name, 1))
            typed[code] = {
                place: [answered(part, rng) for part in one.parts]
                for place, one in drawn[code].items()
            }
        rows = [row(code, drawn[code], typed[code]) for code in SEATS]
        asked += len(alike(rows))
        thief, owner = SEATS[:2]
        copied = [row(thief, drawn[thief], typed[owner]), *rows[1:]]
        caught += any(found.learners == (thief, owner) for found in alike(copied))
    assert asked == 0
    assert caught == CLASSES or len(plan.items) <= 5
