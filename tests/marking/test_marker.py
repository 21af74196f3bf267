"""Marking: every file once, doubts to a person, others still marked, overrides with reasons."""

from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest
from seatwork import record
from seatwork.marking import Answer, AnswerFile, Handout, Marked, Marker, Sheet, mark, submissions
from seatwork.marking.results import as_data
from seatwork.questions.type.parts import NumberPart
from seatwork.record import forms

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
    one = only(mark(forms(course_folder), sheet, handed_in))
    assert not one.needs_a_person
    assert one.points == pytest.approx(7)


def test_points_follow_the_parts(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """A blank costs its points, and half of a question in two parts earns half."""
    file = right_file("L01").changed("q1", parts=("",)).changed("q3", parts=("flush",))
    typed = right_file("L01").of("q3").parts
    file.changed("q3", parts=(typed[0], "")).save(handed_in)
    assert only(mark(forms(course_folder), sheet, handed_in)).points == pytest.approx(1 + 2)


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
        scored = mark(forms(course_folder), sheet, handed_in)[0].scored[1]
        assert scored.verdicts[0].is_right is right


@pytest.mark.parametrize(
    ("name", "taken"),
    [
        ("homework.json", True),
        ("answers of Tuesday (2).json", True),
        ("L01 cones.json", True),
        ("L02 cones.json", False),
        ("L02-cones-1.json", False),
        ("L01-cones-2.json", False),
        ("L01-angles-1.json", False),
    ],
)
def test_a_name_given_by_hand_says_nothing_and_anothers_is_for_a_person(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right, name: str, taken: bool
) -> None:
    """What is inside says whose paper it is, unless the name says another learner or form."""
    file = right_file("L01")
    file.save(handed_in)
    (handed_in / file.name).rename(handed_in / name)
    one = only(mark(forms(course_folder), sheet, handed_in))
    assert one.needs_a_person is not taken
    assert (one.file is not None) is taken


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
    names = [one.name for one in mark(forms(course_folder), sheet, handed_in)]
    assert names == [
        *("L01-small-1.json", "L03-small-1.json", "all.zip"),
        *("group/b/L02-small-1.json", "work.ipynb"),
    ]
    marked = mark(forms(course_folder), sheet, handed_in)
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
    marked = mark(forms(course_folder), sheet, handed_in)
    assert len(marked) == 6
    assert all(one.needs_a_person and one.points is None for one in marked)


def test_a_form_handed_in_twice_goes_to_a_person(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """The same file twice counts once; two different ones are both left to a person."""
    right_file("L01").save(handed_in / "a")
    right_file("L01").save(handed_in / "b")
    first, second = mark(forms(course_folder), sheet, handed_in)
    assert first.points == pytest.approx(7)
    assert second.same_as == "a/L01-small-1.json"
    assert second.points is None
    right_file("L01").changed("q1", parts=("1",)).save(handed_in / "b")
    assert all(one.needs_a_person for one in mark(forms(course_folder), sheet, handed_in)[:2])


def test_tries_beyond_the_limit_go_to_a_person(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """A learner with extra tries on the roster may use them, another may not."""
    limited = replace(sheet, tries=3)
    for learner in ("L01", "L02"):
        right_file(learner).changed("q1", tries=5).save(handed_in)
    marker = Marker(limited, forms(course_folder), {"L02": 2})
    first, second = marker.mark(submissions.collect(handed_in))
    assert first.needs_a_person
    assert second.points == pytest.approx(7)


def test_hints_cost_what_the_sheet_says(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Two hints at a quarter each leave half of the points."""
    right_file("L01").changed("q1", hints=2).save(handed_in)
    one = only(mark(forms(course_folder), replace(sheet, hint_cost=0.25), handed_in))
    assert one.points == pytest.approx(7 - 1)


def test_answers_that_fit_another_are_put_as_a_question(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Another learner's answers under one's own code are wrong, and asked about."""
    copied = replace(right_file("L02"), learner="L01")
    copied.save(handed_in)
    one = only(mark(forms(course_folder), sheet, handed_in))
    assert "L02" in one.question
    assert one.question.endswith("ask both")
    assert not one.needs_a_person


def test_a_form_that_is_asked_no_more_stops_nobody(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Sizes of another version leave their own paper to a person; a likeness is still asked of."""
    replace(right_file("L02"), learner="L01").save(handed_in)
    right_file("L03").save(handed_in)
    given = forms(course_folder)
    given.forms("small", "L03")[0].sizes["q1"]["no_such_size"] = 1.0
    copied, other = mark(given, sheet, handed_in)
    assert "L02" in copied.question
    assert other.doubt.startswith("marking it failed")


def test_marking_again_shows_what_changed(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Old and new points stand side by side after a change."""
    right_file("L01").changed("q1", parts=("9",)).save(handed_in)
    record.mark(course_folder, sheet, handed_in)
    right_file("L01").save(handed_in)
    again = record.mark(course_folder, sheet, handed_in)
    assert again.changes == (("L01, form 1", "q1", 0, pytest.approx(2)),)


def test_a_mended_type_is_recomputed_from_the_sizes_kept(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """A question of a new version is computed anew; what was drawn stays what was asked."""
    mended = type("Mended", (sheet.items[1].kind,), {"version": 2, "value": lambda q: q.height})
    items = (sheet.items[0], replace(sheet.items[1], kind=mended), sheet.items[2])
    right_file("L01").save(handed_in)
    before = only(mark(forms(course_folder), sheet, handed_in))
    after = only(mark(forms(course_folder), replace(sheet, items=items), handed_in))
    assert before.points == pytest.approx(7)
    assert after.points == pytest.approx(6)


def test_unknown_wrong_numbers_are_listed(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """A number no slip explains is kept for whoever writes the next slip."""
    right_file("L01").changed("q2", parts=("7.777",)).save(handed_in)
    found = as_data(sheet, mark(forms(course_folder), sheet, handed_in))
    assert found["unknown"] == [{"learner": "L01", "question": "q2", "typed": ["7.777"]}]


def test_a_learner_who_is_sure_is_noted(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """The mark "I think this is right" reaches the instructor's list."""
    right_file("L01").changed("q2", parts=("9",), sure=True).save(handed_in)
    record.mark(course_folder, sheet, handed_in)
    assert "sure of q2" in (course_folder / "small-marks.csv").read_text(encoding="utf-8")


def test_an_empty_answer_file_is_marked_as_blank(
    course_folder: Path, sheet: Sheet, handed_in: Path, handouts: dict[str, Handout]
) -> None:
    """No answer at all is zero points, not a doubt."""
    AnswerFile(learner="L01", sheet="small", form=1, answers={"q1": Answer()}).save(handed_in)
    one = only(mark(forms(course_folder), sheet, handed_in))
    assert one.points == 0
    assert {verdict.kind for item in one.scored for verdict in item.verdicts} == {"blank"}
