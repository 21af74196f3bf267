"""A pick on the page, without a browser: what is sent, and what is not sent before the bet."""

import json
from pathlib import Path

import pytest
from seatwork.marking.pick_file import Bet, PickFile
from seatwork.opening.workbook import MARKER
from seatwork.picks import pick
from seatwork.picks.view import PickView
from seatwork.picks.wording import words

pytestmark = pytest.mark.slow


@pytest.fixture(autouse=True)
def workbook(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Work in a workbook folder of its own, with a file that names the learner."""
    (tmp_path / MARKER).write_text("format = 1\n")
    given = {"format": 1, "learner": "L07", "sheet": "cones", "form": 1, "mode": "practice"}
    given |= {"sheet_seed": "0" * 64, "version": ""}
    (tmp_path / "cones.given.json").write_text(json.dumps(given))
    (tmp_path / "shop").mkdir()
    monkeypatch.chdir(tmp_path)
    return tmp_path


def view(name: str, *, room: bool = False) -> PickView:
    """Show a pick as a cell does."""
    shown = pick(name, room=room)
    return PickView(shown.words, room=room, is_open=shown.is_open)


def kept(workbook: Path) -> dict[str, dict[str, object]]:
    """Read the learner's bets."""
    found: dict[str, dict[str, object]] = json.loads(
        (workbook / "answers" / "L07-picks.json").read_text()
    )["picks"]
    return found


@pytest.mark.parametrize("name", ["angle-eight", "flush-box", "cutter-guard", "angle-box"])
def test_the_page_does_not_have_the_answer_before_the_bet(name: str) -> None:
    """What is sent to the browser holds none of the giveaway words; only "before" is drawn."""
    shown = view(name)
    sent = json.dumps([shown.form.asked, shown.form.answer], ensure_ascii=False)
    asked = words(name)
    assert asked.after[:25] not in sent
    assert not any(word in sent for word in asked.giveaway)
    assert len(shown.box.children) == (2 if asked.shows else 1)


def test_a_bet_is_kept_under_the_learners_code(workbook: Path) -> None:
    """The file names the learner whom the workbook names; the answer comes with the bench."""
    shown = view("angle-eight")
    shown.heard({"lock": ["b"], "sure": False})
    assert shown.form.answer["said"] == "You bet b. Look again."
    assert shown.form.answer["drawn"]
    assert len(shown.box.children) == 2
    assert kept(workbook) == {"angle-eight": {"bet": "b", "sure": False}}


def test_no_idea_is_kept_as_such(workbook: Path) -> None:
    """It shows everything and is kept as a question mark."""
    shown = view("angle-box")
    shown.heard({"lock": "?"})
    assert shown.form.answer["said"] == "Now look."
    assert kept(workbook) == {"angle-box": {"bet": "?"}}


def test_betting_again_keeps_the_first(workbook: Path) -> None:
    """The second bet is answered, the first one stays in the file and is named."""
    shown = view("angle-box")
    shown.heard({"lock": ["a"]})
    shown.heard({"again": True})
    assert shown.form.answer == {"first": "Your first bet was a. It stays."}
    shown.heard({"lock": ["c"]})
    assert shown.form.answer["said"] == "You bet c. Right bet."
    assert kept(workbook) == {"angle-box": {"bet": "a"}}
    assert view("angle-box").form.answer["said"] == "You bet a. Look again."


@pytest.mark.parametrize("sent", [None, 3, "c", [], ["z"], [3], {"a": 1}, [["c"]]])
def test_whatever_the_page_sends_is_no_bet_until_it_is_one(workbook: Path, sent: object) -> None:
    """Anything else than a choice is answered in a sentence; nothing is locked or kept."""
    shown = view("angle-eight")
    shown.heard({"lock": sent, "sure": "yes"})
    assert "nothing is chosen" in shown.form.answer["trouble"]
    assert not (workbook / "answers").exists()


def test_a_damaged_file_is_said_and_the_bet_still_answered(workbook: Path) -> None:
    """The learner reads that the bet is not kept, sees the answer, and the file stays."""
    path = workbook / "answers" / "L07-picks.json"
    path.parent.mkdir()
    path.write_text("{")
    shown = view("angle-box")
    assert "it is damaged" in shown.form.answer["trouble"]
    shown.heard({"lock": ["c"]})
    assert shown.form.answer["said"] == "You bet c. Right bet."
    assert shown.form.answer["trouble"].startswith("Your bet is not kept.")
    assert path.read_text() == "{"


@pytest.mark.parametrize(("name", "bet"), [("flush-box", "c"), ("angle-box", "73 10")])
def test_a_bet_on_an_older_question_is_asked_again(workbook: Path, name: str, bet: str) -> None:
    """A bet that today's question cannot have had is not shown, and stays in the file."""
    PickFile("L07", {name: Bet(bet)}).save(workbook / "answers")
    assert view(name).form.answer == {}
    assert kept(workbook) == {name: {"bet": bet}}


def test_a_class_keeps_nothing(workbook: Path) -> None:
    """Hands open the answer; no file is made, whatever else the page sends."""
    shown = view("angle-eight", room=True)
    shown.heard({"hands": True})
    assert shown.form.answer["right"] == "Right: c."
    assert not (workbook / "answers").exists()


def test_the_house_opens_all(workbook: Path) -> None:
    """With ``display.picks`` open the answer stands at once, and the fold of the still is open."""
    (workbook / "shop" / "house_rules.toml").write_text('format = 1\n[display]\npicks = "open"\n')
    shown = view("angle-box")
    assert "display.picks" in shown.form.answer["said"]
    assert shown.form.answer["after"]
    assert "<details open>" in pick("angle-box").still()["text/markdown"]
    assert not (workbook / "answers").exists()


def test_a_view_that_is_closed_leaves_no_widget() -> None:
    """Running a cell again closes the form and the bench below it."""
    shown = view("angle-eight")
    shown.heard({"lock": ["c"]})
    shown.close()
    assert shown.form.comm is None
    assert shown.box.comm is None
