"""Papers whose seal is wrong or missing, in the record: none makes an honest one vanish."""

from dataclasses import replace

import pytest
from schools import School, points_of
from seatwork.marking import AnswerFile, examples, form_secret
from seatwork.record import Record, forms, report, results
from seatwork.record.choosing import count_paper
from seatwork.record.class_now import MISFIT

DAY, NEXT, DUE = "2026-09-10", "2026-09-11", "2026-09-14"


def saved(made: School, file: AnswerFile) -> AnswerFile:
    """Return a paper as the form's own page saves it."""
    form = forms(made.folder).form(file.sheet, file.learner, file.form)
    assert form is not None
    secret = form_secret(examples.KEY, form.form_id)
    return replace(file, form_id=form.form_id).sealed(secret)


def cell(record: Record) -> tuple[object, object, object]:
    """Return word, points and what is said of L01."""
    found = points_of(record)["L01", "cones"][0]
    assert isinstance(found, tuple)
    return found[0], found[1], found[4]


def wrong(file: AnswerFile) -> AnswerFile:
    """Return the paper with every answer wrong."""
    for name in file.answers:
        file = file.changed(name, parts=("9",))
    return file


@pytest.fixture
def honest(school) -> tuple[School, Record, AnswerFile, object]:
    """Give a course that has the honest paper of L01, and how it stands."""
    made = school(2, due=DUE)
    file = saved(made, made.papers[0])
    record = made.record
    made.take(record, (file,), DAY)
    return made, record, file, cell(record)


@pytest.mark.parametrize("seal", ["none", "wrong"])
def test_a_later_paper_without_a_fitting_seal_takes_no_mark_away(honest, seal: str) -> None:
    """Before the day the later of two counts, but never over one whose seal fits."""
    made, record, file, before = honest
    forged = wrong(file)
    forged = replace(forged, form_id="") if seal == "none" else replace(forged, seal="0" * 64)
    taken = made.take(record, (forged,), NEXT)
    assert taken.count["another"] == 1
    assert cell(record) == (before[0], before[1], MISFIT)
    assert len(results(record, "cones", NEXT)["files"]) == 1


def test_a_wrong_seal_waits_and_a_person_lets_it_count(school) -> None:
    """It is kept with its points by question; `count_paper` lets it count, with a reason."""
    made = school(2, due=DUE)
    record = made.record
    changed = replace(saved(made, made.papers[0]), seal="0" * 64)
    made.take(record, (changed,), DAY)
    word, points, why = cell(record)
    assert (word, points) == ("needs a person", None)
    assert str(why).startswith("its seal does not fit")
    told = str(report(record, "L01", NEXT))
    assert "your instructor looks at it: its seal does not fit" in told
    assert "ask the learner" not in told
    (one,) = results(record, "cones", NEXT)["files"]
    count_paper(record, one["id"], "the laptop fell, she showed me", NEXT)
    assert cell(record)[0] in ("passed", "not yet")
    (one,) = results(record, "cones", NEXT)["files"]
    assert one["state"] == "marked"
    assert "seal" not in one["note"]


def test_the_same_sealed_paper_is_one_fact(honest) -> None:
    """Sealing gives the same bytes for the same answers: taken in again, nothing is added."""
    made, record, _, before = honest
    count = record.count()
    again = made.take(record, (saved(made, made.papers[0]),), NEXT)
    assert again.count["known"] == 1
    assert record.count() == count
    assert cell(record) == before
