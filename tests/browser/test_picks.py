"""A pick in a real JupyterLab: look, bet, lock, see, all by keyboard; its still in the file."""

import json
import os
import shutil
from pathlib import Path

import pytest
from playwright.sync_api import expect

LOOSE = 30_000
SETTLED = 1_000
PLACE = "notebooks/picks_tried.ipynb"
LEAST_TARGET = 24


def picture(page, name: str) -> None:
    """Keep a picture of the window, where a folder for it is named."""
    if os.environ.get("SEATWORK_PICTURES"):
        page.screenshot(path=str(Path(os.environ["SEATWORK_PICTURES"]) / f"pick_{name}.png"))


@pytest.fixture
def form(lab, page):
    """Give the form of a pick that nobody has bet on, run on a page of its own."""
    shutil.rmtree(lab.folder / "answers", ignore_errors=True)
    lab.write(PLACE, ["import seatwork as sw", 'sw.pick("angle-eight")'])
    lab.open(page, PLACE)
    lab.run_all(page)
    found = page.locator(".seatwork-pick-form")
    expect(found).to_have_count(1, timeout=LOOSE)
    page.wait_for_timeout(SETTLED)
    return found


def kept(lab) -> dict:
    """Read the bets kept in the workbook."""
    return json.loads((lab.folder / "answers" / "L00-picks.json").read_text())


def test_a_bet_is_made_by_keyboard(lab, page, form) -> None:
    """Arrows choose, Enter locks, the answer has the focus, and no key reaches the notebook."""
    cells = page.locator(".jp-CodeCell").count()
    assert "0.018" not in form.inner_text()
    picture(page, "before")
    form.locator("input[type=radio]").first.focus()
    page.keyboard.press("Space")
    for key in ("ArrowDown", "ArrowDown", "a", "b"):
        page.keyboard.press(key)
    expect(form.get_by_role("radio", name="c proud, you can feel it (about .018)")).to_be_checked()
    page.keyboard.press("Tab")
    page.keyboard.press("ArrowDown")
    page.keyboard.press("Enter")
    expect(form.get_by_role("status")).to_have_text("You bet c. Right bet.", timeout=LOOSE)
    expect(form.locator(".seatwork-pick-after")).to_be_focused(timeout=LOOSE)
    expect(form.locator(".seatwork-pick-after")).to_contain_text("0.018 in (0.46 mm)")
    expect(page.locator(".seatwork-pick-box .seatwork-picture svg")).to_be_visible(timeout=LOOSE)
    page.wait_for_timeout(SETTLED)
    picture(page, "after")
    assert page.locator(".jp-CodeCell").count() == cells
    assert kept(lab)["picks"] == {"angle-eight": {"bet": "c", "sure": True}}


def test_the_first_bet_stays(lab, page, form) -> None:
    """A bet that is not right is never called wrong; another one does not take its place."""
    form.get_by_role("radio", name="a flush").check()
    form.get_by_role("button", name="Lock my bet").click()
    expect(form.get_by_role("status")).to_have_text("You bet a. Look again.", timeout=LOOSE)
    expect(form).to_contain_text("Any flat head seems to fit")
    form.get_by_role("button", name="Bet again").click()
    expect(form.get_by_role("status")).to_have_text("Your first bet was a. It stays.")
    form.get_by_role("radio", name="d below the face").check()
    form.get_by_role("button", name="Lock my bet").click()
    expect(form.get_by_role("status")).to_have_text("You bet d. Look again.", timeout=LOOSE)
    assert kept(lab)["picks"] == {"angle-eight": {"bet": "a"}}
    lab.run_all(page)
    again = page.locator(".seatwork-pick-form")
    expect(again.get_by_role("status")).to_have_text("You bet a. Look again.", timeout=LOOSE)


def test_escape_leaves_and_nothing_chosen_is_said(page, form) -> None:
    """Lock without a choice says what would do; Escape goes back to the page."""
    form.get_by_role("button", name="Lock my bet").click()
    expect(form.get_by_role("status")).to_contain_text("nothing is chosen", timeout=LOOSE)
    form.locator("input[type=radio]").first.focus()
    page.keyboard.press("Escape")
    expect(form.locator(":focus")).to_have_count(0)


def test_the_still_is_hidden_while_the_form_lives(lab, page, form) -> None:
    """The fold stands in the file, closed, and is not shown below the living form."""
    fold = page.locator(".jp-OutputArea-child details")
    expect(fold).to_have_count(1, timeout=LOOSE)
    expect(fold).to_be_hidden()
    assert not fold.evaluate("fold => fold.open")


def test_what_is_pressed_is_large_enough(page, form) -> None:
    """Each button and each choice is 24 px or more both ways; the page does not scroll sideways."""
    page.set_viewport_size({"width": 320, "height": 720})
    page.wait_for_timeout(SETTLED)
    picture(page, "320")
    for one in form.locator("button:visible, input:visible").all():
        box = one.bounding_box()
        assert min(box["width"], box["height"]) >= LEAST_TARGET, one
    wide = form.evaluate("one => one.scrollWidth - one.clientWidth")
    page.set_viewport_size({"width": 1280, "height": 720})
    assert wide <= 0


def test_a_class_bets_by_hands(lab, page, form) -> None:
    """Hands are counted by minus and plus, Show opens the answer, and nothing is kept."""
    lab.write(PLACE, ["import seatwork as sw", 'sw.pick("angle-eight", room=True)'])
    lab.open(page, PLACE)
    lab.run_all(page)
    room = page.locator(".seatwork-pick-form")
    more = room.get_by_role("button", name="c proud, you can feel it (about .018): one hand more")
    more.click()
    more.click()
    room.get_by_role("button", name="b proud by a hair (.002): one hand more").click()
    expect(room.get_by_label("c proud, you can feel it (about .018): hands")).to_have_text("2")
    page.wait_for_timeout(SETTLED)
    picture(page, "room")
    room.get_by_role("button", name="Show", exact=True).click()
    expect(room).to_contain_text("Right: c.", timeout=LOOSE)
    page.wait_for_timeout(SETTLED)
    picture(page, "room_after")
    assert not (lab.folder / "answers").exists()
