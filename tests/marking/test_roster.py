"""The roster: codes at random, no names, faults named by row."""

from pathlib import Path
from random import Random

import pytest
from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import roster
from seatwork.marking.names import LEARNER


def test_codes_are_drawn_and_read_back(tmp_path: Path) -> None:
    """Forty different codes, each a letter and digits, come back from the file."""
    learners = roster.new(tmp_path, 40, Random(1))
    assert len({one.code for one in learners}) == 40
    assert all(LEARNER.fullmatch(one.code) for one in learners)
    assert roster.read(tmp_path) == learners


def test_a_roster_is_never_written_over(tmp_path: Path) -> None:
    """A second `roster new` is refused and changes nothing."""
    roster.new(tmp_path, 3, Random(1))
    before = (tmp_path / roster.ROSTER_FILE).read_bytes()
    with pytest.raises(SeatworkError, match="already"):
        roster.new(tmp_path, 5, Random(2))
    assert (tmp_path / roster.ROSTER_FILE).read_bytes() == before


@pytest.mark.parametrize(
    ("rows", "fault"),
    [
        ("learner,group\nAnna,a\nL02,b\nJo,c\n", "(?s)row 2.*learner code.*row 4.*learner code"),
        ("learner,group\nL01,a\nL01,b\n", "twice"),
        ("code\nL01\n", "column learner: the heading is missing"),
        ("learner,extra_tries\nL01,many\n", "row 2, column extra_tries.*no number"),
    ],
)
def test_a_fault_on_the_roster_is_named(tmp_path: Path, rows: str, fault: str) -> None:
    """Names, doubles, missing columns and words for numbers are told with their row."""
    (tmp_path / roster.ROSTER_FILE).write_text(rows, encoding="utf-8")
    with pytest.raises(SeatworkError, match=fault):
        roster.read(tmp_path)


def test_groups_with_commas_and_signs_survive(tmp_path: Path) -> None:
    """Commas, quotes, Ñ and emoji come back; what begins a formula is made plain text."""
    groups = ["a, b", '"quoted"', "Ñandú", "🙂", "=1+1", "-4"]
    rows = [(f"L0{n}", group, 0) for n, group in enumerate(groups, 1)]
    files.write_table(tmp_path / roster.ROSTER_FILE, roster.HEADS, rows)
    read = [one.group for one in roster.read(tmp_path)]
    assert read == groups
    text = (tmp_path / roster.ROSTER_FILE).read_text(encoding="utf-8-sig")
    assert ",'=1+1," in text


def test_negative_numbers_stay_numbers() -> None:
    """Only text is made plain; a number keeps its sign."""
    assert files.plain(-0.004) == -0.004
    assert files.plain("-0.004") == "'-0.004"
