"""Kills at any moment, eight writers at once, a full disk: what was told as kept is there."""

import multiprocessing
import os
import signal
import subprocess
import time
from collections.abc import Iterator
from multiprocessing.queues import Queue
from pathlib import Path
from random import Random

import pytest
from schools import School, given, points_of
from seatwork.errors import SeatworkError
from seatwork.marking import sheets
from seatwork.record import Override, Record, check, override
from seatwork.record.copying import copy
from seatwork.record.tables import fact, mark, paper
from seatwork.record.taking_in import take_in
from sqlalchemy import func, select

pytestmark = [
    pytest.mark.long,
    pytest.mark.skipif(os.name != "posix", reason="kill -9 is POSIX"),
]
DAY = "2026-09-14"
PAPERS, KILLS, WRITERS, DECISIONS = 300, 200, 8, 50
START = multiprocessing.get_context("fork")


def counts(record: Record) -> tuple[int, int]:
    """Count papers and marks."""
    with record.reading() as connection:
        return (
            connection.execute(select(func.count()).select_from(paper)).scalar() or 0,
            connection.execute(select(func.count()).select_from(mark)).scalar() or 0,
        )


def marking(school: School) -> None:
    """Mark everything, five hand-ins a transaction."""
    record = school.record
    take_in(record, school.plan, given(school.papers), day=DAY, a_batch=5)


def test_two_hundred_kills_while_marking(school, tmp_path: Path, record_property) -> None:
    """Nothing kept is lost, no paper is without its mark, and going on ends where a run ends."""
    made: School = school(PAPERS)
    record = made.record
    empty = copy(record, tmp_path / "empty.db")
    marking(made)
    whole = points_of(record)
    record.close()
    place, rng, killed, before, lost, half = made.folder / "record.db", Random(1), 0, 0, 0, 0
    place.write_bytes(empty.read_bytes())
    while killed < KILLS:
        process = START.Process(target=marking, args=(made,))
        process.start()
        time.sleep(rng.random() * 0.35)
        alive = process.is_alive()
        if alive and process.pid:
            os.kill(process.pid, signal.SIGKILL)
        process.join()
        record = made.record
        papers, marks = counts(record)
        record.close()
        lost += papers < before
        half += papers != marks
        killed, before = killed + alive, papers
        if papers == PAPERS:
            place.write_bytes(empty.read_bytes())
            before = 0
    record = made.record
    marking(made)
    assert (lost, half) == (0, 0)
    assert check(record) == []
    assert points_of(record) == whole
    record_property("kills while marking", killed)


def deciding(folder: str, key: bytes, author: str, learner: str, told: "Queue[int]") -> None:
    """Give points fifty times, and count what was told as kept."""
    record, kept = Record(Path(folder) / "record.db", key, author), 0
    for number in range(DECISIONS):
        points = (number % 2 + 1) / 4
        override(record, Override(learner, "cones", 1, "c1", points, f"{author} {number}"), DAY)
        kept += 1
    told.put(kept)


def test_eight_writers_at_once(school, record_property) -> None:
    """Each decision that was told as kept is in the record, and stands once in the lines."""
    from seatwork.record.lines import known

    made: School = school(WRITERS)
    record = made.record
    made.take(record, made.papers, DAY)
    record.close()
    told: Queue[int] = START.Queue()
    began = time.monotonic()
    processes = [
        START.Process(
            target=deciding,
            args=(str(made.folder), record.key, f"I{n + 1}", made.papers[n].learner, told),
        )
        for n in range(WRITERS)
    ]
    for process in processes:
        process.start()
    kept = sum(told.get(timeout=300) for _ in processes)
    for process in processes:
        process.join()
    record = made.record
    with record.reading() as connection:
        found = connection.execute(select(fact.c.id).where(fact.c.kind == "override")).scalars()
        ids = set(found)
    assert kept == WRITERS * DECISIONS == len(ids)
    assert ids <= known(record.place)
    assert check(record) == []
    record_property("seconds for 400 decisions of eight writers", time.monotonic() - began)


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """Give a disk of 3 MB, where one may be mounted."""
    disk = tmp_path / "disk"
    disk.mkdir()
    words = ["mount", "-t", "tmpfs", "-o", "size=3m", "tmpfs", str(disk)]
    try:
        done = subprocess.run(words, capture_output=True, check=False)
    except OSError:
        pytest.skip("no disk can be mounted here")
    if done.returncode:
        pytest.skip("no disk can be mounted here")
    yield disk
    subprocess.run(["umount", str(disk)], check=False)


def test_a_full_disk_is_told_and_marking_goes_on_with_room(school, small_disk: Path) -> None:
    """The file stays whole, what was kept stays, and with room the rest is taken in."""
    made: School = school(600, "mixed_test")
    record = made.record
    small = Record(copy(record, small_disk / "record.db"), record.key)
    plan = sheets.load("mixed_test")
    with pytest.raises(SeatworkError, match="disk is full"):
        take_in(small, plan, given(made.papers), day=DAY, a_batch=20)
    papers, marks = counts(small)
    assert papers == marks
    assert 0 < papers < 600
    assert check(small) == []
    small.close()
    words = ["mount", "-o", "remount,size=30m", str(small_disk)]
    subprocess.run(words, check=True)
    again = take_in(small, plan, given(made.papers), day=DAY)
    assert again.count == {"known": papers, "new": 600 - papers}
    assert check(small) == []
    small.close()
