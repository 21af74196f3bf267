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


def test_a_sheet_is_handed_out_in_every_room(tmp_path: Path, run) -> None:
    """A line for each room, also of one without a key; workers know no question of one's own."""
    for name in ("A", "B", "C"):
        examples.make_course(tmp_path / "school" / name / "course")
    given = run("hand-out", "cones", "--rooms", "school", "--day", "2026-09-07", "--paper")
    assert given.code == 0, given.out
    assert "handed out in 3 of 3 rooms" in given.out
    for name in ("A", "B", "C"):
        assert list((tmp_path / "school" / name).rglob("*.given.json"))
        assert list((tmp_path / "school" / name).rglob("*.pdf"))
    (tmp_path / "school" / "B" / "course" / "course.key").unlink()
    done = run("hand-out", "angles", "--rooms", "school", "--day", "2026-09-08")
    assert done.code == 1
    assert "B: not handed out: " in done.out
    assert "handed out in 2 of 3 rooms" in done.out
    own = run("hand-out", "angles", "--rooms", "school", "--questions", tmp_path, "--workers", "2")
    assert own.code != 0
    assert "--questions" in own.out
