"""The week by buttons: each press does its work once, says it in sentences, and loses nothing."""

from collections.abc import Callable
from datetime import UTC, datetime
from html import unescape
from pathlib import Path

import pytest
from seatwork.marking import AnswerFile, examples, sheets
from seatwork.marking.text import right_answer
from seatwork.record import forms, open_record, picture
from seatwork.worksheet import week
from seatwork.worksheet.term_desk import pressing
from seatwork.worksheet.term_desk.week_view import Week

from tests.as_saved import as_saved

pytestmark = pytest.mark.slow
FEW = ("L01", "L02")


@pytest.fixture(autouse=True)
def no_wait(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let tests press as fast as they can; a double click has its own test."""
    monkeypatch.setattr(pressing, "AT_ONCE", -1.0)


@pytest.fixture
def desk(tmp_path: Path) -> Week:
    """Give the week of the made-up class, in which two have got the sheet on cones."""
    made = week(examples.make_course(tmp_path / "course"), "2026-09-14")
    made.sheet.value, made.due.value, made.only.value = "cones", "2026-09-21", " ".join(FEW)
    press(made, "Hand out and print")
    return made


def press(desk: Week, words: str) -> str:
    """Press a button, and return what was said."""
    (found,) = [one for one in desk.pressing.buttons if one.description == words]
    found.click()
    return unescape(desk.pressing.said.value.split("<br><br>")[0]).replace("<br>", chr(10))


def hand_in(desk: Week, learner: str, folder: Path, **typed: tuple[str, ...]) -> Path:
    """Answer a form, right but for what is typed otherwise, and save it."""
    form = forms(desk.course).form("cones", learner, 1)
    assert form is not None
    file = AnswerFile(learner=learner, sheet="cones", form=1)
    for name, question in form.questions(sheets.load("cones")).items():
        parts = typed.get(name) or tuple(right_answer(part) for part in question.parts)
        file = file.changed(name, parts=parts, tries=1)
    file = as_saved(desk.course, file)
    folder.mkdir(exist_ok=True)
    (folder / file.name).write_bytes(file.content())
    return folder / file.name


def cells(desk: Week, day: str = "2026-09-21") -> dict[str, str]:
    """Return how the sheet stands for each learner."""
    record = open_record(desk.course)
    try:
        return {line.learner: line.cells.get("cones", "") for line in picture(record, day).lines}
    finally:
        record.close()


def test_codes_are_drawn_once(tmp_path: Path) -> None:
    """The button goes when there is a roster; a number that is none is said."""
    made = week(tmp_path / "course")
    made.count.value = "a dozen"
    assert "that is no number of learners" in press(made, "Draw codes")
    made.count.value = "3"
    assert "3 codes: " in press(made, "Draw codes")
    before = (tmp_path / "course" / "roster.csv").read_bytes()
    assert made.draw.layout.display == "none"
    assert "Not done" in press(made, "Draw codes")
    assert (tmp_path / "course" / "roster.csv").read_bytes() == before


def test_the_week_from_the_hand_out_to_print(desk: Week, tmp_path: Path) -> None:
    """Taken in, marked, looked at, printed; each step says what it came to."""
    assert (desk.course / "cones-papers-L01-L02.pdf").read_bytes().startswith(b"%PDF")
    came = tmp_path / "stick"
    hand_in(desk, "L01", came)
    (came / "notes.docx").write_bytes(b"PK")
    desk.place.value = str(came)
    said = press(desk, "Take in the folder")
    assert "Taken in: 1 new, 0 known already. Sheets: cones." in said
    assert "Not taken in: notes.docx: that is no answer file. It stays where it is." in said
    assert "1 new, 0 known already, 0 changed" in press(desk, "Mark this sheet")
    assert cells(desk) == {"L01": "100+", "L02": "handed out"} | dict.fromkeys(
        examples.CLASS[2:], ""
    )
    assert desk.shown is not None
    assert desk.shown.picture.lines[0].cells == {"cones": "100+"}
    assert "To print" in press(desk, "Print the class")
    assert f"To print: {len(examples.CLASS)} reports" in press(desk, "Print the reports")
    assert len(list((tmp_path / "printed").glob("L*-report.pdf"))) == len(examples.CLASS)


def test_each_press_twice_changes_nothing_more(desk: Week, tmp_path: Path) -> None:
    """The record is the same, byte for byte, after every button was pressed again."""
    hand_in(desk, "L01", tmp_path / "stick")
    desk.place.value = str(tmp_path / "stick")
    for words in ("Take in the folder", "Mark this sheet"):
        press(desk, words)
    before = (desk.course / "record.db").read_bytes()
    assert "0 new, 1 known already" in press(desk, "Take in the folder")
    assert "0 new, 1 known already, 0 changed" in press(desk, "Mark this sheet")
    press(desk, "Hand out and print")
    assert (desk.course / "record.db").read_bytes() == before


def test_the_second_press_of_a_double_click_is_passed_over(
    desk: Week, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What was pressed while the first was at work is heard at its end, and is no second wish."""
    done: list[int] = []

    def deed(_progress: Callable[[int], None]) -> list[str]:
        done.append(1)
        desk.pressing.press("deed", deed)  # heard while it is at work
        return ["done"]

    monkeypatch.setattr(pressing, "AT_ONCE", 10.0)
    monkeypatch.setattr(desk.pressing, "_ended", -1e9)
    desk.pressing.press("deed", deed)
    desk.pressing.press("deed", deed)
    assert done == [1]
    assert not any(one.disabled for one in desk.pressing.buttons)


def test_two_papers_of_one_form_are_both_taken_in(desk: Week, tmp_path: Path) -> None:
    """The second never goes over the first; marked in one pile, a person must choose."""
    hand_in(desk, "L01", tmp_path / "stick")
    desk.place.value = str(tmp_path / "stick")
    press(desk, "Take in the folder")
    hand_in(desk, "L01", tmp_path / "stick", c1=(".001 in",))
    assert "1 new, 0 known" in press(desk, "Take in the folder")
    there = sorted(path.name for path in (desk.course / "handed_in" / "cones").iterdir())
    assert there == ["L01-cones-1 (1).json", "L01-cones-1.json"]
    assert "two papers with other answers" in press(desk, "Mark this sheet")
    assert cells(desk)["L01"] == "?"


def test_files_chosen_on_the_page_are_taken_in_by_what_is_inside(
    desk: Week, tmp_path: Path
) -> None:
    """A browser's name for a file names nothing on the disk; what is no answer file is told."""
    path = hand_in(desk, "L02", tmp_path / "stick")
    sent = {"../../L02 (3).json": path.read_bytes(), "photo.json": b"{}"}
    desk.files.value = tuple(
        {"name": name, "type": "application/json", "size": len(content),
         "content": memoryview(content), "last_modified": datetime(2026, 9, 21, tzinfo=UTC)}
        for name, content in sent.items()
    )  # fmt: skip
    said = press(desk, "Take in the files chosen")
    assert "Taken in: 1 new" in said
    assert "Not taken in: photo.json" in said
    assert (desk.course / "handed_in" / "cones" / "L02-cones-1.json").is_file()
    assert "none was chosen" in press(desk, "Take in the files chosen")


@pytest.mark.parametrize("place", ["", "nowhere", "."])
def test_a_folder_that_will_not_do_is_said(desk: Week, place: str, tmp_path: Path) -> None:
    """No folder, or one that holds the course itself: its copies are no papers."""
    desk.place.value = str(tmp_path) if place == "." else place
    said = press(desk, "Take in the folder")
    assert "Not done" in said
    assert not (desk.course / "handed_in").exists()


def decide(desk: Week, what: str, **typed: str) -> str:
    """Type a decision and keep it."""
    desk.decisions.what.value = what
    for name, text in typed.items():
        desk.decisions.boxes[name].value = text
    return press(desk, "Keep the decision")


def test_decisions_are_kept_about_the_cell_that_was_pressed(desk: Week, tmp_path: Path) -> None:
    """Points, lost, excused, signed, left, and back: each with its id to undo it."""
    hand_in(desk, "L01", tmp_path / "stick", c1=(".001 in",))
    desk.place.value = str(tmp_path / "stick")
    press(desk, "Take in the folder")
    press(desk, "Mark this sheet")
    assert "no cell of the class was pressed" in decide(desk, "excused", reason="court date")
    assert desk.shown is not None
    desk.shown.look("L01", "cones")
    said = decide(desk, "points by hand", question="c1", points="9", reason="set up right")
    assert "c1 is worth 2" in said
    assert desk.decisions.boxes["reason"].value == "set up right"  # nothing typed is lost
    said = decide(desk, "points by hand", question="c1", points="2", reason="set up right")
    assert "L01, cones: c1 is 2 now" in said
    assert cells(desk)["L01"] == "100+"
    made = said.rpartition("the id ")[2].split(".")[0]
    assert "is taken back" in decide(desk, "take back", id=made, reason="talked it over")
    assert cells(desk)["L01"] == "75-"
    desk.shown.look("L02", "cones")
    assert "no zero" in decide(desk, "paper lost", reason="lost in the shop")
    assert cells(desk)["L02"] == "paper lost"
    said = decide(desk, "signed on paper for a machine", machine="drill press", paper="")
    assert "does not say where it lies" in said
    said = decide(desk, "signed on paper for a machine", machine="drill press", paper="binder 4")
    assert "software clears nobody" in said
    assert "left the course" in decide(desk, "left the course", reason="moved away")


def test_names_are_printed_and_never_kept(desk: Week, tmp_path: Path) -> None:
    """The list is read for what is printed; into the course folder nothing is printed with it."""
    names = tmp_path / "names.csv"
    names.write_text("learner,name\nL01,Zebulon Quick\n", encoding="utf-8")
    desk.names.value = str(names)
    assert "To print" in press(desk, "Print the reports")
    for path in desk.course.rglob("*"):
        assert not path.is_file() or b"Zebulon" not in path.read_bytes()
    desk.to.value = str(desk.course / "printed")
    assert "names are never written into the course folder" in press(desk, "Print the class")
    assert not (desk.course / "printed").exists()


def test_a_fault_of_the_program_is_one_sentence(
    desk: Week, monkeypatch: pytest.MonkeyPatch
) -> None:
    """No traceback, no value; the buttons work again."""

    def broken(*_args: object, **_more: object) -> list[str]:
        raise ValueError("L01 typed <b>")

    monkeypatch.setattr("seatwork.worksheet.term_desk.deeds.mark", broken)
    said = press(desk, "Mark this sheet")
    assert "Not done. " in said
    assert "L01" not in said
    assert not any(one.disabled for one in desk.pressing.buttons)
