"""The rooms of a school: marked in turn or by workers, the same marks; no room stops another."""

import os
import signal
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from seatwork import marking
from seatwork.errors import SeatworkError
from seatwork.marking import AnswerFile, examples, sheets
from seatwork.marking.handed import Forms
from seatwork.marking.text import right_answer
from seatwork.record import forms, hand_out, open_record, results
from seatwork.school import Room, hand_out_rooms, mark_rooms, rooms, slip_figures, workers

from tests.as_saved import sealed

pytestmark = pytest.mark.slow
DAY = "2026-09-14"
LEARNERS = ["L01", "L02", "L03"]


def make_room(school: Path, name: str) -> None:
    """Lay out a room: a course, a sheet handed out, three papers, one of them with a slip."""
    plan, room = sheets.load("cones"), school / name
    examples.make_course(room / "course")
    hand_out(room / "course", plan, LEARNERS, day="2026-09-07")
    for code in LEARNERS:
        one = forms(room / "course").form("cones", code, 1)
        assert one is not None
        paper = AnswerFile(learner=code, sheet="cones", form=1)
        for question, asked in one.questions(plan).items():
            parts = tuple(right_answer(part) for part in asked.parts)
            paper = paper.changed(
                question, parts=("9",) if (code, question) == ("L02", "c1") else parts
            )
        sealed(paper, one).save(room / "handed_in")


@pytest.fixture
def make(tmp_path: Path) -> Callable[[str, int], list[Room]]:
    """Give a function that lays out a school of some rooms, the same each time."""

    def school(name: str, count: int) -> list[Room]:
        for number in range(1, count + 1):
            make_room(tmp_path / name, f"room{number}")
        return rooms(tmp_path / name)

    return school


def marks(room: Room) -> dict[str, object]:
    """Return the marks of a room as the record has them."""
    record = open_record(room.course)
    try:
        return results(record, "cones", DAY)
    finally:
        record.close()


@pytest.mark.parametrize("count", [1, 2])
def test_workers_give_the_marks_of_marking_in_turn(make, count: int) -> None:
    """Two rooms by two processes and by one: the same facts, hash for hash."""
    school = make("school", 2)
    done = list(mark_rooms(school, "cones", day=DAY, workers=count))
    assert sorted(one.room.name for one in done) == ["room1", "room2"]
    assert [one.marking.new for one in done if one.marking] == [3, 3]
    from seatwork.record import mark

    alone = make("alone", 2)
    for room in alone:
        mark(room.course, "cones", room.handed_in, day=DAY)
    assert [marks(room) for room in school] == [marks(room) for room in alone]
    again = mark_rooms(school, "cones", day=DAY, workers=count)
    assert [(one.marking.new, one.marking.known) for one in again if one.marking] == [(0, 3)] * 2


def test_a_room_that_cannot_be_marked_stops_no_other(make) -> None:
    """No hand-out, no key, nothing handed in: said of that room alone."""
    school = make("school", 4)
    (school[0].course / "course.key").unlink()
    for path in (school[1].course / "record.db", school[1].course / "record.decisions.jsonl"):
        path.unlink(missing_ok=True)
    for path in school[2].handed_in.iterdir():
        path.unlink()
    school[2].handed_in.rmdir()
    done = {one.room.name: one for one in mark_rooms(school, "cones", day=DAY)}
    assert [name for name, one in done.items() if one.marking is not None] == ["room4"]
    assert "there is no course key" in done["room1"].refused
    assert "there is no such folder" in done["room3"].refused


def test_a_folder_without_rooms_is_refused(tmp_path: Path) -> None:
    """What holds no room, or is not there, is refused in one sentence."""
    with pytest.raises(SeatworkError, match="it holds no room"):
        rooms(tmp_path)
    with pytest.raises(SeatworkError):
        rooms(tmp_path / "nowhere")


def dies_once(place: str, number: int) -> int:
    """Kill the process that does this for the first time; the second time it is done."""
    mark = Path(place) / f"seen-{number}"
    if not mark.exists():
        mark.write_text("once")
        if number == 1:
            os.kill(os.getpid(), signal.SIGKILL)
    return number


@pytest.mark.skipif(os.name != "posix", reason="kills a process as a posix system does")
def test_what_a_dead_worker_had_is_done_again(tmp_path: Path) -> None:
    """A worker is killed at its task; every task is done once, and told once."""
    tasks = [(str(tmp_path), number) for number in range(6)]
    done = dict(workers.each(dies_once, tasks, workers=2, scheduler=""))
    assert done == {number: number for number in range(6)}


def test_without_the_extra_rooms_are_done_in_turn(make, monkeypatch) -> None:
    """Where distributed is not installed the same function marks serially."""
    monkeypatch.setattr(workers, "has_workers", lambda: False)
    school = make("school", 1)
    (done,) = mark_rooms(school, "cones", day=DAY, workers=8)
    assert done.marking is not None
    assert done.marking.new == 3


def test_a_scheduler_that_does_not_answer_is_one_sentence(make) -> None:
    """A wrong address is refused; nothing is written."""
    school = make("school", 1)
    before = (school[0].course / "record.db").read_bytes()
    with pytest.raises(SeatworkError, match="no scheduler answers there"):
        list(mark_rooms(school, "cones", day=DAY, scheduler="tcp://127.0.0.1:9"))
    assert (school[0].course / "record.db").read_bytes() == before


def make_empty_room(school: Path, name: str) -> None:
    """Lay out a room in which nothing was handed out yet."""
    examples.make_course(school / name / "course")


def handed_out(room: Room) -> dict[str, str]:
    """Return what each learner of a room got, letter for letter."""
    return {path.parent.name: path.read_text() for path in sorted(room.given.rglob("*.given.json"))}


@pytest.mark.parametrize("count", [1, pytest.param(2, marks=pytest.mark.long)])
def test_workers_hand_out_the_forms_of_handing_out_in_turn(tmp_path: Path, count: int) -> None:
    """Two rooms by two processes and by one: the same files, and the same facts, hash for hash."""
    for name in ("room1", "room2"):
        for school in ("school", "alone"):
            make_empty_room(tmp_path / school, name)
    school, alone = rooms(tmp_path / "school"), rooms(tmp_path / "alone")
    given = list(hand_out_rooms(school, "cones", day=DAY, due="2026-09-21", workers=count))
    assert sorted(one.room.name for one in given) == ["room1", "room2"]
    for room in alone:
        hand_out(room.course, "cones", examples.CLASS, target=room.given, day=DAY, due="2026-09-21")
    assert [handed_out(room) for room in school] == [handed_out(room) for room in alone]
    assert [forms(room.course) for room in school] == [forms(room.course) for room in alone]
    assert len(handed_out(school[0])) == len(examples.CLASS)
    again = list(hand_out_rooms(school, "cones", day=DAY, workers=count))
    assert [one.given for one in sorted(again, key=lambda one: one.room.name)] == [
        one.given for one in sorted(given, key=lambda one: one.room.name)
    ]


def test_a_room_without_a_roster_stops_no_other(tmp_path: Path) -> None:
    """Nobody on the roster, a sitting too early: said of that room alone."""
    for name in ("room1", "room2"):
        make_empty_room(tmp_path, name)
    (tmp_path / "room1" / "course" / "roster.csv").unlink()
    done = {one.room.name: one for one in hand_out_rooms(rooms(tmp_path), "cones", day=DAY)}
    assert "roster" in done["room1"].refused
    assert len(done["room2"].given) == len(examples.CLASS)
    later = {
        one.room.name: one for one in hand_out_rooms(rooms(tmp_path), "cones", day=DAY, sitting=3)
    }
    assert "hand out sitting 2" in later["room2"].refused


def test_a_form_drawn_with_another_key_is_drawn_anew(tmp_path: Path) -> None:
    """What a worker sends counts only if this course's key gives its id and its place is next."""
    plan = sheets.load("cones")
    key, other = bytes(32), bytes([1]) * 32
    own = marking.hand_out(key, Forms(), plan, ["L07"])
    for kept, changed in ((Forms(), {}), (Forms(), {"mode": "graded"}), (Forms(), {"sitting": 2})):
        marking.hand_out(other if not changed else key, kept, plan, ["L07"])
        (foreign,) = kept.forms("cones", "L07")
        drawn = {"L07": replace(foreign, **changed)}
        assert marking.hand_out(key, Forms(), plan, ["L07"], drawn=drawn) == own


def test_a_made_up_class_makes_the_slips_and_they_are_named() -> None:
    """Each learner makes a slip in each question; each is named, alone or among others."""
    found = slip_figures("cones", 30)
    assert sum(one.made for one in found) == 30 * len(sheets.load("cones").items)
    assert all(one.made == one.named + one.among + one.not_named for one in found)
    assert not any(one.not_named for one in found)


@pytest.mark.long
def test_workers_count_the_slips_of_one_process() -> None:
    """Three hundred learners by two processes and by one: the same figures."""
    assert slip_figures("cones", 300, workers=2) == slip_figures("cones", 300)


@pytest.mark.parametrize("wrong", [0, -1, True, "many", 10**7])
def test_a_class_of_no_size_is_refused(wrong: object) -> None:
    """No learner, or more than a million."""
    with pytest.raises(SeatworkError, match="no number of learners"):
        slip_figures("cones", wrong)  # type: ignore[arg-type]
