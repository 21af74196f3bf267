"""A course with one sheet handed out; the modules of this folder find `schools`."""

import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from seatwork.marking import examples, sheets
from seatwork.record import hand_out

sys.path.insert(0, str(Path(__file__).parent))

from schools import School, answered


@pytest.fixture
def school(tmp_path: Path) -> Callable[..., School]:
    """Give a function that makes a course of a few learners with one sheet handed out."""

    def make(count: int = 4, name: str = "cones", due: str = "", place: str = "course") -> School:
        folder = examples.make_course(tmp_path / place)
        learners = [f"L{number:02d}" for number in range(1, count + 1)]
        hand_out(folder, name, learners, mode="graded", due=due, day="2026-09-07")
        papers = tuple(answered(folder, name, code, 1) for code in learners)
        return School(folder, sheets.load(name), papers)

    return make
