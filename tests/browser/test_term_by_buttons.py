"""A term walked in a real JupyterLab by buttons alone, as an instructor with no terminal does."""

import os
from pathlib import Path

import pytest
from playwright.sync_api import expect
from seatwork.marking import AnswerFile, roster, sheets
from seatwork.marking.text import right_answer
from seatwork.record import forms

from tests.as_saved import as_saved

pytestmark = pytest.mark.long
LOOSE = 60_000
CELL = ["import seatwork as sw", 'sw.worksheet.week("course", day="2026-09-14")']


class Desk:
    """The week on the page: boxes by their labels, buttons by their words."""

    def __init__(self, page, folder: Path) -> None:
        self.page, self.course = page, folder / "course"
        self.view = page.locator(".seatwork-term").first
        self.said = page.locator(".seatwork-told").first

    def type(self, label: str, text: str) -> None:
        """Type into the box of a label."""
        box = self.view.get_by_label(label).locator("visible=true")
        box.fill(text)
        box.press("Tab")

    def choose(self, label: str, option: str) -> None:
        """Choose from the menu of a label."""
        self.view.get_by_label(label, exact=True).select_option(option)

    def press(self, words: str, said: str) -> None:
        """Press a button and wait for what it says."""
        self.view.get_by_role("button", name=words, exact=True).click()
        expect(self.said).to_contain_text(said, timeout=LOOSE)
        expect(self.said).not_to_contain_text("at work", timeout=LOOSE)
        self.page.wait_for_timeout(300)

    def cell(self, learner: str, sheet: str):
        """Find the cell of a learner and a sheet by its accessible name."""
        return self.view.locator(f'button[aria-label^="{learner}, {sheet}: "]')

    def is_said(self, learner: str, sheet: str, words: str) -> None:
        """Hold a cell against what it says."""
        name = f"{learner}, {sheet}: {words}"
        expect(self.cell(learner, sheet)).to_have_attribute("aria-label", name, timeout=LOOSE)

    def picture(self, name: str) -> None:
        """Keep a picture of the page, to look at."""
        folder = os.environ.get("SEATWORK_PICTURES")
        if folder:
            self.page.wait_for_timeout(500)
            self.page.screenshot(path=str(Path(folder) / f"{name}.png"))


def hand_in(course: Path, learner: str, name: str, form: int, to: Path, wrong=()) -> None:
    """Answer a form, right but for the questions named, and save it where it is handed in."""
    given = forms(course).form(name, learner, form)
    file = AnswerFile(learner=learner, sheet=name, form=form)
    for question, asked in given.questions(sheets.load(name)).items():
        right = tuple(right_answer(part) for part in asked.parts)
        parts = tuple(".001 in" for _ in right) if question in wrong else right
        file = file.changed(question, parts=parts, tries=1)
    to.mkdir(exist_ok=True)
    (to / file.name).write_bytes(as_saved(course, file).content())


def test_a_term_is_kept_by_buttons(lab, page) -> None:
    """Codes, hand-out, a pile, a late paper, decisions, undo, re-test, parts of the print."""
    lab.open(page, lab.write("week.ipynb", ["\n".join(CELL)]))
    lab.run_all(page)
    desk = Desk(page, lab.folder)
    expect(desk.view).to_be_visible(timeout=LOOSE)
    desk.type("How many learners", "12")
    desk.press("Draw codes", "12 codes:")
    codes = sorted(found.code for found in roster.read(desk.course))
    one, two, three, four, five, six, *others = codes
    desk.picture("term_1_hand_out")
    desk.choose("Sheet", "cones")
    desk.type("Due, such as", "2026-09-21")
    desk.press("Hand out and print", "Cones, sitting 1: 12 forms, due 2026-09-21.")
    desk.is_said(four, "cones", "handed out")

    stick = lab.folder / "stick"
    for learner in (one, two, three, five, six, *others):
        hand_in(desk.course, learner, "cones", 1, stick, wrong=("c1",) if learner == two else ())
    desk.type("Day, such as", "2026-09-21")
    desk.type("Folder handed in", "stick")
    desk.press("Take in the folder", "Taken in: 11 new, 0 known already.")
    desk.press("Mark this sheet", "11 new, 0 known already, 0 changed")
    desk.is_said(one, "cones", "100 percent, passed")
    desk.is_said(two, "cones", "75 percent, not yet")
    desk.press("Mark this sheet", "0 new, 11 known already, 0 changed")
    desk.picture("term_2_marked")

    hand_in(desk.course, four, "cones", 1, lab.folder / "late")
    desk.type("Day, such as", "2026-09-28")
    desk.type("Folder handed in", "late")
    desk.press("Take in the folder", "Taken in: 1 new, 0 known already.")
    desk.press("Mark this sheet", f"after the day: {four}.")
    desk.is_said(four, "cones", "100 percent, passed, after the day")
    desk.is_said(one, "cones", "100 percent, passed")

    desk.cell(two, "cones").focus()
    page.keyboard.press("Enter")
    told = desk.view.locator(".seatwork-tables")
    expect(told).to_contain_text(f"{two}, cones, sitting 1: not yet, 6 of 8", timeout=LOOSE)
    page.keyboard.press("ArrowDown")
    expect(desk.cell(three, "cones")).to_be_focused()
    page.keyboard.press("ArrowLeft")
    page.keyboard.press("Enter")
    expect(told).to_contain_text(f"Report of {three}", timeout=LOOSE)
    desk.cell(two, "cones").click()
    expect(told).to_contain_text("History", timeout=LOOSE)
    desk.cell(two, "cones").scroll_into_view_if_needed()
    desk.picture("term_3_cell")

    desk.type("Question, such as", "c1")
    desk.type("Points", "1")
    desk.type("Why, in a few words", "set up right, slipped on the keys")
    desk.press("Keep the decision", "c1 is 1 now")
    desk.is_said(two, "cones", "88 percent, passed")
    made = desk.said.inner_text().partition("with the id ")[2].split(".")[0]
    desk.choose("Decide", "take back")
    desk.type("Id, from the history", made)
    desk.type("Why, in a few words", "talked it over")
    desk.press("Keep the decision", "is taken back")
    desk.is_said(two, "cones", "75 percent, not yet")

    desk.choose("Sheet", "angles")
    desk.type("Due, such as", "2026-10-05")
    desk.press("Hand out and print", ": 12 forms, due 2026-10-05.")
    for learner, word, reason, shown in (
        (one, "paper lost", "lost in the shop", "paper lost"),
        (three, "excused", "court date", "excused"),
    ):
        desk.cell(learner, "angles").click()
        expect(told).to_contain_text(f"{learner}, angles, sitting 1", timeout=LOOSE)
        desk.choose("Decide", word)
        desk.type("Why, in a few words", reason)
        desk.press("Keep the decision", "no zero")
        desk.is_said(learner, "angles", shown)
    desk.cell(five, "angles").click()
    expect(told).to_contain_text(f"{five}, angles, sitting 1", timeout=LOOSE)
    desk.choose("Decide", "left the course")
    desk.type("Why, in a few words", "moved away")
    desk.press("Keep the decision", f"{five}: left the course.")
    desk.is_said(five, "angles", "left")
    desk.is_said(five, "cones", "100 percent, passed")
    desk.view.locator(f'button[aria-label^="{six}: the report"]').click()
    expect(told).to_contain_text(f"Report of {six}", timeout=LOOSE)
    desk.choose("Decide", "signed on paper for a machine")
    desk.type("Machine", "bench drill press")
    desk.press("Keep the decision", "does not say where it lies")
    desk.type("Where the signed paper lies", "binder 2026, sheet 4")
    desk.press("Keep the decision", "a person signed on paper; software clears nobody")
    expect(desk.view.locator(".seatwork-grid, table").first).to_contain_text("bench drill press")
    desk.picture("term_4_decided")

    desk.choose("Sheet", "cones")
    desk.choose("Which sitting", "first re-test")
    desk.type("Only these codes", two)
    desk.press("Hand out and print", "Cones, sitting 2: 1 forms")
    hand_in(desk.course, two, "cones", 2, lab.folder / "again")
    desk.type("Folder handed in", "again")
    desk.press("Take in the folder", "Taken in: 1 new")
    desk.press("Mark this sheet", "1 new, 12 known already")
    desk.is_said(two, "cones", "100 percent, passed, from re-test 2")

    names = lab.folder / "names.csv"
    names.write_text(f"learner,name\n{one},Zebulon Quick\n", encoding="utf-8")
    desk.type("Your list of names", "names.csv")
    desk.press("Print the class", "class-2026-09-28.pdf")
    desk.press("Print the reports", "12 reports in")
    assert len(list((lab.folder / "printed").glob("*-report.pdf"))) == 12
    desk.picture("term_5_printed")
    lab.save(page)
    page.wait_for_timeout(1000)
    assert "Zebulon" not in (lab.folder / "week.ipynb").read_text(encoding="utf-8")
    for path in desk.course.rglob("*"):
        assert not path.is_file() or b"Zebulon" not in path.read_bytes(), path
