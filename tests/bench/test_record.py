"""What keeping a term costs: ratios to marking alone, and the growth from 1,000 to 10,000."""

import resource
import sys
import time
from collections.abc import Callable
from pathlib import Path
from random import Random

import pytest
from seatwork.marking import Answer, AnswerFile, Sheet, examples, sheets
from seatwork.marking.handed import Forms
from seatwork.marking.handing_out import hand_out
from seatwork.marking.submissions import Submission
from seatwork.marking.text import right_answer
from seatwork.questions import Question
from seatwork.questions.type.parts import NumberPart, Part
from seatwork.record import Record, check, picture
from seatwork.record.cells import Counting
from seatwork.record.copying import copy
from seatwork.record.formed import add_form, pin
from seatwork.record.takers import Takers
from seatwork.record.taking_in import take_in

from tests.as_saved import sealed

DAY = "2026-09-14"
COUNTS = (1_000, 10_000)
DRAWN = 100
PICTURE, AGAIN, CHECK, KEEP, STEP = 1.2, 3.0, 2.0, 5.0, 12.0
"""Most of each as a multiple of marking alone, and most of ten times as many."""
LARGEST, MEMORY = 60e6, 450.0


def given(record: Record, plan: Sheet, count: int) -> list[Submission]:
    """Hand a sheet out to many, and answer it as a class does.

    Forms are drawn for the first hundred; the others have the numbers of these, since drawing
    is not what is measured here.
    """
    codes = [f"A{number:06d}" for number in range(count)]
    forms = Forms()
    drawn = hand_out(examples.KEY, forms, plan, codes[:DRAWN])
    known, papers = [choices(one.questions) for one in drawn], []
    with record.writing() as batch:
        pinned = pin(batch, plan, DAY)
        for number, who in enumerate(codes):
            one = drawn[number % DRAWN]
            form = forms.forms(plan.name, one.given.learner)[0]
            add_form(batch, pinned, plan.name, who, form, DAY)
            answers = answered(known[number % DRAWN], Random(who))
            file = AnswerFile(learner=who, sheet=plan.name, form=1, answers=answers)
            papers.append(Submission(file.name, sealed(file, form)))
    return papers


Choices = dict[str, list[tuple[str, str]]]
"""Of each question, for each part the right answer and one given by a slip."""


def choices(questions: dict[str, Question]) -> Choices:
    """Return what may be answered to a form, worked out once."""
    return {name: [_both(part) for part in one.parts] for name, one in questions.items()}


def _both(part: Part) -> tuple[str, str]:
    right = right_answer(part)
    slip = str(part.slips[0].value) if isinstance(part, NumberPart) and part.slips else right
    return right, slip


def answered(known: Choices, rng: Random) -> dict[str, Answer]:
    """Answer a form, one part in ten by a slip."""
    return {
        name: Answer(
            parts=tuple(slip if rng.random() < 0.1 else right for right, slip in parts), tries=1
        )
        for name, parts in known.items()
    }


def seconds(work: Callable[[], object]) -> float:
    """Time some work in this core's own time [s]."""
    began = time.process_time()
    work()
    return time.process_time() - began


def measured(folder: Path, count: int) -> dict[str, float]:
    """Measure each step of a term of one sheet."""
    folder.mkdir()
    record, plan = Record(folder / "record.db", examples.KEY), sheets.load("mixed_test")
    papers = given(record, plan, count)
    with record.reading() as connection:
        takers = Takers(connection, plan, record.key)
    found = {
        "alone": seconds(lambda: [takers.mark(one) for one in papers]),
        "keep": seconds(lambda: take_in(record, plan, papers, day=DAY)),
        "again": seconds(lambda: take_in(record, plan, papers, day=DAY)),
        "picture": seconds(lambda: picture(record, DAY, counting=Counting())),
        "check": seconds(lambda: check(record)),
        "copy": seconds(lambda: copy(record, folder / "copy.db")),
    }
    found["bytes"] = record.place.stat().st_size
    found["MB"] = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    record.close()
    return found


@pytest.mark.bench
def test_keeping_costs_little_beside_marking(tmp_path: Path) -> None:
    """Ten questions a hand-in: keeping, again, picture, check and copy at 1,000 and 10,000."""
    few, many = (measured(tmp_path / str(count), count) for count in COUNTS)
    for count, one in zip(COUNTS, (few, many), strict=True):
        said = ", ".join(f"{name} {value:.2f}" for name, value in one.items())
        sys.stdout.write(f"\n{count} hand-ins: {said}\n")
    assert many["keep"] <= KEEP * many["alone"]
    assert many["again"] <= AGAIN * many["alone"]
    assert many["picture"] <= PICTURE * many["alone"]
    assert many["check"] <= CHECK * many["alone"]
    assert many["bytes"] <= LARGEST
    assert many["MB"] <= MEMORY
    for name in ("keep", "again", "picture", "check"):
        assert many[name] <= STEP * few[name], name
