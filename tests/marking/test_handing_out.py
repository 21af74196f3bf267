"""Handing out: own numbers, the same again, never the same re-test, the key kept."""

import os
import stat
from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking import Handout, Sheet, course, given, sheets
from seatwork.record import forms, hand_out
from seatwork.record.keeping import NAME

LEARNERS = ("L01", "L02", "L03", "L04")


def test_learners_get_numbers_of_their_own(handouts: dict[str, Handout]) -> None:
    """No two of four learners have the same sheet, and all have the same types."""
    sheets_seen = {tuple(q.ask() for q in one.questions.values()) for one in handouts.values()}
    assert len(sheets_seen) == len(LEARNERS)
    assert {tuple(type(q) for q in one.questions.values()) for one in handouts.values()} == {
        tuple(type(q) for q in handouts["L01"].questions.values())
    }


def test_handing_out_again_changes_no_byte(
    course_folder: Path, sheet: Sheet, handouts: dict[str, Handout], tmp_path: Path
) -> None:
    """A second run gives the same forms and the same record."""
    before = (course_folder / NAME).read_bytes()
    again = hand_out(course_folder, sheet, LEARNERS, target=tmp_path / "given")
    assert (course_folder / NAME).read_bytes() == before
    assert {one.given.learner: one for one in again} == handouts


def test_a_learner_draws_the_same_numbers_from_what_was_given(
    course_folder: Path, sheet: Sheet, handouts: dict[str, Handout], tmp_path: Path
) -> None:
    """The sizes in ``given.json`` are enough; no seed and no course key is in it."""
    hand_out(course_folder, sheet, LEARNERS, target=tmp_path / "given")
    path = tmp_path / "given" / "L02" / "small.given.json"
    mine = given.read(path)
    asked = {item.id: mine.question(sheet, item.id) for item in sheet.items}
    assert asked == handouts["L02"].questions
    assert mine.seed == b""
    assert "seed" not in path.read_text(encoding="utf-8")
    assert course.read_key(course_folder).hex() not in path.read_text(encoding="utf-8")


def test_drawn_sizes_come_back_from_the_record(
    course_folder: Path, sheet: Sheet, handouts: dict[str, Handout]
) -> None:
    """Marking reads the sizes kept, and they give the questions that were asked."""
    record = forms(course_folder)
    form = record.form("small", "L03", 1)
    assert form is not None
    assert form.questions(sheet) == handouts["L03"].questions


def test_a_re_test_never_repeats_a_question(course_folder: Path, sheet: Sheet) -> None:
    """Over five sittings no question of a learner has numbers it had before."""
    seen: dict[str, list[str]] = {}
    for sitting in range(1, 6):
        for one in hand_out(course_folder, sheet, LEARNERS, sitting=sitting):
            for name, question in one.questions.items():
                asked = seen.setdefault(f"{one.given.learner} {name}", [])
                assert question.ask() not in asked
                asked.append(question.ask())


def test_a_sitting_cannot_be_skipped(course_folder: Path, sheet: Sheet) -> None:
    """The second sitting comes after the first."""
    with pytest.raises(SeatworkError, match="hand out sitting 1"):
        hand_out(course_folder, sheet, LEARNERS, sitting=2)


@pytest.mark.skipif(os.name != "posix", reason="permissions of this kind are POSIX")
def test_the_course_key_is_for_its_owner_alone(
    course_folder: Path, handouts: dict[str, Handout]
) -> None:
    """The key is made readable for its owner only, and refused when others can read it."""
    path = course_folder / course.KEY_FILE
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    path.chmod(0o644)
    with pytest.raises(SeatworkError, match="chmod 600"):
        course.read_key(course_folder)


def test_a_lost_key_is_told(tmp_path: Path) -> None:
    """Without a key there is a sentence with what would do."""
    with pytest.raises(SeatworkError, match="no course key"):
        course.read_key(tmp_path)


def test_a_damaged_record_is_told(course_folder: Path, handouts: dict[str, Handout]) -> None:
    """A record that cannot be read is never written over."""
    (course_folder / NAME).write_bytes(b"{" * 5000)
    with pytest.raises(SeatworkError, match="damaged"):
        forms(course_folder)
    assert (course_folder / NAME).read_bytes() == b"{" * 5000


@pytest.mark.parametrize(
    ("line", "fault"),
    [
        ("fromat = 1", "not known"),
        ("format = 2", "format"),
        ('mode = "exam"', "not known"),
        ("hint_cost = 2", "out of range"),
        ('[[questions]]\nid = "1"\ntype = "seat-depth"', "question id"),
        ('[[questions]]\nid = "q1"\ntype = "no-such-type"', "no question type"),
        ('[[questions]]\nid = "q1"\ntype = "seat-depth"\nsystem = "imperial"', "not known"),
    ],
)
def test_a_fault_in_a_sheet_is_named(tmp_path: Path, line: str, fault: str) -> None:
    """Unknown keys and values out of range are refused with the file and what would do."""
    path = tmp_path / "odd.toml"
    kept = "" if line.startswith("format") else "format = 1\n"
    one = "" if "[[" in line else '[[questions]]\nid = "q1"\ntype = "seat-depth"\n'
    path.write_text(f"{kept}{line}\n{one}", encoding="utf-8")
    with pytest.raises(SeatworkError, match=fault):
        sheets.read(path)
