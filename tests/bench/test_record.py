"""What keeping a term costs: ratios to marking alone, and the growth from 1,000 to 10,000."""

import resource
import sys
import time
from collections.abc import Callable
from pathlib import Path
from random import Random

import pytest
from seatwork.marking import AnswerFile, Sheet, examples, sheets
from seatwork.marking.handing_out import hand_out
from seatwork.marking.submissions import Submission
from seatwork.marking.text import right_answer
from seatwork.questions.type.parts import NumberPart
from seatwork.record import Record, check, picture
from seatwork.record.class_now import Counting
from seatwork.record.copying import copy
from seatwork.record.formed import add_form, pin, read_forms
from seatwork.record.taking_in import Takers, take_in

DAY = "2026-09-14"
COUNTS = (1_000, 10_000)
PICTURE, AGAIN, CHECK, KEEP, STEP = 1.2, 3.0, 2.0, 5.0, 12.0
"""Most of each as a multiple of marking alone, and most of ten times as many."""
LARGEST, MEMORY = 60e6, 450.0


def given(record: Record, plan: Sheet, count: int) -> list[Submission]:
    """Hand a sheet out to many, and answer it as a class does."""
    learners = [f"{'ABCDEFGH'[n // 1_000_000]}{n:06d}" for n in range(count)]
    papers = []
    for start in range(0, count, 1_000):
        with record.writing() as batch:
            pinned, forms = pin(batch, plan, DAY), read_forms(batch.connection, plan.name).forms
            for one in hand_out(examples.KEY, forms, plan, learners[start : start + 1_000]):
                who = one.given.learner
                add_form(batch, pinned, plan.name, who, forms.forms(plan.name, who)[0], DAY)
                rng = Random(who)
                file = AnswerFile(learner=who, sheet=plan.name, form=1)
                for name, question in one.questions.items():
                    parts = tuple(
                        str(part.slips[0].value)
                        if isinstance(part, NumberPart) and part.slips and rng.random() < 0.1
                        else right_answer(part)
                        for part in question.parts
                    )
                    file = file.changed(name, parts=parts, tries=1)
                papers.append(Submission(file.name, file))
    return papers


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
        takers = Takers(connection, plan)
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
