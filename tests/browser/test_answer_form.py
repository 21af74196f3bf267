"""The form under a question in a real JupyterLab: by keyboard, in one view, for every reader."""

import os
import shutil
from pathlib import Path

import pytest
from playwright.sync_api import expect

LOOSE = 30_000
SEEN = 20
DARK = "() => jupyterapp.commands.execute('apputils:change-theme', {theme: 'JupyterLab Dark'})"
LIGHT = "() => jupyterapp.commands.execute('apputils:change-theme', {theme: 'JupyterLab Light'})"
CELLS = "() => jupyterapp.shell.currentWidget.content.widgets.length"
BEYOND = """form => {
  const edge = form.getBoundingClientRect().right + 1;
  return [...form.querySelectorAll('*')].filter(one => one.getBoundingClientRect().right > edge)
    .map(one => `${one.tagName} ${one.className}`);
}"""
FOLDER = os.environ.get("SEATWORK_PICTURES")

NOVICE = {
    ".367": ("difference", "halve"),
    "211": ("point", ".211"),
    "0.211 mm": ("right number", "inches"),
    ".211 mm": ("right number", "inches"),
    "7/32": ("a fraction near it",),
    ".22": ("I do not know how you got .22.", "Hint 1 of 3"),
    ".180": ("I do not know how you got .180.",),
    ".158": ("I do not know how you got .158.",),
    ".024": ("I do not know how you got .024.",),
    ".1835": ("across", "90°", "Which one was it?"),
    ".184": ("across", "90°", "Which one was it?"),
    ".422": ("whole difference",),
    "5.36": ("mm", "unit"),
    "half of .367": ("I cannot read",),
}
"""What a weak student typed for c1, seat .773 on .406 at 82°, and words that must be told."""

WRONG = {
    "cones c1": (".184",), "cones c2": (".586",), "cones c3": (None, ".030"),
    "flushness f1": ("1.05",), "flushness f2": (None, ".030"), "flushness f3": (".150",),
    "flushness f4": (".5",), "counterbores b1": (".415",), "counterbores b3": (".3",),
    "counterbores b12": (".2", ".1", ".05"), "castings_and_edges e14": (None, ".1", ".2"),
    "castings_and_edges e3": (".2",), "castings_and_edges e11": (".005", None),
    "speeds s4": ("3",),
}  # fmt: skip
"""By sheet and place a wrong answer for each part, None for the first option of a choice."""


@pytest.fixture
def fresh(lab):
    """Take away what other tests answered."""
    shutil.rmtree(lab.folder / "answers", ignore_errors=True)


def show(lab, page, place: str, lines: list[str]):
    """Show questions, one a cell, and wait for their forms."""
    lab.write(place, ["import seatwork as sw", *lines])
    lab.open(page, place)
    lab.run_all(page)
    forms = page.locator(".seatwork-form")
    expect(forms).to_have_count(len(lines), timeout=LOOSE)
    page.wait_for_timeout(1_000)
    return forms


def keep(page, name: str) -> None:
    """Keep a picture of the page where a folder is named for them."""
    if FOLDER:
        page.screenshot(path=str(Path(FOLDER) / f"form_{name}.png"))


def answer(form, texts) -> None:
    """Type an answer, press Enter, and wait until it is told."""
    fields = form.locator(".seatwork-field")
    for number, text in enumerate(texts):
        if text is None:
            fields.nth(number).get_by_role("radio").first.check()
        else:
            fields.nth(number).get_by_role("textbox").fill(text)
    form.locator("input").last.press("Enter")
    expect(form.get_by_role("status")).not_to_be_empty(timeout=LOOSE)


def test_a_novice_is_told_what_was_done(lab, page, fresh) -> None:
    """Fourteen wrong answers, by keyboard alone: each told, once, and the box keeps the focus."""
    form = show(lab, page, "exercises/novice.ipynb", ['sw.sheet("cones").ask("c1")']).first
    box = form.get_by_role("textbox")
    box.focus()
    status = form.get_by_role("status")
    for typed, told in NOVICE.items():
        page.keyboard.press("Control+A")
        page.keyboard.type(typed)
        page.keyboard.press("Enter")
        expect(status).to_contain_text(typed, timeout=LOOSE)
        for words in told:
            expect(status).to_contain_text(words, timeout=LOOSE)
        expect(form.get_by_role("status")).to_have_count(1)
        expect(box).to_be_focused()
        expect(box).to_have_attribute("aria-invalid", "true")
        keep(page, f"novice_{typed.replace('/', '_').replace(' ', '_')}")
        assert status.inner_text().count("Not yet") <= 1
    page.keyboard.press("Control+A")
    page.keyboard.type(".211")
    page.keyboard.press("Enter")
    expect(status).to_contain_text("Right: 0.211 in")
    expect(box).to_be_focused()  # a second Enter asks again; it draws no new numbers
    page.keyboard.press("Enter")
    expect(status).to_contain_text("Right: 0.211 in")


def test_keys_stay_in_the_form(lab, page, fresh) -> None:
    """Letters make no cells, Esc puts back what was checked, then leads out; Shift+Enter runs."""
    form = show(lab, page, "exercises/keys.ipynb", ['sw.sheet("cones").ask("c1")']).first
    box = form.get_by_role("textbox")
    before = page.evaluate(CELLS)
    box.press_sequentially("abdd.2")
    assert page.evaluate(CELLS) == before
    box.fill(".2")
    box.press("Enter")
    expect(form.get_by_role("status")).to_contain_text("Not yet", timeout=LOOSE)
    page.keyboard.type(".3")
    page.keyboard.press("Escape")
    expect(box).to_have_value(".2")
    page.keyboard.press("Escape")  # nothing to put back: it leads out
    expect(box).not_to_be_focused()
    box.focus()
    prompts = page.locator(".jp-InputArea-prompt")
    ran = prompts.last.text_content()
    page.keyboard.press("Shift+Enter")
    expect(prompts.nth(1)).not_to_have_text(ran or "", timeout=LOOSE)
    assert page.evaluate(CELLS) >= before


def test_new_numbers_come_in_place(lab, page, fresh) -> None:
    """Question, picture and box change without a run, and the box has the focus."""
    form = show(lab, page, "exercises/renewed.ipynb", ['sw.sheet("cones").ask("c1")']).first
    answer(form, (".422",))
    words = form.locator(".seatwork-question").inner_text()
    prompt = page.locator(".jp-InputArea-prompt").last.text_content()
    form.get_by_role("button", name="New numbers").press("Enter")
    expect(form.locator(".seatwork-question")).not_to_have_text(words, timeout=LOOSE)
    expect(form.get_by_role("textbox")).to_have_value("")
    expect(form.get_by_role("textbox")).to_be_focused()
    expect(form.get_by_role("status")).to_be_empty()
    assert page.locator(".jp-InputArea-prompt").last.text_content() == prompt


def test_question_hint_and_own_cut_fit_in_one_view(lab, page, fresh) -> None:
    """On 1366 by 768, verdict, hint, cut and worked answer take at most 600 px, of any type."""
    page.set_viewport_size({"width": 1366, "height": 768})
    lines = [f'sw.sheet("{name.split()[0]}").ask("{name.split()[1]}")' for name in WRONG]
    forms = show(lab, page, "exercises/views.ipynb", lines)
    for number, (name, texts) in enumerate(WRONG.items()):
        form = forms.nth(number)
        answer(form, texts)
        page.wait_for_timeout(500)
        keep(page, f"cut_{name.replace(' ', '_')}")
        cut = form.bounding_box()["height"]
        heights = [cut]
        for press in ("hint", "worked"):
            button = form.locator(f"button[data-press={press}]")
            if button.is_enabled():
                button.click()
                page.wait_for_timeout(500)
            heights.append(form.bounding_box()["height"])
        assert max(heights) <= 600, (name, heights)


def test_one_column_and_large_targets(lab, page, fresh) -> None:
    """At 320 px one column holds all; buttons are 32 px, marks 24 px at the least."""
    form = show(lab, page, "exercises/narrow.ipynb", ['sw.sheet("cones").ask("c3")']).first
    page.set_viewport_size({"width": 320, "height": 700})
    answer(form, (None, ".030"))
    page.wait_for_timeout(500)
    form.scroll_into_view_if_needed()
    keep(page, "narrow")
    assert form.evaluate(BEYOND) == []
    assert form.evaluate("form => getComputedStyle(form).display") == "block"
    for button in form.get_by_role("button").all():
        if button.is_visible() and button.get_attribute("class") != "seatwork-skip":
            assert min(button.bounding_box()["height"], button.bounding_box()["width"]) >= 32
    for radio in form.get_by_role("radio").all():
        assert min(radio.bounding_box()["height"], radio.bounding_box()["width"]) >= 24


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_axe_finds_nothing_in_a_form(lab, page, fresh, theme: str) -> None:
    """By axe-core's rules there is no fault in a form with verdict, cut, hint and worked answer."""
    axe = pytest.importorskip("axe_playwright_python.sync_playwright").Axe()
    lines = ['sw.sheet("cones").ask("c1")', 'sw.sheet("cones").ask("c3")']
    forms = show(lab, page, f"exercises/axe_{theme}.ipynb", lines)
    page.evaluate(DARK if theme == "dark" else LIGHT)
    expect(forms.first).to_have_attribute("data-theme", theme, timeout=LOOSE)
    answer(forms.nth(0), (".184",))
    answer(forms.nth(1), (None, ".030"))
    for press in ("hint", "worked"):
        forms.nth(1).locator(f"button[data-press={press}]").click()
    page.wait_for_timeout(500)
    keep(page, theme)
    found = axe.run(page, context=".seatwork-form")
    faults = [
        (v["id"], [n["html"][:200] for n in v["nodes"]]) for v in found.response["violations"]
    ]
    page.evaluate(LIGHT)
    assert not faults, faults


@pytest.mark.usefixtures("fresh")
def test_what_is_said_beside_a_box_is_seen_next_to_a_bench(lab, page) -> None:
    """A bench on the same page hides nothing of what a form says of its parts."""
    place = "notebooks/form_by_bench.ipynb"
    asked = 'sw.sheet("flushness").ask("f2")'
    lab.write(place, ["import seatwork as sw", "sw.benches.triangle()", asked])
    lab.open(page, place)
    lab.run_all(page)
    expect(page.locator(".seatwork-live").first).to_be_attached(timeout=LOOSE)
    form = page.locator(".seatwork-form")
    form.get_by_role("button", name="Check", exact=True).click()
    for said in form.locator(".seatwork-said").all():
        expect(said).to_have_text("No answer yet.", timeout=LOOSE)
        assert said.bounding_box()["width"] > SEEN
