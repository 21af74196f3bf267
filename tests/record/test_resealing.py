"""A course key that is lost or stolen: the record is sealed anew, and says what that costs."""

import sqlite3
from contextlib import closing

import pytest
from schools import School, answered, given, points_of
from seatwork.errors import SeatworkError
from seatwork.marking.marker import CHANGED, OTHER_KEY
from seatwork.record import Override, check, hand_out, override
from seatwork.record.looking_over import look_over
from seatwork.record.marking_course import mark
from seatwork.record.resealing import reseal, why_not
from test_sealed_papers import saved

DAY, NEXT = "2026-09-10", "2026-09-11"


@pytest.fixture
def kept(school) -> tuple[School, object, list]:
    """Give a course with marks and a decision, how it stands, and a sealed paper still to come."""
    made: School = school(3)
    record = made.record
    made.take(record, made.papers[:2], DAY)
    override(record, Override("L01", "cones", 1, "c1", 0.5, "method was right"), DAY)
    before = points_of(record)
    later = saved(made, made.papers[2])
    record.close()
    return made, before, [later]


def test_a_lost_key_loses_no_mark(kept) -> None:
    """Nothing opens without the key; sealed anew, all stands, copies and lines too."""
    made, before, _ = kept
    (made.folder / "course.key").unlink()
    with pytest.raises(SeatworkError, match="seatwork record reseal"):
        mark(made.folder, made.plan, made.folder, day=NEXT)
    assert why_not(made.folder) == ""
    done = reseal(made.folder)
    record = made.record
    assert done.facts == record.count()
    assert done.copies == len(list((made.folder / "copies").glob("*.db")))
    assert points_of(record) == before
    assert look_over(record, made.folder) == []
    assert (made.folder / "course.key").stat().st_mode & 0o077 == 0


def test_a_paper_of_before_counts_and_is_asked_about(kept, tmp_path) -> None:
    """Its seal cannot be looked at with another key; one of a form given since is looked at."""
    made, _, later = kept
    reseal(made.folder, stolen=True)
    record = made.record
    taken = made.take(record, tuple(later), NEXT)
    assert [one.question for one in taken.marked] == [OTHER_KEY]
    assert taken.marked[0].points is not None
    record.close()
    hand_out(made.folder, "angles", ["L01"], mode="graded", day=NEXT)
    file = answered(made.folder, "angles", "L01", 1)
    (tmp_path / "in").mkdir()
    sealed = saved(made, file)  # with the key that was given up
    (tmp_path / "in" / sealed.name).write_bytes(sealed.content())
    (found,) = mark(made.folder, "angles", tmp_path / "in", day=NEXT).marked
    assert found.doubt == CHANGED


def test_a_key_that_fits_is_not_given_up_unsaid(kept) -> None:
    """Only where it is said to be stolen."""
    made, _, _ = kept
    key = (made.folder / "course.key").read_bytes()
    assert "--new-key" in why_not(made.folder)
    with pytest.raises(SeatworkError, match="if it was stolen, add --new-key"):
        reseal(made.folder)
    assert (made.folder / "course.key").read_bytes() == key
    reseal(made.folder, stolen=True)
    assert (made.folder / "course.key").read_bytes() != key


def test_what_was_changed_by_hand_is_never_sealed(kept) -> None:
    """A point changed with a database tool, or one fact with another seal, is refused."""
    made, _, _ = kept
    place = made.folder / "record.db"
    sound = place.read_bytes()
    with closing(sqlite3.connect(place)) as tool, tool:
        tool.execute("UPDATE answer SET points = 0 WHERE question = 'c2'")
    assert "was changed by hand" in why_not(made.folder, stolen=True)
    place.write_bytes(sound)
    with closing(sqlite3.connect(place)) as tool, tool:
        tool.execute("UPDATE fact SET seal = ? WHERE kind = 'override'", ("0" * 32,))
    assert "somebody else put them in" in why_not(made.folder, stolen=True)


def test_a_practice_form_of_before_is_not_given_again(school) -> None:
    """Its numbers would be drawn by the new key, and marked by the old ones."""
    made: School = school(1)
    hand_out(made.folder, "angles", ["L01"], mode="practice", day=DAY)
    reseal(made.folder, stolen=True)
    with pytest.raises(SeatworkError, match="another course key; give new numbers: --sitting 2"):
        hand_out(made.folder, "angles", ["L01"], mode="practice", day=NEXT)
    again = hand_out(made.folder, "cones", ["L01"], day=NEXT)
    assert again[0].given.sizes
    assert check(made.record) == []
    assert made.take(made.record, tuple(one.file for one in given(made.papers)), NEXT).marked
