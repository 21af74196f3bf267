"""Numbers typed alike in a class with own numbers: honest papers against copied ones."""

import pytest
from schools import School, given
from seatwork.marking.alike import alike
from seatwork.record import results
from seatwork.record.marking_course import _kept

from tests.as_saved import as_saved

pytestmark = pytest.mark.slow
DAY = "2026-09-10"


def test_copied_numbers_are_asked_about_and_honest_ones_are_not(school) -> None:
    """Of 24 honest papers no pair is asked about; a paper copied by one is."""
    made: School = school(24, "mixed_test")
    record = made.record
    done = _kept(record, made.folder, made.plan, given(made.papers), DAY, DAY)
    assert done.notes == ()
    thief, owner = made.papers[:2]
    for name, one in owner.answers.items():
        thief = thief.changed(name, parts=one.parts)
    thief = as_saved(made.folder, thief)
    done = _kept(record, made.folder, made.plan, given((thief,)), DAY, "2026-09-11")
    assert any(said.startswith("L01 and L02 typed the same numbers in") for said in done.notes)
    rows = results(record, "mixed_test", DAY)["files"]
    assert len(alike(rows)) == 1
    assert not any("same numbers" in row["note"] for row in rows)
    assert b"same numbers" not in (made.folder / "mixed_test-marks.csv").read_bytes()
