"""The doctor looks at term records: whole, copied, closed to others."""

import os
import sqlite3
from pathlib import Path

import pytest
from seatwork.marking import sheets
from seatwork.opening import record_look
from seatwork.record import hand_out, leave, writable_record


@pytest.fixture
def book(tmp_path: Path) -> Path:
    """Give a workbook with a course whose first sheet was handed out."""
    cones = sheets.load("cones")
    hand_out(tmp_path / "course", cones, ("L01", "L02"), mode="graded", day="2026-09-14")
    return tmp_path


def faults(book: Path) -> list[str]:
    """Name the checks that found a fault."""
    return [one.name for one in record_look.records(book) if not one.passed]


def test_a_record_of_today_is_well(book: Path) -> None:
    """Three checks, none with a fault, each with another name."""
    names = [one.name for one in record_look.records(book)]
    assert len(set(names)) == 3
    assert faults(book) == []


def test_a_changed_fact_is_found(book: Path) -> None:
    """One size changed with a database tool is told."""
    with sqlite3.connect(book / "course/record.db") as base:
        base.execute("UPDATE form SET mode = 'practice'")
    base.close()
    assert faults(book) == ["record course"]


def test_a_damaged_record_is_told_and_stays(book: Path) -> None:
    """A record cut short ends no command with an error, and is not touched."""
    path = book / "course/record.db"
    path.write_bytes(path.read_bytes()[:3000])
    before = path.read_bytes()
    assert faults(book) == ["record course"]
    assert path.read_bytes() == before


def test_a_record_that_is_gone_is_told(book: Path) -> None:
    """The lines and copies beside it tell that there was one."""
    (book / "course/record.db").unlink()
    assert faults(book) == ["record course"]


def test_missing_copies_are_told(book: Path) -> None:
    """Without a copy there is nothing to go back to."""
    for path in (book / "course/copies").iterdir():
        path.unlink()
    assert faults(book) == ["copies of course"]


def test_a_copy_that_stayed_behind_is_told(book: Path) -> None:
    """Decisions of two days that no copy has are told with their days; those of one are not."""
    days = ("2026-09-21", "2026-09-28")
    made = [set((book / "course/copies").iterdir())]
    for learner, day in zip(("L01", "L02"), days, strict=True):
        record = writable_record(book / "course", day)
        leave(record, learner, f"moved away on {day}", day=day)
        record.close()
        made.append(set((book / "course/copies").iterdir()))
    assert faults(book) == []
    for path in made[-1] - made[0]:
        path.unlink()
    (told,) = [one for one in record_look.records(book) if not one.passed]
    assert (told.name, days[0] in told.found) == ("copies of course", True)


def test_a_key_that_is_gone_is_told(book: Path) -> None:
    """Without the course key no seal can be looked at."""
    (book / "course/course.key").unlink()
    (told,) = [one for one in record_look.records(book) if not one.passed]
    assert "course.key" in told.found


@pytest.mark.skipif(os.name != "posix", reason="this system has no such rights")
def test_rights_of_others_are_told(book: Path) -> None:
    """A record that other accounts can read is named."""
    (book / "course/record.db").chmod(0o644)
    (told,) = [one for one in record_look.records(book) if not one.passed]
    assert "record.db" in told.found


def test_without_a_record_nothing_is_said(tmp_path: Path) -> None:
    """A learner's workbook has none."""
    assert list(record_look.records(tmp_path)) == []
