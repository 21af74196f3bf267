"""Killed at any moment, or four at once: nothing that was told as kept is lost."""

import contextlib
import io
import json
import os
import signal
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from random import Random
from typing import Any

import pytest
from seatwork.cli import program
from seatwork.errors import SeatworkError
from seatwork.marking import AnswerFile, examples, sheets
from seatwork.record import check, hand_out, open_record, results
from seatwork.record import forms as handed_out
from seatwork.record.tables import override
from sqlalchemy import select

from tests.as_saved import as_saved

pytestmark = [
    pytest.mark.long,
    pytest.mark.skipif(os.name != "posix", reason="kill -9 is POSIX"),
]
KILLS = 200
WRITERS = 4
SECONDS = float(os.environ.get("SEATWORK_WRITERS_SECONDS", "60"))
BUSY = "another command is writing there"
LEAVING = contextlib.suppress(SystemExit)
Record = Callable[[str, object], None]
QUESTIONS = ("c1", "c2", "c3")


def command(words: Sequence[str]) -> str:
    """Give a command in this process; return what it printed."""
    sys.argv = ["seatwork", *words]
    out = io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(out), LEAVING:
        program.main()
    return out.getvalue()


def forked(act: Callable[[int], None]) -> tuple[int, int]:
    """Run a function in a child that has all modules already; return it and where it writes."""
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(reading)
        try:
            act(writing)
        finally:
            os._exit(0)
    os.close(writing)
    return child, reading


def all_of(reading: int) -> str:
    """Read what a child wrote until it ended."""
    with os.fdopen(reading, encoding="utf-8") as pipe:
        return pipe.read()


def killed(words: Sequence[str], seconds: float) -> str:
    """Give a command, kill it some time after; return what it had told by then."""
    child, reading = forked(lambda pipe: os.write(pipe, command(words).encode()) and None)
    time.sleep(seconds)
    with contextlib.suppress(ProcessLookupError):
        os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    return all_of(reading)


def taken(words: Sequence[str]) -> float:
    """Return how long a command takes in a child of its own [s]."""
    began = time.monotonic()
    child, reading = forked(lambda pipe: os.write(pipe, command(words).encode()) and None)
    os.waitpid(child, 0)
    all_of(reading)
    return time.monotonic() - began


@pytest.fixture
def course(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Give a course whose twelve papers of cones were marked, in the working folder."""
    monkeypatch.chdir(tmp_path)
    folder = examples.make_course(tmp_path / "course")
    hand_out(folder, sheets.load("cones"), examples.CLASS)
    answers = examples.answer(folder, sheets.load("cones"), handed_out(folder))
    assert "12 new" in command(["mark", "cones", str(answers)])
    return folder


def late(folder: Path, learner: str, number: int) -> Path:
    """Write one late paper into a folder of its own."""
    file = AnswerFile(learner=learner, sheet="cones", form=1)
    as_saved(Path("course"), file.changed("c1", parts=(f".{number:03d}",))).save(folder)
    return folder


def standing(course: Path) -> dict[str, Any]:
    """Return the results of the sheet, after looking the record over."""
    kept = open_record(course)
    assert check(kept) == []
    found = results(kept, "cones", "2026-12-01")
    kept.close()
    return found


def reasons(course: Path) -> list[str]:
    """Return the reasons of all overrides that were ever kept."""
    kept = open_record(course)
    with kept.reading() as connection:
        found = list(connection.execute(select(override.c.reason)).scalars())
    kept.close()
    return found


def marked_learners(course: Path) -> set[str]:
    """Return whose papers are in the marks."""
    return {one["learner"] for one in standing(course)["files"] if one["questions"]}


def given_points(course: Path) -> dict[tuple[str, str], float | None]:
    """Return the points in the results, by learner and question."""
    return {
        (one["learner"], q["id"]): q["points"]
        for one in standing(course)["files"]
        for q in one["questions"]
    }


def test_killed_while_overriding(course: Path, record_property: Record) -> None:
    """After each of 200 kills every override told as kept is in the file and in the results."""
    rng, told = Random(1), 0
    longest = taken(["override", "cones", "L01", "c1", "0.7", "to take the time"]) * 1.2
    may_be = {place: {points} for place, points in given_points(course).items()}
    for number in range(KILLS):
        learner, question = f"L{1 + number % 12:02d}", QUESTIONS[number % 3]
        points = round(0.01 + number / 1000, 3)
        words = ["override", "cones", learner, question, str(points), f"kill {number}"]
        said = killed(words, rng.random() * longest)
        if "Kept and counted" in said:
            told += 1
            may_be[learner, question] = {points}
        else:
            may_be[learner, question].add(points)
        kept = reasons(course)
        assert "Kept and counted" not in said or f"kill {number}" in kept
        now = given_points(course)
        assert all(now[place] in allowed for place, allowed in may_be.items())
    assert len(set(reasons(course))) >= told
    assert told
    record_property("overrides told as kept, of 200 kills", told)


def test_killed_while_marking(course: Path, tmp_path: Path, record_property: Record) -> None:
    """After each of 200 kills everyone told as marked is in the marks, and all before them."""
    learners = [f"M{number:03d}" for number in range(KILLS)]
    hand_out(course, sheets.load("cones"), learners)
    rng, told = Random(2), set(examples.CLASS)
    again = str(late(tmp_path / "first", learners[0], 1))
    longest = taken(["mark", "cones", again]) * 1.2
    for number, learner in enumerate(learners):
        place = str(late(tmp_path / "late" / learner, learner, number))
        said = killed(["mark", "cones", place], rng.random() * longest)
        if "papers in the marks now" in said:
            told.add(learner)
        assert told <= marked_learners(course)
    command(["mark", "cones", str(tmp_path / "late")])
    assert marked_learners(course) == {*examples.CLASS, *learners}
    record_property("papers told as marked, of 200 kills", len(told) - 12)


def test_killed_while_handing_out(course: Path, tmp_path: Path, record_property: Record) -> None:
    """After each of 200 kills every form told as handed out is in the record, as it was given."""
    rng, told = Random(3), 0
    known: dict[str, object] = {}
    longest = 0.0
    for number in range(KILLS):
        learners = [f"H{number:03d}{letter}" for letter in "123"]
        text = "learner\n" + "\n".join(learners) + "\n"
        (course / "roster.csv").write_text(text, encoding="utf-8")
        words = ["hand-out", "cones", "--to", str(tmp_path / "given")]
        longest = longest or taken(words) * 1.2
        said = killed(words, rng.random() * longest)
        record = handed_out(course).sheets["cones"]
        assert set(examples.CLASS) <= record.keys()
        if "3 forms in" in said:
            told += 3
            known |= {learner: record[learner][0].sizes for learner in learners}
            for learner in learners:
                given = tmp_path / "given" / learner / "cones.given.json"
                assert json.loads(given.read_bytes())["learner"] == learner
        assert all(record[learner][0].sizes == sizes for learner, sizes in known.items())
    assert told
    record_property("forms told as handed out, of 200 kills", told)


@dataclass
class Told:
    """What one writer was told as kept, and how often it had to give way."""

    overrides: list[str] = field(default_factory=list)
    marked: list[str] = field(default_factory=list)
    handed: list[str] = field(default_factory=list)
    busy: int = 0


def write_for_a_while(writer: int, place: Path, pipe: int) -> None:
    """Hand out, mark that late paper and override in turn until the time is over."""
    told, number, handed_to = Told(), 0, ""
    end = time.monotonic() + SECONDS
    while time.monotonic() < end:
        number += 1
        code = f"{'PQRS'[writer]}{number // 3:04d}"
        reason = f"writer {writer} number {number}"
        points = str(round((writer + 1) / 10 + number / 10_000, 4))
        said = ""
        if number % 3 == 0:
            try:
                hand_out(Path("course"), sheets.load("cones"), [code])
                told.handed.append(handed_to := code)
            except SeatworkError as error:
                said, handed_to = str(error), ""
        elif number % 3 == 1 and handed_to:
            said = command(["mark", "cones", str(late(place / handed_to, handed_to, 7))])
            told.marked += [handed_to] if "1 new" in said and "1 marked" in said else []
        else:
            said = command(["override", "cones", f"L{1 + number % 12:02d}", "c1", points, reason])
            told.overrides += [reason] if "Kept and counted" in said else []
        told.busy += BUSY in said
    os.write(pipe, json.dumps(vars(told)).encode())


def test_four_writers_at_once(course: Path, tmp_path: Path, record_property: Record) -> None:
    """Four writers for a minute: each override, paper and form told as kept is there."""
    children = [
        forked(lambda pipe, writer=writer: write_for_a_while(writer, tmp_path / "in", pipe))
        for writer in range(WRITERS)
    ]
    told = [Told(**json.loads(all_of(reading))) for _, reading in children]
    for child, _ in children:
        os.waitpid(child, 0)
    overrides = [reason for one in told for reason in one.overrides]
    marked = {learner for one in told for learner in one.marked}
    forms = {learner for one in told for learner in one.handed}
    assert overrides
    assert marked
    assert forms
    assert set(overrides) <= set(reasons(course))
    assert marked | set(examples.CLASS) <= marked_learners(course)
    record = handed_out(course).sheets["cones"]
    assert forms <= {learner for learner, given in record.items() if given}
    counts = len(overrides), len(marked), len(forms), sum(one.busy for one in told)
    record_property("overrides, papers, forms told as kept, times told to wait", counts)
