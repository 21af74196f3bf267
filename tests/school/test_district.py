"""A district: 100,000 hand-ins judged by workers of which one is killed, memory bounded."""

import hashlib
import os
import resource
import signal
import sys
from pathlib import Path

import pytest
from seatwork.marking import AnswerFile, examples, sheets
from seatwork.marking.text import right_answer
from seatwork.questions.type.parts import NumberPart
from seatwork.record import forms, hand_out
from seatwork.school import workers
from seatwork.school.marking_rooms import judge

from tests.as_saved import sealed

pytestmark = pytest.mark.long

SHEET, A_ROOM, COURSES, LINKS = "mixed_test", 250, 8, 50
HAND_INS = A_ROOM * COURSES * LINKS
MOST = 450_000_000
"""Memory of the process that asked [bytes]."""


def make_room(room: Path, first: int) -> None:
    """Lay out a room of 250 learners; one answer of ten is given by a slip."""
    plan = sheets.load(SHEET)
    codes = [f"L{number:05d}" for number in range(first, first + A_ROOM)]
    examples.make_course(room / "course")
    hand_out(room / "course", plan, codes, day="2026-09-07")
    handed = forms(room / "course")
    for n, code in enumerate(codes):
        one = handed.form(SHEET, code, 1)
        assert one is not None
        paper = AnswerFile(learner=code, sheet=SHEET, form=1)
        for place, (question, asked) in enumerate(one.questions(plan).items()):
            parts = tuple(
                str(part.slips[0].value)
                if isinstance(part, NumberPart) and part.slips and (n + place) % 10 == 0
                else right_answer(part)
                for part in asked.parts
            )
            paper = paper.changed(question, parts=parts, tries=1)
        sealed(paper, one).save(room / "handed_in")


def digest(found: object) -> tuple[int, str]:
    """Return how many hand-ins a room had, and a hash of all that was said of them."""
    assert isinstance(found, list)
    return len(found), hashlib.sha256(repr([marked for _, marked in found]).encode()).hexdigest()


def judged(place: str, victim: str) -> tuple[int, str]:
    """Judge a room in a worker; the first that comes to the victim's file dies."""
    flag = Path(victim)
    if place.endswith("-25-0") and not flag.exists():
        flag.write_text("once")
        os.kill(os.getpid(), signal.SIGKILL)
    return digest(judge(sheets.load(SHEET), f"{place}/course", f"{place}/handed_in"))


@pytest.mark.skipif(os.name != "posix", reason="kills a process as a posix system does")
def test_a_hundred_thousand_hand_ins(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Every room is judged once, as alone, though a worker dies; the asker's memory is bounded."""
    for number in range(COURSES):
        make_room(tmp_path / f"room{number}", number * A_ROOM)
    alone = [
        digest(
            judge(
                sheets.load(SHEET),
                str(tmp_path / f"room{n}/course"),
                str(tmp_path / f"room{n}/handed_in"),
            )
        )
        for n in range(COURSES)
    ]
    places = []
    for link in range(LINKS):
        for number in range(COURSES):
            place = tmp_path / f"room-{link}-{number}"
            place.symlink_to(tmp_path / f"room{number}")
            places.append(place)
    tasks = [(str(place), str(tmp_path / "died")) for place in places]
    done = dict(workers.each(judged, tasks, workers=2, scheduler=""))
    assert (tmp_path / "died").exists()
    assert sorted(done) == list(range(len(places)))
    assert all(done[n] == alone[n % COURSES] for n in done)
    assert sum(count for count, _ in done.values()) == HAND_INS
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * 1024
    with capsys.disabled():
        sys.stdout.write(f"\n{HAND_INS} hand-ins, peak of the asker {peak / 1e6:.0f} MB\n")
    assert peak < MOST
