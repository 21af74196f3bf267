"""``mark --rooms`` as typed: a line for each room, and what does not go together."""

from pathlib import Path

import pytest
from seatwork.marking import AnswerFile, examples

pytestmark = pytest.mark.slow
DAY = "2026-09-14"


def test_the_command_says_a_line_for_each_room(tmp_path: Path, run) -> None:
    """What each room came to, also of one that cannot be marked; wrong options are refused."""
    for name in ("A", "B"):
        place = tmp_path / "school" / name
        examples.make_course(place / "course")
        run("hand-out", "cones", "--course", place / "course", "--day", "2026-09-07")
        for code in ("L01", "L02"):
            AnswerFile(learner=code, sheet="cones", form=1).save(place / "handed_in")
    (tmp_path / "school" / "B" / "course" / "course.key").unlink()
    done = run("mark", "cones", "school", "--rooms", "--day", DAY)
    assert done.code == 1
    assert "A: 2 new, 0 known already, 0 changed" in done.out
    assert "B: not marked: " in done.out
    assert "1 of 2 rooms marked" in done.out
    assert "add --rooms" in run("mark", "cones", "school", "--workers", "2").out
    assert "a course of its own" in run("mark", "cones", "school", "--rooms", "--feedback").out
    assert "it holds no room" in run("mark", "cones", tmp_path / "school" / "A", "--rooms").out
