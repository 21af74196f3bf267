"""Facts are added and never changed; the database guards what the commands promise."""

import stat
from pathlib import Path

import pytest
from schools import School, points_of
from seatwork.errors import SeatworkError
from seatwork.record import Override, Record, check, hand_out, override, results
from seatwork.record.class_now import Class
from seatwork.record.deciding import excuse, leave, lose, set_due, sign, undo
from seatwork.record.tables import fact
from sqlalchemy import func, select, text
from sqlalchemy.exc import IntegrityError

DAY = "2026-09-14"


def count(record: Record) -> int:
    """Count the facts of a record."""
    with record.reading() as connection:
        return connection.execute(select(func.count()).select_from(fact)).scalar() or 0


@pytest.fixture
def four(school) -> School:
    """Give a course of four whose papers were taken in."""
    made = school(4)
    record = made.record
    assert made.take(record, made.papers, DAY).count == {"new": 4}
    record.close()
    return made


def test_marking_again_adds_no_fact_and_changes_no_byte(four: School) -> None:
    """The same papers on another day are known, and the file is the same to the byte."""
    before = (four.folder / "record.db").read_bytes()
    record = four.record
    assert four.take(record, four.papers, "2031-01-01").count == {"known": 4}
    record.close()
    assert (four.folder / "record.db").read_bytes() == before


def test_a_late_paper_changes_no_other_cell(school) -> None:
    """Three cells stay as they were when the fourth paper comes a week after the day."""
    made = school(4, due="2026-09-14")
    record = made.record
    made.take(record, made.papers[:3], "2026-09-14")
    before = points_of(record)
    assert before["L04", "cones"][0][0] == "not here"
    made.take(record, made.papers[3:], "2026-09-21")
    after = points_of(record)
    late = after.pop(("L04", "cones"))
    del before["L04", "cones"]
    assert after == before
    assert late[0][3] is True


def test_a_lost_roster_row_changes_no_cell(school, tmp_path) -> None:
    """L03 is gone from the roster by mistake: marks stay, and so does what is handed in later."""
    from seatwork.marking import roster
    from seatwork.record import mark

    made = school(4)
    for file in made.papers[:2]:
        file.save(tmp_path / "in")
    mark(made.folder, made.plan, tmp_path / "in", day="2026-09-14")
    before = points_of(made.record)
    place = made.folder / roster.ROSTER_FILE
    rows = place.read_text(encoding="utf-8-sig").splitlines(keepends=True)
    place.write_text("".join(row for row in rows if not row.startswith(("L02", "L03"))))
    made.papers[2].save(tmp_path / "late")
    mark(made.folder, made.plan, [tmp_path / "in", tmp_path / "late"], day="2026-09-15")
    after = points_of(made.record)
    came = after.pop(("L03", "cones"))
    assert came[0][1] is not None
    del before["L03", "cones"]
    assert after == before


def test_an_override_beyond_the_points_is_refused_by_the_database(four: School) -> None:
    """What the command refuses, no tool can write either while the rules of the tables hold."""
    record = four.record
    with pytest.raises(SeatworkError, match="c1 is worth 2; give 0 to 2"):
        override(record, Override("L02", "cones", 1, "c1", 900, "too generous"), DAY)
    override(record, Override("L02", "cones", 1, "c1", 0.5, "half of it aloud"), DAY)
    for change in ("points = 900", '"of" = 900'):
        with pytest.raises(IntegrityError), record.writing() as batch:
            batch.connection.execute(text(f"UPDATE override SET {change}"))
    assert check(record) == []


def test_an_override_for_no_paper_is_refused(school) -> None:
    """Nobody gets points on a paper that did not come."""
    made = school(2)
    record = made.record
    with pytest.raises(SeatworkError, match="no paper of cones was marked"):
        override(record, Override("L02", "cones", 1, "c1", 1, "said it aloud"), DAY)
    assert count(record) == count(made.record)


def test_an_undo_can_be_undone(four: School) -> None:
    """Points given by hand go and come back, and all of it stays written."""
    record = four.record
    before = points_of(record)
    made = override(record, Override("L02", "cones", 1, "c1", 0.25, "a quarter"), DAY)
    given = points_of(record)
    assert given != before
    first, _ = undo(record, made[:6], "talked it over", DAY)
    assert points_of(record) == before
    undo(record, first, "after all", DAY)
    assert points_of(record) == given
    with pytest.raises(SeatworkError, match="taken back already"):
        undo(record, first, "once more", DAY)
    assert check(record) == []


def test_no_clock_decides_which_decision_is_the_later_one(four: School) -> None:
    """A decision of 1970 that follows one of 2106 stands."""
    record = four.record
    override(record, Override("L02", "cones", 1, "c1", 0.25, "in the future"), "2106-01-01")
    override(record, Override("L02", "cones", 1, "c1", 0.5, "after that"), "1970-01-01")
    (row,) = (one for one in results(record, "cones", DAY)["files"] if one["learner"] == "L02")
    assert row["questions"][0]["points"] == 0.5


def test_excused_and_lost_are_no_zero(school) -> None:
    """What a person says of a sitting stands in its cell; leaving asks for nothing more."""
    made = school(4, due="2026-09-14")
    record = made.record
    made.take(record, made.papers[:1], DAY)
    excuse(record, "cones", "L02", "court date", DAY)
    lose(record, "cones", "L03", "lost in the shop", DAY)
    leave(record, "L04", "moved away", DAY)
    words = {learner: cells[0][0] for (learner, _), cells in points_of(record).items()}
    assert words["L02"] == "excused"
    assert words["L03"] == "paper lost"
    assert words["L04"] == "withdrawn"
    with pytest.raises(SeatworkError, match="was not handed out"):
        excuse(record, "cones", "L02", "court date", DAY, sitting=2)
    made.take(record, made.papers[2:3], "2026-09-20")
    assert points_of(record)["L03", "cones"][0][0] in ("passed", "not yet")


def test_a_sign_off_says_where_the_paper_lies(four: School) -> None:
    """Software clears nobody: without a paper there is nothing to keep."""
    record = four.record
    with pytest.raises(SeatworkError, match="--paper-at"):
        sign(record, "L03", "bench drill press", "", DAY)
    with pytest.raises(SeatworkError, match="nobody of that code"):
        sign(record, "L77", "bench drill press", "binder 2026, sheet 4", DAY)
    sign(record, "L03", "bench drill press", "binder 2026, sheet 4", DAY)
    assert check(record) == []


def test_the_due_day_may_be_another_for_one_learner(school) -> None:
    """L02 was given until later, so the same day is late for L01 alone."""
    made = school(2, due="2026-09-14")
    record = made.record
    set_due(record, "cones", 1, "2026-09-30", DAY, "L02")
    made.take(record, made.papers, "2026-09-20")
    late = {learner: cells[0][3] for (learner, _), cells in points_of(record).items()}
    assert late == {"L01": True, "L02": False}


def test_a_late_joiner_has_a_day_of_their_own(school) -> None:
    """Handing out to one more learner with another day leaves the day of the class."""
    made = school(2, due="2026-09-14")
    hand_out(made.folder, "cones", ["L03"], due="2026-09-30", day="2026-09-20")
    record = made.record
    with record.reading() as connection:
        now = Class(connection, DAY)
        days = [now.due(learner, "cones", 1) for learner in ("L01", "L02", "L03")]
    assert days == ["2026-09-14", "2026-09-14", "2026-09-30"]


def test_a_sheet_edited_later_changes_no_old_mark(four: School, monkeypatch) -> None:
    """A paper is marked by the sheet as it was handed out."""
    from dataclasses import replace

    items = tuple(replace(item, points=item.points * 10) for item in four.plan.items)
    edited = School(four.folder, replace(four.plan, items=items, pass_mark=0.1), four.papers)
    record = four.record
    before = points_of(record)
    assert edited.take(record, four.papers, DAY).count == {"known": 4}
    assert points_of(record) == before


def test_the_file_is_for_its_owner_alone(four: School) -> None:
    """Record and lines are 0600."""
    record = four.record
    override(record, Override("L02", "cones", 1, "c1", 0.5, "half of it aloud"), DAY)
    for name in ("record.db", "record.decisions.jsonl"):
        assert stat.S_IMODE((four.folder / name).stat().st_mode) == 0o600


def test_a_record_of_a_newer_version_is_refused(four: School) -> None:
    """Nothing is read from a layout that is not known."""
    record = four.record
    record.set_note("format", "2")
    record.close()
    with pytest.raises(SeatworkError, match="newer version"):
        _ = four.record


def test_every_fact_of_a_changed_byte_is_named(four: School) -> None:
    """One point, one reason and one seal changed with a tool are each told."""
    record = four.record
    override(record, Override("L02", "cones", 1, "c1", 0.5, "half of it aloud"), DAY)
    assert check(record) == []
    with record.writing() as batch:
        batch.connection.execute(text("UPDATE answer SET verdicts = 'none' WHERE question = 'c2'"))
        batch.connection.execute(text("UPDATE override SET reason = 'none given'"))
        batch.connection.execute(text(f"UPDATE fact SET seal = '{'0' * 32}' WHERE kind = 'form'"))
    told = check(record)
    assert sum("mark" in line and "changed by hand" in line for line in told) == 4
    assert sum("override" in line and "changed by hand" in line for line in told) == 1
    assert sum("form" in line and "another key" in line for line in told) == 4


def test_import_of_the_package_loads_no_database() -> None:
    """SQLAlchemy and the writer of spreadsheets wait for a command that needs them."""
    import subprocess
    import sys

    code = (
        "import sys, seatwork, seatwork.record, seatwork.cli.program\n"
        "print([name for name in ('sqlalchemy', 'xlsxwriter') if name in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


def test_a_lost_line_is_written_at_the_next_opening(four: School) -> None:
    """A decision whose line a kill left out stands in the lines after the next command."""
    from seatwork.record import writable_record
    from seatwork.record.lines import known, place_of

    record = four.record
    made = override(record, Override("L02", "cones", 1, "c1", 0.5, "half of it aloud"), DAY)
    place: Path = place_of(record.place)
    place.unlink()
    record.close()
    writable_record(four.folder, DAY).close()
    assert made in known(four.folder / "record.db")
