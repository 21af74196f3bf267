"""Answers from paper typed into the form in a real JupyterLab, box by box, by keyboard."""

import json
import os
from pathlib import Path

from playwright.sync_api import expect
from seatwork.marking import sheets
from seatwork.record import hand_out

LOOSE = 30_000


def test_a_sheet_is_typed_back_by_keyboard(lab, page) -> None:
    """A number is typed, Tab saves it and names the slip, and the next learner's boxes come."""
    course = lab.folder / "course"
    course.mkdir(exist_ok=True)
    hand_out(course, sheets.load("cones"), ("L01", "L02"), mode="graded")
    form = ["from seatwork import worksheet", 'worksheet.from_paper("cones", "course")']
    lab.open(page, lab.write("typed_back.ipynb", form))
    lab.run_all(page)
    shown = page.locator(".seatwork-term")
    box = shown.locator("input[type=text]").first
    expect(box).to_be_visible(timeout=LOOSE)
    box.click()
    page.keyboard.type("<b>a</b>")
    page.keyboard.press("Tab")
    expect(shown.get_by_role("status").first).to_contain_text("<b>", timeout=LOOSE)
    box.fill("0.001")
    page.keyboard.press("Tab")
    kept = course / "from_paper" / "L01-cones-1.json"
    expect(shown.get_by_role("status").last).to_contain_text(kept.name, timeout=LOOSE)
    page.wait_for_timeout(500)
    assert json.loads(kept.read_text())["answers"]["c1"]["parts"] == ["0.001"]
    folder = os.environ.get("SEATWORK_PICTURES")
    if folder:
        page.screenshot(path=str(Path(folder) / "typed_back.png"))
    shown.get_by_role("button", name="Next learner").click()
    expect(shown.get_by_role("status").last).to_contain_text("L02: 0 of", timeout=LOOSE)
    expect(box).to_have_value("", timeout=LOOSE)
