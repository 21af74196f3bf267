"""The made-up class: what its file plans is what marking finds, learner by learner."""

import csv
from pathlib import Path

import pytest
import seatwork
from seatwork import record
from seatwork.errors import SeatworkError
from seatwork.marking import (
    Marked,
    Marker,
    examples,
    results,
    roster,
    sheets,
    slip_count,
    typed_back,
)
from seatwork.marking.handed import Forms
from seatwork.record import forms, hand_out

PLANNED = Path(seatwork.__file__).parent / "marking" / "demo" / "class.csv"
NAMES = ("cones", "mixed_test")
# how marking calls what is no slip: a made-up factor and another learner's answer are unknown
KINDS = {"blank": "blank", "other unit": "other unit"}


def marked(folder: Path, name: str) -> list[Marked]:
    """Hand a sheet out to the class, let it answer, and mark it."""
    sheet = sheets.load(name)
    course = examples.make_course(folder / name)
    hand_out(course, sheet, examples.CLASS)
    typed = typed_back.read(examples.answer(course, sheet, forms(course)), sheet, forms(course))
    return Marker(sheet, forms(course)).mark(typed)


NAMED = ("slip", "several slips", "asks back")


def found(one: Marked) -> dict[str, str]:
    """List what is not right in one learner's answers, by its place."""
    return {
        item.id + (typed_back.PARTS[number] if len(item.verdicts) > 1 else ""): (
            verdict.slips[0].code if verdict.kind in NAMED else verdict.kind
        )
        for item in one.scored
        for number, verdict in enumerate(item.verdicts)
        if not verdict.is_right
    }


@pytest.mark.parametrize("name", NAMES)
def test_marking_finds_what_the_file_plans_and_nothing_else(tmp_path: Path, name: str) -> None:
    """Each planned slip is named by its code, and no right answer is called wrong."""
    with PLANNED.open(encoding="utf-8") as file:
        rows = [row for row in csv.DictReader(file) if row["sheet"] == name]
    assert len(rows) >= 10
    for one in marked(tmp_path, name):
        assert one.file is not None
        planned = {
            row["question"]: row["what"]
            if row["what"][0] == "M"
            else KINDS.get(row["what"], "wrong")
            for row in rows
            if row["learner"] == one.file.learner
        }
        assert found(one) == planned


def test_two_answers_of_another_are_put_as_a_question(tmp_path: Path) -> None:
    """L10 wrote two answers of L04: both are to be asked, and points are still given."""
    asked = {one.file.learner: one for one in marked(tmp_path, "mixed_test") if one.question}
    assert list(asked) == ["L10"]
    assert "L04: ask both" in asked["L10"].question
    assert asked["L10"].points is not None


def test_slips_are_counted_once_for_each_learner(tmp_path: Path) -> None:
    """L05 made the slip of the whole angle in two questions, and counts once."""
    data = results.as_data(sheets.load("mixed_test"), marked(tmp_path, "mixed_test"))
    first, *_ = rows = slip_count.counted(data)
    assert [len(row.learners) for row in rows] == sorted(
        (len(r.learners) for r in rows), reverse=True
    )
    (whole_angle,) = [row for row in rows if row.code == "M01"]
    assert whole_angle.learners == ("L01", "L05", "L07", "L12")
    assert whole_angle.questions == ("m2", "m8")
    assert first.code == "M25"
    assert str(first).startswith("M25: 5 learners, question m12: You measured at another place")


def test_a_slip_that_is_not_in_the_catalogue_is_told_as_ones_own() -> None:
    """An instructor's own type may have codes of its own."""
    question = {"id": "x1", "slips": ["M99"]}
    (row,) = slip_count.counted({"files": [{"learner": "L01", "questions": [question]}]})
    assert str(row) == "M99: 1 learner, question x1: a slip of a question type of your own"


def test_the_class_is_on_its_roster_and_its_numbers_stay(tmp_path: Path) -> None:
    """Twelve codes without a name; the same key gives the same answers again."""
    twice = [examples.make_course(tmp_path / place) for place in ("a", "b")]
    sheet = sheets.load("cones")
    texts = []
    for course in twice:
        assert [one.code for one in roster.read(course)] == list(examples.CLASS)
        hand_out(course, sheet, examples.CLASS)
        texts.append(examples.answer(course, sheet, forms(course)).read_text(encoding="utf-8"))
    assert texts[0] == texts[1]
    assert len(texts[0].splitlines()) == 1 + 12 * 4


def test_a_real_course_is_never_written_over(tmp_path: Path) -> None:
    """A folder with a course key is refused and left as it is."""
    (tmp_path / "course.key").write_text("mine")
    with pytest.raises(SeatworkError, match="a course is there already"):
        examples.make_course(tmp_path)
    assert [path.name for path in tmp_path.iterdir()] == ["course.key"]


def test_a_sheet_must_be_handed_out_first(tmp_path: Path) -> None:
    """Answers belong to numbers that somebody was given."""
    course = examples.make_course(tmp_path / "course")
    with pytest.raises(SeatworkError, match="hand it out first"):
        examples.answer(course, sheets.load("cones"), Forms())


def test_what_is_kept_and_what_is_marked_count_the_same(tmp_path: Path) -> None:
    """What is counted from the record is what is counted at once."""
    sheet, found_now = sheets.load("cones"), marked(tmp_path, "cones")
    kept = record.mark(tmp_path / "cones", sheet, tmp_path / "cones" / "answers.csv").results
    at_once = results.as_data(sheet, found_now)
    assert slip_count.counted(kept) == slip_count.counted(at_once)
