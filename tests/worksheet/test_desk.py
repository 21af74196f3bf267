"""The desk: answers kept, restored, and told what they are."""

from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.worksheet import NotYet, model_sheet, sheet


@pytest.fixture
def workbook(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Give an empty workbook folder, and work inside it."""
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    (tmp_path / "exercises").mkdir()
    monkeypatch.chdir(tmp_path / "exercises")
    return tmp_path


def test_answers_are_saved_at_once_and_restored(workbook: Path) -> None:
    """What was typed is in the file at once, and a new desk starts from it."""
    sheet("cones").ask("c2", answer=".5 in")
    assert (workbook / "answers" / "L00-cones-1.json").is_file()
    assert sheet("cones").answers.of("c2").parts == (".5 in",)


def test_a_damaged_answer_file_is_passed_over_for_its_backup(workbook: Path) -> None:
    """When the file is damaged, the state before the last key press comes back."""
    desk = sheet("cones")
    desk.keep("c1", [".1"])
    desk.keep("c1", [".17"])
    (workbook / "answers" / "L00-cones-1.json").write_bytes(b'{"format": 1, "lea')
    assert sheet("cones").answers.of("c1").parts == (".1",)


def test_nothing_is_written_outside_a_workbook(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Without a workbook folder answers stay in memory."""
    monkeypatch.chdir(tmp_path)
    sheet("cones").ask("c1", answer="1 in")
    assert list(tmp_path.iterdir()) == []


def test_a_model_sheet_leaves_the_learners_answers_alone(workbook: Path) -> None:
    """A model answer run inside a workbook writes nothing."""
    model_sheet("cones").ask("c1", answer=".211 in")
    assert not (workbook / "answers").exists()


def test_a_question_as_text_is_the_question_alone() -> None:
    """The text of an entry does not depend on the answer, so stored outputs stay true."""
    desk = model_sheet("cones")
    before = repr(desk.ask("c1"))
    assert repr(desk.ask("c1", answer=".422")) == before
    assert "0.406 in" in before
    assert "82°" in before


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (".211 in", "Right: 0.211 in. Accepted: 0.209 to 0.213 in."),
        ("0,211 in", "Right: 0.211 in."),
        ("5.36 mm", "Right: 0.211 in."),
        ("5.36", "Right size, in mm. The question asks for in."),
        (".422", "You used the whole difference"),
        ("two", "could not be read"),
        ("", "No answer yet."),
    ],
)
def test_feedback_says_what_an_answer_is(typed: str, said: str) -> None:
    """Right, other unit, slip, unreadable and blank answers each get their sentence.

    Seat 0.773 on 0.406 at 82°: (0.773 - 0.406) / (2 tan 41°) = 0.2111, worked by hand.
    """
    entry = model_sheet("cones").ask("c1", answer=typed)
    assert said in entry.feedback[0]


def test_an_unfinished_sheet_is_one_clean_line() -> None:
    """What is open is named, without a traceback, and as an error nbval sees."""
    with pytest.raises(NotYet) as caught:
        model_sheet("cones").finish()
    lines = caught.value._render_traceback_()
    assert len(lines) == 1
    assert "\n" not in lines[0]
    assert "c1 c2 c3" in lines[0]


def test_an_unknown_question_is_named() -> None:
    """A question that is not on the sheet gives one sentence with those that are."""
    with pytest.raises(SeatworkError, match="c1, c2, c3"):
        model_sheet("cones").ask("c9")
