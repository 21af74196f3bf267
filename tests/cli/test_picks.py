"""``seatwork slips --picks``: what a class bet, without names."""

from pathlib import Path

from seatwork.marking.pick_file import Bet, PickFile


def bet(folder: Path, bets: str) -> Path:
    """Put the file of each learner into a folder of its own."""
    for number, letter in enumerate(bets, 1):
        file = PickFile(f"L{number:02}", {"angle-eight": Bet(letter)})
        file.save(folder / file.learner)
    return folder


def test_a_class_is_counted_without_names(run, tmp_path: Path) -> None:
    """Files are found wherever they lie below the folder; no learner's code is printed."""
    told = run("slips", "--picks", str(bet(tmp_path / "in", "aabcc")))
    assert "c (right) 2" in told.out
    assert "First bets of 5 learners" in told.out
    assert "L01" not in told.out


def test_a_small_class_is_told_why_not(run, tmp_path: Path) -> None:
    """Four learners are too few, and the command says so in one sentence."""
    told = run("slips", "--picks", str(bet(tmp_path / "in", "aabc")))
    assert "5 learners or more, and 4 were found" in told.out


def test_a_sheet_beside_it_is_refused(run, tmp_path: Path) -> None:
    """Bets belong to no sheet: naming both does nothing."""
    told = run("slips", "cones", "--picks", str(tmp_path))
    assert "bets belong to no sheet" in told.out
