"""A worksheet in a real JupyterLab: answered by keyboard, told what it is, restored."""

import json
import os
import shutil
from pathlib import Path

import pytest
from playwright.sync_api import expect

PLACE = "exercises/cones.ipynb"
LOOSE = 30_000
SHUT_DOWN = "() => jupyterapp.shell.currentWidget.sessionContext.shutdown()"
SETTLED = 1_500
"""What JupyterLab takes at most to lay out the page again after the last cell has run [ms]."""


def test_a_question_is_answered_by_keyboard_and_restored(lab, page, watch) -> None:
    """Typing saves each key press, Enter in the box checks, reopening restores it all."""
    watch.errors.clear()
    lab.open(page, PLACE)
    lab.run_all(page)
    forms = page.locator(".seatwork-form")
    expect(forms).to_have_count(3, timeout=LOOSE)
    expect(page.locator(".jp-OutputArea").last).to_contain_text("3 questions to go", timeout=LOOSE)
    box = forms.first.locator("input[type=text]")
    page.wait_for_timeout(SETTLED)
    box.press_sequentially(".422")
    expect(box).to_have_value(".422", timeout=LOOSE)
    page.keyboard.press("Enter")
    verdict = forms.first.get_by_role("status")
    expect(verdict).to_contain_text("Not yet: .422", timeout=LOOSE)
    expect(box).to_be_focused(timeout=LOOSE)
    kept = json.loads((lab.folder / "answers" / "L00-cones-1.json").read_text())
    assert kept["answers"]["c1"]["parts"] == [".422"]
    box.fill(".211 in")
    page.keyboard.press("Enter")
    expect(verdict).to_contain_text("Right: 0.211 in", timeout=LOOSE)
    lab.open(page, PLACE)
    lab.run_all(page)
    again = page.locator(".seatwork-form").first
    expect(again.locator("input[type=text]")).to_have_value(".211 in", timeout=LOOSE)
    expect(again.get_by_role("status")).to_contain_text("Right", timeout=LOOSE)


@pytest.mark.parametrize("copied", [True, False], ids=["a copy of the page", "the same page"])
def test_a_sheet_open_in_two_pages_loses_no_answer(lab, reader, page, copied: bool) -> None:
    """Both pages add to the same answers; the later one says what the other wrote, and waits."""
    place = "exercises/cones_again.ipynb" if copied else PLACE
    (lab.folder / place).write_bytes((lab.folder / PLACE).read_bytes())
    kept = lab.folder / "answers" / "L00-cones-1.json"
    shutil.rmtree(kept.parent, ignore_errors=True)
    other = reader.new_page()
    for window, name in ((page, PLACE), (other, place)):
        lab.open(window, name)
        lab.run_all(window)
        window.wait_for_timeout(SETTLED)
    forms = [window.locator(".seatwork-form") for window in (page, other)]
    for shown in forms:
        expect(shown).to_have_count(3, timeout=LOOSE)
    first, second = (shown.locator("input[type=text]") for shown in forms)
    first.nth(0).press_sequentially(".211 in")
    second.nth(1).press_sequentially(".771 in")
    expect(second.nth(1)).to_have_value(".771 in", timeout=LOOSE)
    lab.wait_idle(other)
    second.nth(0).press_sequentially(".3")
    told = forms[1].nth(0).get_by_role("status")
    expect(told).to_contain_text("another page has answered it (.211 in)", timeout=LOOSE)
    folder = os.environ.get("SEATWORK_PICTURES")
    if folder:
        other.screenshot(path=str(Path(folder) / f"two_pages_{copied}.png"))
    answers = json.loads(kept.read_text())["answers"]
    assert [answers[name]["parts"] for name in ("c1", "c2")] == [[".211 in"], [".771 in"]]
    if copied:  # else it is the kernel of the first page
        other.evaluate(SHUT_DOWN)
    other.close()
