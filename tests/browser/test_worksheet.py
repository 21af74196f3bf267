"""A worksheet in a real JupyterLab: answered by keyboard, told what it is, restored."""

import json

from playwright.sync_api import expect

PLACE = "exercises/cones.ipynb"
LOOSE = 30_000
SETTLED = 1_500
"""What JupyterLab takes at most to lay out the page again after the last cell has run [ms]."""


def test_a_question_is_answered_by_keyboard_and_restored(lab, page, watch) -> None:
    """Typing saves each key press, Enter on Check names the slip, reopening restores it all."""
    watch.errors.clear()
    lab.open(page, PLACE)
    lab.run_all(page)
    forms = page.locator(".seatwork-form")
    expect(forms).to_have_count(3, timeout=LOOSE)
    expect(page.locator(".jp-OutputArea").last).to_contain_text("not yet", timeout=LOOSE)
    box = forms.first.locator("input[type=text]")
    page.wait_for_timeout(SETTLED)
    box.press_sequentially(".422")
    expect(box).to_have_value(".422", timeout=LOOSE)
    page.keyboard.press("Tab")
    expect(forms.first.get_by_role("button", name="Check")).to_be_focused(timeout=LOOSE)
    page.keyboard.press("Enter")
    verdict = forms.first.get_by_role("status").first
    expect(verdict).to_contain_text("M02", timeout=LOOSE)
    kept = json.loads((lab.folder / "answers" / "L00-cones-1.json").read_text())
    assert kept["answers"]["c1"]["parts"] == [".422"]
    box.fill(".211 in")
    forms.first.get_by_role("button", name="Check").click()
    expect(verdict).to_contain_text("Right: 0.211 in", timeout=LOOSE)
    lab.open(page, PLACE)
    lab.run_all(page)
    again = page.locator(".seatwork-form").first
    expect(again.locator("input[type=text]")).to_have_value(".211 in", timeout=LOOSE)
    expect(again.get_by_role("status").first).to_contain_text("Right", timeout=LOOSE)
