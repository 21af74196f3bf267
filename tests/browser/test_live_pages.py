"""Lessons with Python in them over file://, without a network: every slider of a bench is live."""

import json
import shutil
from pathlib import Path
from typing import Any

import nbformat
import pytest
from playwright.sync_api import expect
from seatwork import benches
from seatwork.marking import examples, sheets
from seatwork.record import hand_out
from seatwork.takehome import graded_page, lesson_page, papers, runtime_script
from seatwork.takehome.live_told import LIVE
from seatwork.takehome.python_blocks import BESIDE
from seatwork.takehome.runtime import NOTICE

from tests.browser.pages import PHONE, SMALL, WIDE, opened, sideways
from tests.browser.test_pages_that_move import LEAST_BUTTON, LESSON, NOTEBOOKS, PROUD, PROUD_TEXT
from tests.browser.test_python_pages import NO_WORKER, PATIENT, READ, SHEET, made, wait
from tests.takehome.plain_process import follow
from tests.takehome.test_plain_scenes import asked_and_true

__all__ = ["made"]
pytestmark = pytest.mark.long

MOST = 9_000_000
FEW = 60
MISSING = "must lie in the same folder"


@pytest.fixture(scope="module")
def pages(made, tmp_path_factory):
    """Write a lesson whole, the same with its Python beside it, and one of all live benches."""
    place = tmp_path_factory.mktemp("pages")
    lesson_page(NOTEBOOKS / f"{LESSON}.ipynb", place / "lesson.html", made)
    lesson_page(NOTEBOOKS / f"{LESSON}.ipynb", place / "two" / "lesson.html", made, beside=True)
    (place / "two" / BESIDE).write_text(runtime_script(made), encoding="utf-8")
    (place / "alone").mkdir()
    shutil.copy(place / "two" / "lesson.html", place / "alone")
    nbformat.write(notebook_of_benches(), place / "benches.ipynb")
    assert lesson_page(place / "benches.ipynb", place / "benches.html", made) == ()
    return place


def notebook_of_benches() -> Any:
    """Return a notebook that shows each live bench as it begins."""
    v4 = nbformat.v4
    cells = []
    for name in LIVE:
        drawing = getattr(benches, name)().drawing
        data = {"text/plain": drawing.text, "text/markdown": drawing.markdown(0.3, 8)}
        outputs = [v4.new_output("display_data", data)]
        cells.append(v4.new_code_cell(f"benches.{name}()", outputs=outputs))
    return v4.new_notebook(cells=cells)


def test_every_slider_is_live(chromium, pages) -> None:
    """The recorded slider's place is kept; then another slider moves, and a refusal is told."""
    with opened(chromium, pages / "lesson.html", PHONE) as page:
        page.get_by_role("slider", name="Cutter angle").fill("90")
        wait(page, "seatwork.ready")
        live = page.locator(".live")
        expect(live.locator("svg")).to_have_attribute("aria-label", PROUD_TEXT, timeout=PATIENT)
        expect(live.locator(".player-readout")).to_contain_text(PROUD)
        assert page.locator(".player").count() == 1
        live.get_by_role("button", name="More settings").click()
        box = live.get_by_role("textbox", name="Diameter at the face")
        box.fill("5/8 in")
        box.press("Enter")
        expect(box).to_have_value("0.625 in", timeout=PATIENT)
        expect(live.locator(".player-readout")).to_contain_text("0.625 in (15.88 mm)")
        expect(live.locator(".player-said")).to_contain_text("in a 90° seat")
        box.fill("</p><img src=x>")
        box.press("Enter")
        expect(live.locator(".seatwork-trouble").filter(has_text="img")).to_be_visible()
        assert live.locator("p img").count() == 0
        live.get_by_role("button", name="Back to start").click()
        expect(live.get_by_role("slider", name="Cutter angle")).to_have_attribute(
            "aria-valuetext", "82°", timeout=PATIENT
        )
        assert NOTICE in page.content()
    assert (pages / "lesson.html").stat().st_size < MOST


def test_another_picture_comes_by_its_button(chromium, pages) -> None:
    """From above and back: what the button says it does, with the picture's own words."""
    with opened(chromium, pages / "lesson.html", WIDE) as page:
        wait(page, "seatwork.ready")
        live = page.locator(".live")
        live.get_by_role("button", name="Show it from above").click()
        expect(live.locator("svg")).to_have_attribute(
            "aria-label", benches.angles().text, timeout=PATIENT
        )
        assert live.get_by_role("slider").count() == 0
        live.get_by_role("button", name="Cut it open").click()
        expect(live.get_by_role("slider", name="Cutter angle")).to_be_visible(timeout=PATIENT)


@pytest.mark.parametrize("name", LIVE)
def test_the_page_shows_what_the_notebook_shows(chromium, pages, name: str) -> None:
    """Attributes, words, readouts and refusals at random settings, worked by the page's Python."""
    settings, wanted = asked_and_true(name, FEW)
    with opened(chromium, pages / "benches.html", WIDE) as page:
        wait(page, "seatwork.ready")
        bench = f"seatwork.live[{LIVE.index(name)}]"
        state: dict[str, dict] = {}
        follow(state, page.evaluate(f"{bench}.first"))
        for values, true in zip(settings, wanted, strict=True):
            given = f"{{name: {bench}.name, values: {json.dumps(values)}}}"
            answer = page.evaluate(f"{bench}.ask('set', {given})")
            follow(state, answer)
            elements = [state[str(number)] for number in range(len(state))]
            found = answer["trouble"] or [answer["text"], elements, answer["rows"]]
            assert found == true, values


def test_live_benches_fit(chromium, pages) -> None:
    """No sideways scroll with every setting open; what is pressed is large enough for a finger."""
    with opened(chromium, pages / "benches.html", WIDE) as page:
        wait(page, "seatwork.ready")
        folds = page.locator(".live button[aria-expanded=false]:visible")
        folds.evaluate_all("all => all.forEach(one => one.click())")
        pressed = page.locator(".live :is(button, select, input[type=range]):visible")
        for width, height in (WIDE, PHONE, SMALL):
            page.set_viewport_size({"width": width, "height": height})
            assert sideways(page) == 0, width
            heights = pressed.evaluate_all("all => all.map(one => one.offsetHeight)")
            assert len(heights) > len(LIVE)
            assert min(heights) >= LEAST_BUTTON, width
        page.emulate_media(media="print")
        assert page.locator(".player:visible").count() == 0
        assert page.locator(".bench img:visible").count() == len(LIVE)


def test_one_runtime_beside_serves_a_folder(chromium, pages) -> None:
    """Live with the file beside; without it the page says so, and its recorded slider plays."""
    page_bytes = (pages / "two" / "lesson.html").stat().st_size
    assert page_bytes < (pages / "lesson.html").stat().st_size - 4_000_000
    context = chromium.new_context(offline=True)
    page = context.new_page()
    page.goto((pages / "two" / "lesson.html").as_uri())
    wait(page, "seatwork.ready")
    assert page.locator(".live").count() == 1
    page.goto((pages / "alone" / "lesson.html").as_uri())
    expect(page.get_by_text(MISSING)).to_be_visible(timeout=PATIENT)
    page.get_by_role("slider", name="Cutter angle").fill("90")
    expect(page.locator(".player svg")).to_have_attribute("aria-label", PROUD_TEXT)
    context.close()


def test_a_graded_page_reads_by_the_file_beside_it(chromium, made, pages) -> None:
    """Its box says how an entry is read; without the file the page says so and still saves."""
    course = examples.make_course(pages / "course")
    hand_out(course, SHEET, ["L01"], mode="graded", day="2026-09-07")
    (paper,) = papers(course, sheets.load(SHEET))
    for folder in ("two", "alone"):
        text = graded_page(paper, made, beside=True)
        (pages / folder / "graded.html").write_text(text, encoding="utf-8")
    context = chromium.new_context(offline=True)
    page = context.new_page()
    page.goto((pages / "two" / "graded.html").as_uri())
    page.locator("input[type=text]").first.fill(".139 in")
    expect(page.get_by_text(READ)).to_be_visible(timeout=PATIENT)
    page.goto((pages / "alone" / "graded.html").as_uri())
    expect(page.get_by_text(MISSING)).to_be_visible(timeout=PATIENT)
    page.locator("input[type=text]").first.fill(".139 in")
    with page.expect_download() as download:
        page.get_by_role("button", name="Save the answer file").click()
    assert ".139 in" in Path(download.value.path()).read_text(encoding="utf-8")
    context.close()


def test_a_runtime_of_another_version_is_told(chromium, pages) -> None:
    """A file beside that the page was not written with fills nothing."""
    folder = pages / "other"
    shutil.copytree(pages / "two", folder)
    text = (folder / BESIDE).read_text(encoding="utf-8")
    (folder / BESIDE).write_text(text.replace('runtime === "', 'runtime === "0', 1))
    context = chromium.new_context(offline=True)
    page = context.new_page()
    page.goto((folder / "lesson.html").as_uri())
    expect(page.get_by_text(MISSING)).to_be_visible(timeout=PATIENT)
    context.close()


def test_without_a_worker_the_recorded_slider_plays(chromium, pages) -> None:
    """Where Python cannot start, the page says so and shows what it showed before."""
    context = chromium.new_context(offline=True)
    context.add_init_script(NO_WORKER)
    page = context.new_page()
    page.goto((pages / "lesson.html").as_uri())
    expect(page.get_by_text("Python did not start")).to_be_visible(timeout=PATIENT)
    page.get_by_role("slider", name="Cutter angle").fill("90")
    expect(page.locator(".player svg")).to_have_attribute("aria-label", PROUD_TEXT)
    context.close()
