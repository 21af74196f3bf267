"""Damage, copies, combining and erasing: nothing that was kept is lost, and nothing is doubled."""

import sqlite3
from pathlib import Path
from random import Random

import pytest
from schools import School, points_of
from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.record import Override, Record, check, override, writable_record
from seatwork.record.bringing_back import bring_back
from seatwork.record.copying import KEEP, by_size, copy, copy_for_day
from seatwork.record.deciding import excuse, leave, undo
from seatwork.record.erasing import erase
from seatwork.record.merging import combine, disagreements

pytestmark = pytest.mark.slow
DAY, SECOND = "2026-09-14", "2026-09-15"


def cut(whole: bytes) -> bytes:
    """Cut a file to 60 %."""
    return whole[: int(len(whole) * 0.6)]


def without_first_page(whole: bytes) -> bytes:
    """Put zeros in the first page."""
    return bytes(4096) + whole[4096:]


def turned(whole: bytes) -> bytes:
    """Turn 200 bytes over."""
    rng = Random(4)
    places = {rng.randrange(8192, len(whole)) for _ in range(200)}
    return bytes(byte ^ 255 if n in places else byte for n, byte in enumerate(whole))


@pytest.mark.parametrize("damage", [cut, without_first_page, turned])
def test_a_damaged_record_comes_back_whole(school, damage) -> None:
    """Told as damaged; copy, what can be read, lines and the papers give the same picture."""
    made: School = school(12, "mixed_test")
    record = made.record
    made.take(record, made.papers[:6], DAY)
    record.close()
    record = writable_record(made.folder, SECOND)  # makes the copy of the second day
    made.take(record, made.papers[6:], SECOND)
    override(record, Override("L09", "mixed_test", 1, "m1", 0.5, "on the second day"), SECOND)
    good = points_of(record)
    record.close()
    place = made.folder / "record.db"
    place.write_bytes(damage(place.read_bytes()))
    told = ""
    try:
        told = " ".join(check(made.record))
    except SeatworkError as error:
        told = str(error)
    assert "damaged" in told or "changed by hand" in told
    done = bring_back(made.folder)
    assert done.aside is not None
    assert done.aside.exists()
    record = made.record
    made.take(record, made.papers, "2026-09-16")
    assert points_of(record) == good
    assert check(record) == []


def test_nothing_is_begun_anew_where_a_record_was(school) -> None:
    """Without its file the record is told as gone; a new one would hide what was kept."""
    made: School = school(2)
    record = made.record
    made.take(record, made.papers, DAY)
    record.close()
    (made.folder / "record.db").unlink()
    with pytest.raises(SeatworkError, match="the record is gone; run: seatwork record bring-back"):
        writable_record(made.folder, DAY)
    bring_back(made.folder)
    assert check(made.record) == []


def test_copies_are_kept_by_what_they_hold(school) -> None:
    """A clock of 1970 or 2106 makes copies like any other, and thirty of the fullest stay."""
    made: School = school(1)
    record = made.record
    for number in range(KEEP + 5):
        points = (number % 9 + 1) / 10
        if not number:
            made.take(record, made.papers, DAY)
        override(record, Override("L01", "cones", 1, "c1", points, f"number {number}"), DAY)
        day = "2106-01-01" if number % 2 else "1970-01-01"
        assert copy_for_day(record, day, again=True) is not None
    kept = by_size(made.folder / "copies")
    assert len(kept) == KEEP
    counts = [int(one.stem.rpartition("-")[2]) for one in kept]
    assert counts == sorted(counts)
    assert counts[-1] == record.count()


def test_a_copy_brought_back_goes_on(school) -> None:
    """An earlier copy combined with the term that went on adds nothing twice."""
    made: School = school(4)
    record = made.record
    made.take(record, made.papers, DAY)
    earlier = copy(record, made.folder / "copies" / "earlier.db")
    override(record, Override("L02", "cones", 1, "c1", 0.5, "half of it aloud"), DAY)
    before = points_of(record)
    assert combine(record, earlier).added == 0
    assert points_of(record) == before
    assert combine(record, earlier).known == 4 + 8 + 1


def diverged(base: School, place: Path, author: str, seed: int) -> Record:
    """Let a copy of a record go on by itself: papers, points, states, undos."""
    rng = Random(seed)
    source = base.record
    record = Record(copy(source, place / "record.db"), source.key, author)
    source.close()
    other = tuple(base.other(number, c1="1") for number in range(len(base.papers)))
    for _ in range(12):
        number, act = rng.randrange(len(base.papers)), rng.randrange(4)
        learner, day = base.papers[number].learner, f"2026-10-{1 + rng.randrange(28):02d}"
        try:
            if act == 0:
                base.take(record, (rng.choice((base.papers, other))[number],), day)
            elif act == 1:
                points = rng.randrange(4) / 4
                override(record, Override(learner, "cones", 1, "c1", points, "by hand"), day)
            elif act == 2:
                excuse(record, "cones", learner, "as told", day)
            else:
                with record.reading() as connection:
                    from seatwork.record.standing import Standing

                    heads = Standing(connection)
                    kinds = ("override", "state", "undo")
                    mine = sorted(one.id for kind in kinds for one in heads.of(kind)
                                  if one.subject not in (f"course/{learner}",))  # fmt: skip
                if mine:
                    undo(record, rng.choice(mine), "talked it over", day)
        except SeatworkError:
            continue
    return record


@pytest.mark.parametrize("seed", [pytest.param(n, marks=pytest.mark.long) if n else n
                                  for n in range(15)])  # fmt: skip
def test_three_records_combined_in_any_order_show_the_same(school, tmp_path, seed: int) -> None:
    """What went apart comes together, whoever is first; once more adds nothing."""
    base: School = school(6)
    apart = [
        diverged(base, tmp_path / who, who, 10 * seed + n)
        for n, who in enumerate(("I1", "I2", "I3"))
    ]
    seen = []
    for order in ((0, 1, 2), (2, 1, 0), (1, 0, 2)):
        first = apart[order[0]]
        place = tmp_path / "together" / "-".join(map(str, order)) / "record.db"
        target = Record(copy(first, place), first.key, "I9")
        for other in order[1:] + order:
            combine(target, apart[other].place)
        assert check(target) == []
        with target.reading() as connection:
            seen.append((points_of(target), target.count(), disagreements(connection)))
    assert seen[0] == seen[1] == seen[2]


def test_two_instructors_who_disagree_are_both_told(school, tmp_path) -> None:
    """The cell waits, nobody's word is chosen, and a third decision ends it."""
    made: School = school(2)
    record = made.record
    made.take(record, made.papers, DAY)
    other = Record(copy(record, tmp_path / "two" / "record.db"), record.key, "I2")
    override(record, Override("L02", "cones", 1, "c1", 0.25, "no working shown"), DAY)
    override(other, Override("L02", "cones", 1, "c1", 0.5, "method right"), DAY)
    assert combine(record, other.place).added == 1
    cell = points_of(record)["L02", "cones"][0]
    assert cell[0] == "needs a person"
    assert "two instructors gave other points for c1" in cell[4]
    with record.reading() as connection:
        assert disagreements(connection) == [
            "L02 cones 1 c1: I1 said 0.25, I2 said 0.5: decide anew"
        ]
    override(record, Override("L02", "cones", 1, "c1", 0.75, "talked it over"), DAY)
    assert points_of(record)["L02", "cones"][0][0] != "needs a person"
    assert check(record) == []


def test_a_record_of_another_course_is_refused(school, tmp_path) -> None:
    """Facts sealed with another course key are no part of this term."""
    made: School = school(2)
    record = made.record
    other = Record(tmp_path / "other.db", bytes(32), "I2")
    leave(record, "L01", "moved away", DAY)
    copy(record, tmp_path / "mine.db")
    with pytest.raises(SeatworkError, match="of another course"):
        combine(other, tmp_path / "mine.db")
    assert other.count() == 0


def test_an_erased_learner_is_in_no_byte(school, tmp_path) -> None:
    """Record, copies, lines and tables lose the code; an old record brings nobody back."""
    made: School = school(4)
    record = writable_record(made.folder, DAY)
    files.write_table(made.folder / "roster.csv", ("learner",), [("L03",), ("L04",)])
    made.take(record, made.papers, DAY)
    override(record, Override("L03", "cones", 1, "c1", 0.5, "half of it aloud"), DAY)
    leave(record, "L03", "moved away", DAY)
    copy_for_day(record, DAY, again=True)
    old = copy(record, tmp_path / "stick" / "record.db")
    others = {key: cells for key, cells in points_of(record).items() if key[0] != "L03"}
    assert erase(record, made.folder, "L03", "2027-01-15") == []
    record = made.record
    assert points_of(record) == others
    assert check(record) == []
    found = combine(record, old)
    assert found.added == 0
    assert found.erased > 0
    assert points_of(record) == others


def test_what_was_taken_out_is_seen_against_the_copy(school) -> None:
    """A last fact that a tool deletes is missing beside the day's copy and the lines."""
    from seatwork.record.looking_over import look_over

    made: School = school(2)
    record = made.record
    made.take(record, made.papers, DAY)
    found = override(record, Override("L02", "cones", 1, "c1", 0.5, "half of it aloud"), DAY)
    copy_for_day(record, DAY, again=True)
    assert look_over(record, made.folder) == []
    record.close()
    with sqlite3.connect(made.folder / "record.db") as tool:
        tool.execute("DELETE FROM override WHERE fact = ?", (found,))
        tool.execute("DELETE FROM fact WHERE id = ?", (found,))
    tool.close()
    told = " ".join(look_over(made.record, made.folder))
    assert "1 facts of record-" in told
    assert "1 decisions of the lines" in told
