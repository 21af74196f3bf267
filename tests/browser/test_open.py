"""What a newcomer meets: the server that ``seatwork open`` starts, seen in a real browser."""

import json
import re

import pytest

START = "notebooks/00_start_here.ipynb"
LESSON = "notebooks/01_seats_and_their_screws.ipynb"
FIRST = "notebooks/first_try.ipynb"
SLIDER = """
import ipywidgets as w
depth = w.IntSlider(min=0, max=100, value=50, description='depth')
label = w.Label('depth 50')
label.add_class('told')
depth.observe(lambda change: setattr(label, 'value', f'depth {change.new}'), 'value')
w.VBox([depth, label])
"""
TWO_OUTPUTS = """
import ipywidgets as w
from IPython.display import display
display(w.Label('live view'))
display({'text/markdown': 'the still **picture**', 'text/plain': 'the still'}, raw=True)
"""
VIEW = "application/vnd.jupyter.widget-view+json"
MODE = "() => jupyterapp.shell.mode"
TITLES = "() => [...jupyterapp.shell.widgets('main')].map(w => w.title.label)"


@pytest.fixture
def newcomer(lab, page):
    """Go where ``seatwork open`` sends the reader's browser: the address it printed."""
    page.goto(lab.first)
    return page


def test_the_address_told_leads_to_the_start_page(lab, newcomer) -> None:
    """The start page is in front, alone, in the view without tabs."""
    lab.wait_for(newcomer, START)
    assert newcomer.evaluate(MODE) == "single-document"
    assert newcomer.evaluate(TITLES) == ["00_start_here.ipynb"]


def test_no_news_and_no_update_question_cover_the_page(lab, newcomer) -> None:
    """No pop-up asks about news or updates, and no dialog waits."""
    lab.wait_for(newcomer, START)
    newcomer.wait_for_timeout(3_000)
    assert newcomer.locator(".Toastify__toast, .jp-toast-button").count() == 0
    assert newcomer.locator(".jp-Dialog").count() == 0


def test_the_first_link_opens_the_first_lesson(lab, newcomer) -> None:
    """A click on the first link of the start page brings the first lesson, its kernel idle."""
    lab.wait_for(newcomer, START)
    newcomer.locator(".jp-RenderedMarkdown a[href]:not(.jp-InternalAnchorLink)").first.click()
    lab.wait_for(newcomer, LESSON)
    lab.wait_idle(newcomer)
    assert newcomer.evaluate(MODE) == "single-document"


def test_a_slider_moves_by_keyboard(lab, page) -> None:
    """A slider in a notebook answers the keyboard, in a page free of errors."""
    lab.open(page, lab.write(FIRST, [SLIDER]))
    lab.run_all(page)
    handle = lab.slider(page, "depth")
    handle.focus()
    page.keyboard.press("ArrowRight")
    page.locator(".told", has_text=re.compile("depth 51")).wait_for()
    assert handle.get_attribute("aria-valuetext") == "51"


def test_a_saved_notebook_keeps_its_still_and_drops_its_live_view(lab, page) -> None:
    """On disk the view is gone and text and still stay; saving again asks nothing."""
    place = lab.write("notebooks/saved.ipynb", [TWO_OUTPUTS])
    lab.open(page, place)
    lab.run_all(page)
    page.locator(".jp-OutputArea", has_text="live view").first.wait_for()
    for _ in range(2):
        lab.save(page)
        assert page.locator(".jp-Dialog").count() == 0
    stored = json.dumps(lab.read(place))
    assert VIEW not in stored
    assert "the still **picture**" in stored
    assert page.locator(".jp-OutputArea .widget-label", has_text="live view").count() == 1


def test_a_reopened_notebook_shows_its_still(lab, page) -> None:
    """Opened again without its kernel's views, the notebook shows the still and no complaint."""
    place = lab.write("notebooks/reopened.ipynb", [TWO_OUTPUTS])
    lab.open(page, place)
    lab.run_all(page)
    lab.save(page)
    page.evaluate("() => jupyterapp.shell.currentWidget.sessionContext.shutdown()")
    lab.open(page, place)
    shown = page.locator(".jp-OutputArea").all_inner_texts()
    assert "the still picture" in " ".join(shown)
    assert "not found" not in " ".join(shown)


def test_the_kernel_runs_in_the_workbook(lab, page) -> None:
    """A notebook finds its workbook: the shop's rules are those of this folder."""
    cells = ["from seatwork import shop", "print(shop.find().name)"]
    lab.open(page, lab.write("notebooks/where.ipynb", cells))
    lab.run_all(page)
    assert lab.folder.name in page.locator(".jp-OutputArea").last.inner_text()


def test_a_stranger_without_the_token_gets_nothing(lab, chromium) -> None:
    """Without the token the page asks for it, and the files are refused."""
    stranger = chromium.new_context()
    assert stranger.request.get(f"{lab.url}/api/contents").status == 403
    page = stranger.new_page()
    page.goto(f"{lab.url}/doc")
    page.get_by_role("textbox", name="Password or token:").wait_for()
    stranger.close()


def test_signs_come_with_a_page_that_was_never_run(lab, page) -> None:
    """Text and code of a page take the signs ⌴ and ⌵ from the font that the server gives."""
    place = lab.write("signs.ipynb", ["note = 'THRU ⌴ ⌵'"])
    with page.expect_response(lambda answer: answer.url.endswith("signs.woff")) as font:
        lab.open(page, place)
        page.evaluate("() => document.fonts.load('16px \"seatwork signs\"', '⌴')")
    assert font.value.ok
    assert page.evaluate("() => document.fonts.check('16px \"seatwork signs\"', '⌴⌵')")
    shown = page.locator(".jp-Notebook .cm-content").first
    assert "seatwork signs" in shown.evaluate("one => getComputedStyle(one).fontFamily")
