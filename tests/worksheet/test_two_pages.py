"""A sheet open in two pages: both add to the same answers, and nothing typed is lost unsaid."""

import json
from dataclasses import replace
from multiprocessing import get_context
from pathlib import Path
from threading import Thread

import pytest
from seatwork.errors import SeatworkError
from seatwork.files import LOCK
from seatwork.marking import given, marker, sheets
from seatwork.marking.answers import AnswerFile, read
from seatwork.record import forms, hand_out
from seatwork.worksheet import Desk, from_paper
from seatwork.worksheet.form import Form

NAMES = ("c1", "c2", "c3")


def page(folder: Path) -> Desk:
    """Open the sheet on cones in one more page."""
    return Desk(sheets.load("cones"), given.practice("cones"), folder)


def kept(folder: Path) -> dict:
    """Read what the answer file holds."""
    return json.loads((folder / "L00-cones-1.json").read_text(encoding="utf-8"))["answers"]


@pytest.mark.parametrize("order", [(0, 1), (1, 0)])
def test_answers_of_two_pages_are_added(tmp_path: Path, order: tuple[int, int]) -> None:
    """Each page answers another question, key press by key press; the file holds both."""
    forms = [[Form(desk.ask(name)) for name in NAMES] for desk in (page(tmp_path), page(tmp_path))]
    for text in (".", ".2", ".21"):
        for number in order:
            forms[number][number].type([text])
    assert [kept(tmp_path)[name]["parts"] for name in ("c1", "c2")] == [[".21"], [".21"]]
    assert all(form.said == "" for form in forms[0] + forms[1])


def test_an_answer_of_another_page_is_not_written_over(tmp_path: Path) -> None:
    """The later page says what the other wrote, keeps off it, and goes on once it is shown."""
    first, second = page(tmp_path), page(tmp_path)
    one, two = Form(first.ask("c1")), Form(second.ask("c1"))
    one.type([".211 in"])
    two.type([".3"])
    assert "not saved, since another page has answered it (.211 in)" in two.said
    assert "run this cell again" in two.said
    assert kept(tmp_path)["c1"]["parts"] == [".211 in"]
    two.press("check")
    assert "not saved" in two.said
    assert kept(tmp_path)["c1"]["tries"] == 0
    again = Form(second.ask("c1"))
    assert again.texts == (".211 in",)
    again.type([".3"])
    assert kept(tmp_path)["c1"]["parts"] == [".3"]
    one.type([".4"])
    assert "another page has answered it (.3)" in one.said
    assert kept(tmp_path)["c1"]["parts"] == [".3"]


def test_an_emptied_box_is_an_answer_too(tmp_path: Path) -> None:
    """What another page took away does not come back by a key press."""
    first = page(tmp_path)
    first.ask("c1")
    first.keep("c1", [".2"])
    form = Form(page(tmp_path).ask("c1"))
    first.keep("c1", [""])
    form.type([".21"])
    assert "its box is empty now" in form.said
    assert kept(tmp_path)["c1"]["parts"] == [""]


@pytest.mark.parametrize("typed_first", [True, False])
def test_new_numbers_in_one_page_stop_the_other(tmp_path: Path, typed_first: bool) -> None:
    """An answer to the old numbers is never kept, or judged, as one to the new."""
    first, second = page(tmp_path), page(tmp_path)
    one, two = Form(first.ask("c1")), Form(second.ask("c1"))
    if typed_first:
        two.type([".2"])
        one = Form(first.ask("c1"))
    one.press("renew")
    two.type([".211 in"])
    assert "another page has drawn new numbers" in two.said
    two.press("check")
    assert "Right" not in two.said
    assert (kept(tmp_path)["c1"]["attempt"], kept(tmp_path)["c1"]["parts"]) == (2, [])
    assert second.ask("c1").question == first.ask("c1").question


def test_a_page_that_drew_new_numbers_goes_on_with_them(tmp_path: Path) -> None:
    """In the same form, without a run: what is typed next answers the new numbers."""
    form = Form(page(tmp_path).ask("c1"))
    form.type([".2"])
    before = form.view.asked["lines"]
    form.press("renew")
    assert form.view.asked["lines"] != before
    form.type([".3"])
    assert "not saved" not in form.said
    assert (kept(tmp_path)["c1"]["attempt"], kept(tmp_path)["c1"]["parts"]) == (2, [".3"])
    assert kept(tmp_path)["c1"]["earlier"] == [[".2"]]
    assert page(tmp_path).answers.of("c1").earlier == ((".2",),)


def test_tries_and_hints_of_two_pages_add_up(tmp_path: Path) -> None:
    """Whoever checks in two pages has used two tries."""
    first, second = page(tmp_path), page(tmp_path)
    for desk in (first, second, first):
        desk.count("c1", "tries")
        desk.count("c1", "hints")
    assert (kept(tmp_path)["c1"]["tries"], kept(tmp_path)["c1"]["hints"]) == (3, 3)


def test_tries_used_in_one_page_are_used_in_the_other(tmp_path: Path) -> None:
    """Where a sheet allows two tries, opening it twice gives no more."""
    plan = replace(sheets.load("cones"), tries=2)
    first, second = (Desk(plan, given.practice("cones"), tmp_path) for _ in range(2))
    one, two = Form(first.ask("c1")), Form(second.ask("c1"))
    one.type([".1"])
    two = Form(second.ask("c1"))
    for form in (one, one, two):
        form.press("check")
    assert "You have used your 2 tries" in two.said
    assert kept(tmp_path)["c1"]["tries"] == 2


def test_the_end_of_a_sheet_counts_what_another_page_answered(tmp_path: Path) -> None:
    """The last cell of one page sees the right answers of the other: the worked sheet's."""
    first, second = page(tmp_path), page(tmp_path)
    first.ask("c1", answer=".211 in")
    second.ask("c2", answer=".652 in")
    second.ask("c3", answer=("b", ".022 in"))
    assert repr(first.finish()) == "Cones: all 3 questions are right."


def test_a_lost_or_damaged_file_costs_no_answer_of_an_open_page(tmp_path: Path) -> None:
    """What a page has in hand is written again with its next answer."""
    desk = page(tmp_path)
    desk.keep("c1", [".1"])
    for harm in (Path.unlink, lambda path: path.write_bytes(b'{"format": 1,')):
        harm(tmp_path / "L00-cones-1.json")
        desk.keep("c2", [".2"])
        assert [kept(tmp_path)[name]["parts"] for name in ("c1", "c2")] == [[".1"], [".2"]]


def test_a_file_of_a_newer_version_is_not_written_over(tmp_path: Path) -> None:
    """Neither a page that opens nor one that is open puts its own file in that one's place."""
    form = Form(page(tmp_path).ask("c1"))
    path = tmp_path / "L00-cones-1.json"
    path.write_text('{"format": 9, "more": true}', encoding="utf-8")
    form.type([".2"])
    assert "not saved, since a newer version wrote it" in form.said
    with pytest.raises(SeatworkError, match="use that version"):
        page(tmp_path)
    assert path.read_text(encoding="utf-8") == '{"format": 9, "more": true}'


def test_a_disk_that_refuses_is_told_under_the_question(tmp_path: Path) -> None:
    """The form says that nothing was saved, and nothing else changes."""
    (tmp_path / "answers").write_text("in the way", encoding="utf-8")
    form = Form(page(tmp_path / "answers").ask("c1"))
    form.type([".2"])
    assert "not saved, since a file stands where a folder is needed" in form.said
    assert form._typed == (".2",)


def test_two_forms_for_paper_add_up_and_are_marked(tmp_path: Path) -> None:
    """Two pages of typed paper keep each other's answers; a lock left there is no answer."""
    course = tmp_path / "course"
    course.mkdir()
    hand_out(course, sheets.load("cones"), ("L07",), mode="graded")
    first, second = from_paper("cones", course), from_paper("cones", course)
    first.asked["c1"].boxes[0].value = ".1"
    second.asked["c2"].boxes[0].value = ".2"
    second.asked["c1"].boxes[0].value = ".3"
    assert "another page has answered it (.1)" in second.saved.value
    assert (course / "from_paper" / LOCK).exists()
    marked = marker.mark(forms(course), sheets.load("cones"), course / "from_paper")
    assert [one.name for one in marked if one.file] == ["L07-cones-1.json"]
    assert {one.doubt for one in marked if not one.file} <= {"that is a backup copy"}
    assert forms(course).form("cones", "L07", 1) is not None


def type_on(folder: str, name: str, count: int) -> list[str]:
    """Answer one question many times over; return what was refused."""
    desk, refused = page(Path(folder)), []
    desk.ask(name)
    for number in range(count):
        try:
            desk.keep(name, [f".{number:03d}"])
            desk.count(name, "tries")
        except SeatworkError as error:
            refused.append(str(error))
    return refused


@pytest.mark.slow
def test_three_pages_typing_at_once_lose_nothing(tmp_path: Path) -> None:
    """Three processes answer a question each, as fast as they can; every answer and try counts."""
    count = 20
    with get_context("spawn").Pool(3) as pool:
        work = [(str(tmp_path), name, count) for name in NAMES]
        assert pool.starmap(type_on, work) == [[], [], []]
    for name in NAMES:
        assert kept(tmp_path)[name]["parts"] == [f".{count - 1:03d}"]
        assert kept(tmp_path)[name]["tries"] == count


def test_typing_and_pressing_come_from_two_threads(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What a button read just before a key press was saved is not taken for another page's."""
    form = Form(page(tmp_path).ask("c1"))
    form.type([".3"])
    before = read(tmp_path / "L00-cones-1.json")
    pressing = Thread(target=form.entry.desk.kept.refresh)
    save = AnswerFile.save

    def save_while_pressed(answers: AnswerFile, folder: Path) -> None:
        save(answers, folder)
        pressing.start()
        pressing.join(0.5)

    monkeypatch.setattr("seatwork.worksheet.kept.read", lambda path: before)
    monkeypatch.setattr(AnswerFile, "save", save_while_pressed)
    form.type([".4"])
    pressing.join()
    monkeypatch.undo()
    form.press("check")
    assert "not saved" not in form.said
    assert kept(tmp_path)["c1"]["parts"] == [".4"]
    assert kept(tmp_path)["c1"]["tries"] == 1
