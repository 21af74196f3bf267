"""Marking: every file once, doubts to a person, others still marked, overrides with reasons."""

from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking import (
    Answer,
    AnswerFile,
    Handout,
    Marked,
    Sheet,
    course,
    handed,
    mark,
    overriding,
)
from seatwork.marking import results as kept
from seatwork.marking.overriding import Override
from seatwork.questions.type.parts import NumberPart

Right = Callable[[str], AnswerFile]


def only(marked: list[Marked]) -> Marked:
    """Give the one file that was marked."""
    assert len(marked) == 1
    return marked[0]


def test_all_right_earns_all_points(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """A file with every answer right gets the sheet's 7 points."""
    right_file("L01").save(handed_in)
    one = only(mark(course_folder, sheet, handed_in))
    assert not one.needs_a_person
    assert one.points == pytest.approx(7)


def test_points_follow_the_parts(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """A blank costs its points, and half of a question in two parts earns half."""
    file = right_file("L01").changed("q1", parts=("",)).changed("q3", parts=("flush",))
    typed = right_file("L01").of("q3").parts
    file.changed("q3", parts=(typed[0], "")).save(handed_in)
    assert only(mark(course_folder, sheet, handed_in)).points == pytest.approx(1 + 2)


def test_the_accepted_band_is_inclusive_and_exact(
    course_folder: Path,
    sheet: Sheet,
    handed_in: Path,
    right_file: Right,
    handouts: dict[str, Handout],
) -> None:
    """Both ends of the band are right, a hair beyond is not; decimals, never floats."""
    part = handouts["L01"].questions["q2"].parts[0]
    assert isinstance(part, NumberPart)
    low, high = part.band
    hair = Decimal("0.0000001")
    for number, right in ((low, True), (high, True), (low - hair, False), (high + hair, False)):
        right_file("L01").changed("q2", parts=(f"{number:f}",)).save(handed_in)
        scored = mark(course_folder, sheet, handed_in)[0].scored[1]
        assert scored.verdicts[0].is_right is right


def test_every_file_appears_exactly_once(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Good, damaged, foreign and nested files are all listed, the good ones marked."""
    right_file("L01").save(handed_in)
    right_file("L02").save(handed_in / "group" / "b")
    (handed_in / "L03-small-1.json").write_bytes(b"{")
    (handed_in / "work.ipynb").write_text("{}", encoding="utf-8")
    (handed_in / "all.zip").write_bytes(b"PK\x03\x04")
    (handed_in / "empty").mkdir()
    names = [one.name for one in mark(course_folder, sheet, handed_in)]
    assert names == [
        *("L01-small-1.json", "L03-small-1.json", "all.zip"),
        *("group/b/L02-small-1.json", "work.ipynb"),
    ]
    marked = mark(course_folder, sheet, handed_in)
    assert [one.name for one in marked if not one.needs_a_person] == [names[0], names[3]]


def test_doubtful_files_go_to_a_person(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Wrong name, wrong sheet, unknown form, strange question, new numbers: blank, with why."""
    good = right_file("L01")
    (handed_in / "L02-small-1.json").write_bytes(good.content())
    replace(good, sheet="cones").save(handed_in)
    replace(good, form=9).save(handed_in)
    replace(good, learner="L99").save(handed_in)
    right_file("L03").changed("q9", parts=("1",)).save(handed_in)
    right_file("L04").changed("q1", attempt=2).save(handed_in)
    marked = mark(course_folder, sheet, handed_in)
    assert len(marked) == 6
    assert all(one.needs_a_person and one.points is None for one in marked)


def test_a_form_handed_in_twice_goes_to_a_person(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """The same file twice counts once; two different ones are both left to a person."""
    right_file("L01").save(handed_in / "a")
    right_file("L01").save(handed_in / "b")
    first, second = mark(course_folder, sheet, handed_in)
    assert first.points == pytest.approx(7)
    assert second.same_as == "a/L01-small-1.json"
    assert second.points is None
    right_file("L01").changed("q1", parts=("1",)).save(handed_in / "b")
    assert all(one.needs_a_person for one in mark(course_folder, sheet, handed_in)[:2])


def test_tries_beyond_the_limit_go_to_a_person(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """A learner with extra tries on the roster may use them, another may not."""
    limited = replace(sheet, tries=3)
    (course_folder / "roster.csv").write_text("learner,group,extra_tries\nL02,,2\n")
    for learner in ("L01", "L02"):
        right_file(learner).changed("q1", tries=5).save(handed_in)
    first, second = mark(course_folder, limited, handed_in)
    assert first.needs_a_person
    assert second.points == pytest.approx(7)


def test_hints_cost_what_the_sheet_says(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Two hints at a quarter each leave half of the points."""
    right_file("L01").changed("q1", hints=2).save(handed_in)
    one = only(mark(course_folder, replace(sheet, hint_cost=0.25), handed_in))
    assert one.points == pytest.approx(7 - 1)


def test_answers_that_fit_another_are_put_as_a_question(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Another learner's answers under one's own code are wrong, and asked about."""
    copied = replace(right_file("L02"), learner="L01")
    copied.save(handed_in)
    one = only(mark(course_folder, sheet, handed_in))
    assert "L02" in one.question
    assert one.question.endswith("ask both")
    assert not one.needs_a_person


def test_a_form_that_is_asked_no_more_stops_nobody(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Sizes of another version leave their own paper to a person; a likeness is still asked of."""
    replace(right_file("L02"), learner="L01").save(handed_in)
    right_file("L03").save(handed_in)
    record = handed.read(course_folder)
    record.forms("small", "L03")[0].sizes["q1"]["no_such_size"] = 1.0
    record.save(course_folder)
    copied, other = mark(course_folder, sheet, handed_in)
    assert "L02" in copied.question
    assert other.doubt.startswith("marking it failed")


def test_an_override_counts_and_says_why(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Points given by a person stand in for the computed ones, the reason beside them."""
    right_file("L01").changed("q1", parts=("9",)).save(handed_in)
    row = Override(
        date="2026-03-02",
        learner="L01",
        sheet="small",
        form=1,
        question="q1",
        points=1.5,
        reason="=working right, misread the print",
    )
    overriding.add(course_folder, row)
    one = only(mark(course_folder, sheet, handed_in))
    assert one.points == pytest.approx(6.5)
    assert one.overrides[0] == row
    text = (course_folder / overriding.FILE).read_text(encoding="utf-8")
    assert "\"'=working" in text or ",'=working" in text


def test_an_override_without_reason_is_refused(course_folder: Path) -> None:
    """A reason is a must."""
    row = Override(
        date="2026-03-02", learner="L01", sheet="small", form=1, question="q1", points=1, reason=" "
    )
    with pytest.raises(SeatworkError, match="reason"):
        overriding.add(course_folder, row)


def test_marking_again_shows_what_changed(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Old and new points stand side by side after a change."""
    key = course.read_key(course_folder)
    right_file("L01").changed("q1", parts=("9",)).save(handed_in)
    old = kept.as_data(sheet, mark(course_folder, sheet, handed_in), "2026-03-02")
    right_file("L01").save(handed_in)
    new = kept.as_data(sheet, mark(course_folder, sheet, handed_in), "2026-03-03")
    assert kept.compare(old, new) == [("L01, form 1", "q1", 0, pytest.approx(2))]
    assert kept.seal(old, key) != kept.seal(new, key)


def test_a_mended_type_is_recomputed_from_the_sizes_kept(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """A question of a new version is computed anew; what was drawn stays what was asked."""
    mended = type("Mended", (sheet.items[1].kind,), {"version": 2, "value": lambda q: q.height})
    items = (sheet.items[0], replace(sheet.items[1], kind=mended), sheet.items[2])
    right_file("L01").save(handed_in)
    before = only(mark(course_folder, sheet, handed_in))
    after = only(mark(course_folder, replace(sheet, items=items), handed_in))
    assert before.points == pytest.approx(7)
    assert after.points == pytest.approx(6)


def test_results_edited_by_hand_are_noticed(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right, tmp_path: Path
) -> None:
    """A changed number of points breaks the seal."""
    key = course.read_key(course_folder)
    right_file("L01").save(handed_in)
    kept.write(tmp_path, sheet, mark(course_folder, sheet, handed_in), key, "2026-03-02")
    path = tmp_path / "small-results.json"
    assert kept.read(path, key)["files"][0]["points"] == pytest.approx(7)
    path.write_text(path.read_text(encoding="utf-8").replace('"form": 1', '"form": 2'))
    with pytest.raises(SeatworkError, match="changed by hand"):
        kept.read(path, key)


def test_unknown_wrong_numbers_are_listed(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """A number no slip explains is kept for whoever writes the next slip."""
    right_file("L01").changed("q2", parts=("7.777",)).save(handed_in)
    found = kept.unknown(mark(course_folder, sheet, handed_in))
    assert found == [{"learner": "L01", "question": "q2", "typed": ["7.777"]}]


def test_a_learner_who_is_sure_is_noted(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right, tmp_path: Path
) -> None:
    """The mark "I think this is right" reaches the instructor's list."""
    right_file("L01").changed("q2", parts=("9",), sure=True).save(handed_in)
    key = course.read_key(course_folder)
    kept.write(tmp_path, sheet, mark(course_folder, sheet, handed_in), key, "2026-03-02")
    assert "sure of q2" in (tmp_path / "small-marks.csv").read_text(encoding="utf-8")


def test_an_empty_answer_file_is_marked_as_blank(
    course_folder: Path, sheet: Sheet, handed_in: Path, handouts: dict[str, Handout]
) -> None:
    """No answer at all is zero points, not a doubt."""
    AnswerFile(learner="L01", sheet="small", form=1, answers={"q1": Answer()}).save(handed_in)
    one = only(mark(course_folder, sheet, handed_in))
    assert one.points == 0
    assert {verdict.kind for item in one.scored for verdict in item.verdicts} == {"blank"}
