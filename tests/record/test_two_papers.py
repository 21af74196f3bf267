"""Two papers of one form: both are kept, and which counts is a house rule."""

import pytest
from schools import School, given, points_of
from seatwork.errors import SeatworkError
from seatwork.record import Override, Record, check, override, report, results
from seatwork.record.cells import Counting
from seatwork.record.choosing import count_paper
from seatwork.record.class_now import Class
from seatwork.record.deciding import undo
from seatwork.record.history import history
from seatwork.record.marking_course import _kept
from seatwork.record.which_paper import DECIDED

DAY, LATER, DUE = "2026-09-10", "2026-09-14", "2026-09-14"
AFTER = "2026-09-20"


def cell(record: Record, rule: str = "later until due") -> tuple[float | None, str]:
    """Return the points of L01 and what is said of them."""
    with record.reading() as connection:
        now = Class(connection, "2026-12-01", counting=Counting(paper=rule))
        one = now.grid()["L01", "cones"][0]
        return one.points, one.why


@pytest.fixture
def two(school) -> tuple[School, tuple, tuple, float, float]:
    """Give a course, two papers of L01, and the points of each alone."""
    made = school(2, due=DUE)
    first = made.papers[:1]
    worse = (made.other(0, c1="9", c2="9"),)
    record = made.record
    made.take(record, first, DAY)
    best = cell(record)[0]
    record.close()
    assert best is not None
    return made, first, worse, best, best - 3


def test_until_the_day_the_later_counts(two) -> None:
    """A learner hands in again before the day: that one counts, and nothing is to be looked at."""
    made, _, worse, best, _ = two
    record = made.record
    assert made.take(record, worse, LATER).count == {"another": 1}
    points, why = cell(record)
    assert points is not None
    assert points < best
    assert why == ""
    assert check(record) == []


def test_after_the_day_the_first_stands(two) -> None:
    """A paper that comes after the day takes no mark away; the cell says that it came."""
    made, _, worse, best, _ = two
    record = made.record
    made.take(record, worse, AFTER)
    assert cell(record) == (best, "another paper came after the day: look")


@pytest.mark.parametrize(("came", "new", "changed"), [(LATER, 0, 1), (AFTER, 1, 0)])
def test_only_a_mark_that_is_another_now_is_told_as_changed(two, came, new, changed) -> None:
    """A paper after the day is new and changes no mark, so nobody is told that one changed."""
    made, _, worse, _, _ = two
    done = _kept(made.record, made.folder, made.plan, given(worse), came, came)
    assert (done.new, done.known, done.changed) == (new, 0, changed)
    assert bool(done.changes) is bool(changed)


@pytest.mark.parametrize(("rule", "later"), [("first", False), ("last", True)])
def test_the_house_may_count_the_first_or_the_last(two, rule: str, later: bool) -> None:
    """By the other rules the day is not asked."""
    made, _, worse, best, _ = two
    record = made.record
    made.take(record, worse, AFTER if later else LATER)
    points, _ = cell(record, rule)
    assert (points == best) == (not later)


def test_two_at_once_wait_for_a_person(school) -> None:
    """Nothing says which of two in one pile is the later one."""
    made = school(1)
    other = (made.other(0, c1="9"),)
    record = made.record
    made.take(record, made.papers + other, DAY)
    assert cell(record) == (None, "2 papers with other answers came at once: look")
    rows = results(record, "cones", DAY)["files"]
    assert len(rows) == 2
    assert {row["state"] for row in rows} == {"needs a person"}


def test_one_of_two_is_taken_back(school) -> None:
    """A person takes one back, and the other counts."""
    made = school(1)
    other = (made.other(0, c1="9"),)
    record = made.record
    made.take(record, made.papers, DAY)
    alone = cell(record)[0]
    made.take(record, made.papers + other, LATER)
    assert cell(record)[0] != alone
    (row,) = results(record, "cones", DAY)["files"]
    undo(record, row["id"], "typed by somebody else", LATER)
    assert cell(record)[0] == alone


def test_no_paper_makes_another_vanish(two) -> None:
    """Every paper that ever came is in the record, byte for byte."""
    from seatwork.record.tables import paper
    from sqlalchemy import select

    made, first, worse, _, _ = two
    record = made.record
    made.take(record, worse, AFTER)
    made.take(record, first, AFTER)
    with record.reading() as connection:
        kept = set(connection.execute(select(paper.c.content)).scalars())
    assert kept == {first[0].content(), worse[0].content()}


def test_the_same_paper_from_two_instructors_is_one(school, tmp_path) -> None:
    """Marked by both on two days, it is one fact after combining."""
    from seatwork.record.copying import copy
    from seatwork.record.merging import combine

    made = school(2)
    record = made.record
    other = Record(copy(record, tmp_path / "other" / "record.db"), record.key, "I2")
    made.take(record, made.papers, DAY)
    made.take(other, made.papers, AFTER)
    before = points_of(record)
    assert combine(record, other.place).added == 0
    assert points_of(record) == before


def test_a_person_says_which_of_two_counts(school) -> None:
    """Of two in one pile either can be chosen, also the other one after; all stay kept."""
    made = school(1)
    other = made.other(0, c1="9")
    record = made.record
    made.take(record, (made.papers[0],), DAY)
    best = cell(record)[0]
    made.take(record, (made.papers[0], other), DAY)
    ids = [line.id for line in history(record, "L01") if line.text.startswith("paper")]
    assert len(ids) == 2
    found = set()
    for paper in ids:
        count_paper(record, paper[:6], "looked at both", DAY)
        found.add(cell(record))
    assert found == {(best, ""), (best - 2, "")}
    assert check(record) == []


def test_a_choice_falls_with_its_paper_and_tells_of_a_later_one(two) -> None:
    """A paper that was taken back does not count; one that came after the choice is told."""
    made, _, worse, best, _ = two
    record = made.record
    (paper,) = [line.id for line in history(record, "L01") if line.text.startswith("paper")]
    count_paper(record, paper, "seen being written", DAY)
    made.take(record, worse, LATER)
    assert cell(record) == (best, DECIDED)
    undo(record, paper, "typed by somebody else", LATER)
    points, why = cell(record)
    assert points is not None
    assert points < best
    assert why == ""
    with pytest.raises(SeatworkError, match="was taken back"):
        count_paper(record, paper, "after all", LATER)


def test_only_a_paper_is_chosen(school) -> None:
    """What is no paper is refused, and how to find one is said."""
    made = school(1)
    record = made.record
    form = history(record, "L01")[0]
    with pytest.raises(SeatworkError, match="no paper"):
        count_paper(record, form.id, "by mistake", DAY)


def test_a_learners_report_says_nothing_to_the_instructor(two) -> None:
    """On the page a learner gets, what is to be looked at is in other words."""
    made, _, worse, _, _ = two
    record = made.record
    made.take(record, worse, AFTER)
    said = str(report(record, "L01", AFTER))
    assert "look" not in said
    assert "another paper came after the day; your instructor knows of it" in said


def test_points_by_hand_on_an_earlier_paper_are_told(two) -> None:
    """A better paper that comes later keeps points given by hand before, and the cell says so."""
    made, _, worse, _, _ = two
    record = made.record
    override(record, Override("L01", "cones", 1, "c1", 0.5, "method was right"), DAY)
    assert cell(record)[1] == ""
    made.take(record, worse, LATER)
    assert "points by hand on c1 may be for another paper: look" in cell(record)[1]
