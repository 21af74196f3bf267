"""Answers from paper typed into the form: saved, judged, marked like a CSV of the same."""

from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking import marker, sheets, typed_back
from seatwork.questions.type.parts import NumberPart
from seatwork.record import forms, hand_out
from seatwork.worksheet import from_paper

LEARNERS = ("L01", "L02")


@pytest.fixture
def course(tmp_path: Path) -> Path:
    """Give an instructor's folder with the sheet on cones handed out."""
    folder = tmp_path / "course"
    folder.mkdir()
    hand_out(folder, sheets.load("cones"), LEARNERS, mode="graded")
    return folder


def slip_of(form, name: str) -> tuple[str, str]:
    """Give a wrong number of the first part that a known slip leads to, and its code."""
    part = form.asked[name].question.parts[0]
    assert isinstance(part, NumberPart)
    slip = next(s for s in part.slips if s.twin_of is None and s.value)
    return part.measure.write(round(slip.value, 5), part.system), slip.code


def test_a_slip_on_paper_is_named_at_once(course: Path) -> None:
    """A number typed from paper gets a notebook's verdict, for the instructor with the code."""
    form = from_paper("cones", course)
    number, code = slip_of(form, "c1")
    form.asked["c1"].boxes[0].value = number
    told = form.asked["c1"].verdicts[0].value
    assert "Not yet. You " in told
    assert f"[{code}]" in told


def test_each_box_is_saved_and_comes_back(course: Path) -> None:
    """What is typed stands in an answer file at once, and a new form shows it again."""
    form = from_paper("cones", course)
    assert not (course / "from_paper").exists()
    form.asked["c1"].boxes[0].value = ".139 in"
    assert "1 of" in form.saved.value
    again = from_paper("cones", course)
    assert again.asked["c1"].boxes[0].value == ".139 in"


def test_the_next_learner_has_boxes_of_their_own(course: Path) -> None:
    """The button goes from learner to learner, and nothing typed goes with it."""
    form = from_paper("cones", course)
    form.asked["c1"].boxes[0].value = ".139 in"
    form._next(None)
    assert form.file.learner == "L02"
    assert form.asked["c1"].boxes[0].value == ""
    form._next(None)
    assert form.asked["c1"].boxes[0].value == ".139 in"


def test_form_and_csv_are_marked_alike(course: Path, tmp_path: Path) -> None:
    """The same answers typed into the form and into a CSV earn the same points and slips."""
    sheet, form = sheets.load("cones"), from_paper("cones", course)
    number, _ = slip_of(form, "c1")
    form.asked["c1"].boxes[0].value = number
    path = tmp_path / "typed.csv"
    rows = [f"L01,{name},{number if name == 'c1' else ''}" for name in form.asked]
    path.write_text("\n".join(["learner,question,answer", *rows]), encoding="utf-8")
    typed = typed_back.read(path, sheet, forms(course))
    by_csv = marker.Marker(sheet, forms(course)).mark(typed)[0]
    by_form = marker.mark(forms(course), sheet, course / "from_paper")[0]
    assert by_form.points == by_csv.points
    told = [[(one.id, one.points, one.verdicts) for one in by.scored] for by in (by_form, by_csv)]
    assert told[0] == told[1]


def test_typed_markup_is_shown_as_text(course: Path) -> None:
    """Text from paper never becomes markup."""
    form = from_paper("cones", course)
    form.asked["c1"].boxes[0].value = "<img src=x onerror=alert(1)>"
    assert "<img" not in form.asked["c1"].verdicts[0].value


def test_a_sheet_handed_out_to_nobody_is_told(course: Path, tmp_path: Path) -> None:
    """Without a hand-out there are no numbers to judge by."""
    with pytest.raises(SeatworkError, match="handed out to nobody"):
        from_paper("angles", course)
    with pytest.raises(SeatworkError, match="handed out to nobody"):
        from_paper("cones", tmp_path / "elsewhere")


def test_an_answer_that_cannot_be_saved_is_told(course: Path) -> None:
    """Where the disk refuses, the form says so, and what was typed stays in its box."""
    (course / "from_paper").write_text("in the way", encoding="utf-8")
    form = from_paper("cones", course)
    form.asked["c1"].boxes[0].value = ".2"
    assert "not saved" in form.saved.value
    assert form.asked["c1"].boxes[0].value == ".2"
