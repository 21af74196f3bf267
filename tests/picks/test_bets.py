"""What is bet: read, judged and told; and the file it is kept in."""

import json
from pathlib import Path
from typing import Any

import pytest
from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.pick_file import Bet, PickFile, handed_in, reopen
from seatwork.marking.submissions import collect
from seatwork.picks import bets
from seatwork.picks.kept import KeptBets, mine
from seatwork.picks.wording import words

EIGHT, WALL, BOX, GUARD = (
    words(name) for name in ("angle-eight", "depth-wall", "flush-box", "cutter-guard")
)


@pytest.mark.parametrize(
    ("pick", "given", "kept", "right"),
    [
        (EIGHT, ["c"], "c", True),
        (EIGHT, ["a"], "a", False),
        (WALL, ["c", "b"], "b c", True),
        (WALL, ["b"], "b", False),
        (WALL, ["a", "b", "c"], "a b c", False),
        (BOX, ["73", "10"], "73 10", True),
        (BOX, [" 70,5 ", "5"], "70.5 5", True),
        (BOX, ["73", "40"], "73 40", False),
        (GUARD, ["c"], "c", True),
    ],
)
def test_a_bet_is_read_and_judged(pick: Any, given: list[str], kept: str, right: bool) -> None:
    """Ticks count as a set; every number must lie in its own band."""
    assert bets.read(pick, given) == kept
    assert bets.is_right(pick, kept) is right


@pytest.mark.parametrize(
    ("pick", "given", "fault"),
    [
        (EIGHT, [], "nothing is chosen"),
        (EIGHT, ["z"], "nothing is chosen"),
        (BOX, ["73", ""], "a box is empty"),
        (BOX, ["73"], "a box is empty"),
        (BOX, ["all", "10"], "that is no number"),
        (BOX, ["1e9", "10"], "that is no number"),
        (BOX, ["__import__('os')", "10"], "that is no number"),
        (BOX, ["101", "10"], "from 0 to 100"),
    ],
)
def test_what_is_no_bet_is_said(pick: Any, given: list[str], fault: str) -> None:
    """One sentence says what is wrong with it; nothing is locked."""
    with pytest.raises(SeatworkError, match=fault):
        bets.read(pick, given)


def test_no_idea_is_no_shame() -> None:
    """It is answered with "Now look." and every temptation is told."""
    assert bets.said(EIGHT, "?") == "Now look."
    assert [why.bet for why in bets.whys(EIGHT, "?")] == ["a", "b", "d"]


def test_only_the_own_temptation_is_told_after_a_miss() -> None:
    """A bet that is not right hears why that bet tempts; ticks hear of those missed too."""
    assert [why.bet for why in bets.whys(EIGHT, "b")] == ["b"]
    assert [why.bet for why in bets.whys(WALL, "a b")] == ["a", "c"]
    assert [why.says for why in bets.whys(BOX, "99 0")] == [
        BOX.ask[0].tempt[0].says,
        BOX.ask[1].tempt[0].says,
    ]


def test_the_first_bet_stays_in_the_file(tmp_path: Path) -> None:
    """A second bet changes nothing; what is kept names learner and pick, and no time."""
    kept = KeptBets("L07", tmp_path / "answers")
    kept.keep("angle-eight", Bet("c", True))
    kept.keep("angle-eight", Bet("a", None))
    kept.keep("depth-wall", Bet("?"))
    assert kept.of("angle-eight") == Bet("c", True)
    assert json.loads((tmp_path / "answers" / "L07-picks.json").read_text()) == {
        "format": 1,
        "learner": "L07",
        "picks": {"angle-eight": {"bet": "c", "sure": True}, "depth-wall": {"bet": "?"}},
    }


@pytest.mark.parametrize(
    "content",
    [
        "",
        "{",
        "[]",
        "{}",
        '{"format": 2, "learner": "L07", "picks": {}}',
        '{"format": 1, "learner": "L07"}',
        '{"format": 1, "learner": "L08", "picks": {}}',
        '{"format": 1, "learner": "L07", "picks": {"A b": {"bet": "c"}}}',
        '{"format": 1, "learner": "L07", "picks": {"a-b": {"bet": "<b>"}}}',
        '{"format": 1, "learner": "L07", "picks": {"a-b": {"bet": "c", "at": 3}}}',
        '{"format": 1, "learner": "L07", "picks": {"a-b": {"bet": "c", "sure": 1}}}',
        "[" * 100_000,
    ],
)
def test_a_damaged_file_is_told_and_never_written_over(tmp_path: Path, content: str) -> None:
    """Reading and keeping both say so in one sentence, and the file stays as it was."""
    path = tmp_path / "L07-picks.json"
    path.write_text(content)
    kept = KeptBets("L07", tmp_path)
    for deed in (lambda: kept.of("angle-eight"), lambda: kept.keep("angle-eight", Bet("c"))):
        with pytest.raises(SeatworkError) as found:
            deed()
        assert found.value.value == path.name
    assert path.read_text() == content


def test_a_bet_waits_for_the_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """While another writes there, a bet is refused in one sentence and nothing is changed."""

    def held(*_: Any, **__: Any) -> Any:
        raise SeatworkError(str(tmp_path), "another command is writing there", "wait")

    monkeypatch.setattr(files, "lock", held)
    with pytest.raises(SeatworkError, match="another command"):
        KeptBets("L07", tmp_path).keep("angle-eight", Bet("c"))
    assert not list(tmp_path.iterdir())


def test_outside_of_a_workbook_nothing_is_written(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Without a workbook a bet is taken and kept nowhere."""
    monkeypatch.chdir(tmp_path)
    mine().keep("angle-eight", Bet("c"))
    assert not list(tmp_path.iterdir())


def test_marking_passes_a_file_of_bets_over(tmp_path: Path) -> None:
    """Bets handed in with the answers are no paper, and not a word is said of them."""
    PickFile("L07", {"angle-eight": Bet("c")}).save(tmp_path)
    assert list(collect(tmp_path)) == []


def test_an_answer_file_does_not_pass_as_bets(tmp_path: Path) -> None:
    """A file of another content under that name is told, so that no paper is lost by its name."""
    (tmp_path / "L07-picks.json").write_text('{"format": 1, "learner": "L07", "answers": {}}')
    assert [one.name for one in collect(tmp_path)] == ["L07-picks.json"]


def test_bets_of_a_class_are_found_below_a_folder(tmp_path: Path) -> None:
    """Each learner's own folder is looked into; a damaged file is named."""
    for learner in ("L01", "L02"):
        PickFile(learner, {"angle-eight": Bet("c")}).save(tmp_path / learner)
    assert [one.learner for one in handed_in(tmp_path)] == ["L01", "L02"]
    (tmp_path / "L03-picks.json").write_text("{")
    with pytest.raises(SeatworkError, match="L03-picks"):
        list(handed_in(tmp_path))


def test_a_file_can_be_opened_again(tmp_path: Path) -> None:
    """What was saved is what is read; without a file there are no bets."""
    assert reopen("L07", tmp_path) == PickFile("L07")
    kept = PickFile("L07", {"flush-box": Bet("73 10", False)})
    kept.save(tmp_path)
    assert reopen("L07", tmp_path) == kept
