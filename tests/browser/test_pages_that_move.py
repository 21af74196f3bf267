"""Exported lessons over file://, without a network: benches move, by keyboard, and print still."""

from pathlib import Path

import pytest
from playwright.sync_api import expect
from seatwork.opening.export import export
from seatwork.takehome.moving import Moving

from tests.browser.pages import PHONE, SMALL, WIDE, opened, sideways, too_small

NOTEBOOKS = Path(__file__).parents[2] / "notebooks"
LESSON = "02_angle_standards"
LEAST_BUTTON = 44
SAID = 500
PROUD = "0.018 in (0.46 mm) or about 4 sheets of paper"

PROUD_TEXT = (
    "Two heads cut open. Number 1, an 82° head in an 82° seat, is flush with the face and bears on "
    "the cone, 0.477 in (12.12 mm) across. Number 2, an 82° head in a 90° seat, stands 0.018 in "
    "(0.46 mm) proud of the face and touches at the hole edge, 0.266 in (6.76 mm) across."
)  # as the lesson's own pick says: 0.018 in, on the edge of the hole


@pytest.fixture(scope="module")
def pages(tmp_path_factory):
    """Export three lessons: a slider, a slider of images, and choices."""
    folder = tmp_path_factory.mktemp("pages")
    for name in (LESSON, "13_spot_facing_castings", "14_the_whole_part", "08_choosing_the_cutter"):
        export(NOTEBOOKS / f"{name}.ipynb", folder / f"{name}.html", (), Moving())
    return folder


def test_the_main_slider_moves_by_keyboard(chromium, pages) -> None:
    """Eight presses from 82° to 90°: the picture's words, the readouts and the value follow."""
    with opened(chromium, pages / f"{LESSON}.html") as page:
        slider = page.get_by_role("slider", name="Cutter angle")
        slider.focus()
        for _ in range(8):
            page.keyboard.press("ArrowRight")
        expect(slider).to_have_attribute("aria-valuetext", "90°")
        expect(page.locator(".player-readout")).to_contain_text(PROUD)
        expect(page.locator(".player svg")).to_have_attribute("aria-label", PROUD_TEXT)
        expect(page.locator(".player-said")).to_have_text(PROUD_TEXT)
        page.keyboard.press("PageUp")
        expect(slider).to_have_attribute("aria-valuetext", "100°")
        page.keyboard.press("Home")
        page.keyboard.press("End")
        expect(slider).to_have_attribute("aria-valuetext", "120°")


def test_going_back_to_the_start_shows_the_start(chromium, pages) -> None:
    """To the end and back, every attribute of the picture is what it was."""
    drawn = "[...document.querySelectorAll('.player svg [d]')].map(n => n.getAttribute('d'))"
    with opened(chromium, pages / f"{LESSON}.html") as page:
        slider = page.get_by_role("slider", name="Cutter angle")
        slider.focus()
        page.keyboard.press("ArrowRight")
        page.keyboard.press("ArrowLeft")
        before = page.evaluate(drawn)
        page.keyboard.press("End")
        assert page.evaluate(drawn) != before
        slider.fill("82")
        assert page.evaluate(drawn) == before


def test_a_slider_of_images_paints_them(chromium, pages) -> None:
    """The tilted casting has another image at another tilt."""
    painted = "[...document.querySelectorAll('.player svg image')].map(n => n.href.baseVal)"
    with opened(chromium, pages / "13_spot_facing_castings.html") as page:
        slider = page.get_by_role("slider", name="Draft of the frame pad")
        slider.focus()
        words = page.locator(".player-words").first.inner_text()
        before = page.evaluate(painted)
        page.keyboard.press("End")
        expect(slider).to_have_attribute("aria-valuetext", "6°")
        assert page.locator(".player-words").first.inner_text() != words
        page.wait_for_timeout(SAID)
        assert set(page.evaluate(painted)) - set(before)


def test_a_bench_that_asks_first_opens_by_its_button(chromium, pages) -> None:
    """The still asks; the notebook's button opens the picture, and the slider has the focus."""
    with opened(chromium, pages / "14_the_whole_part.html") as page:
        asking = page.locator(".bench", has=page.get_by_role("button", name="Cut it open"))
        still = asking.locator("> p > img")
        expect(still).to_be_visible()
        page.get_by_role("button", name="Cut it open").click()
        expect(still).to_be_hidden()
        expect(page.get_by_role("slider", name="Cutter angle")).to_be_focused()


def test_a_choice_shows_its_picture_and_its_answer(chromium, pages) -> None:
    """Another pick, another picture with its own words."""
    with opened(chromium, pages / "08_choosing_the_cutter.html") as page:
        box = page.locator(".player:has(select)").first
        image = box.locator("img")
        before = image.get_attribute("alt")
        box.locator("select").select_option(index=2)
        assert image.get_attribute("alt") != before


SCROLLS = "all => all.filter(one => one.scrollWidth > one.clientWidth).length"
WIDTHS = "all => all.map(one => one.getBoundingClientRect().width)"
READABLE = 1280 * 11 / 25
"""How wide a picture is whose letters, 25 of its 1280 units, are 11 px high."""


@pytest.mark.parametrize("size", [PHONE, SMALL, (844, 390)])
def test_a_picture_is_whole_and_larger_at_a_press(chromium, pages, size) -> None:
    """Moving or still, none is cut off; a button beside it makes its letters readable."""
    with opened(chromium, pages / f"{LESSON}.html", size) as page:
        page.locator(".player svg").wait_for()
        button = page.get_by_role("button", name="Larger picture")
        expect(button.first).to_be_visible()
        assert page.locator(".strip:visible").evaluate_all(SCROLLS) == 0
        while button.count():
            assert button.first.bounding_box()["height"] >= LEAST_BUTTON
            button.first.click()
        shown = page.locator(".strip :is(svg, img):visible")
        assert min(shown.evaluate_all(WIDTHS)) >= READABLE
        assert sideways(page) == 0
        page.get_by_role("button", name="Whole picture").first.click()
        expect(button).to_have_count(1)


@pytest.mark.parametrize("size", [WIDE, PHONE, SMALL, (844, 390)])
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_no_page_scrolls_sideways(chromium, pages, size, theme) -> None:
    """Wide tables scroll in themselves; what is pressed is large enough for a finger."""
    for path in sorted(pages.glob("*.html")):
        with opened(chromium, path, size, color_scheme=theme) as page:
            page.locator(".player").first.wait_for()
            assert sideways(page) == 0, path.name
            assert too_small(page) == []


def test_on_paper_stand_the_still_and_a_box(chromium, pages) -> None:
    """Print shows no slider; the stored picture is back, and each question has its box."""
    with opened(chromium, pages / f"{LESSON}.html") as page:
        page.locator(".player").wait_for()
        page.emulate_media(media="print")
        expect(page.locator(".player")).to_be_hidden()
        expect(page.locator(".bench > p > img")).to_be_visible()
        assert page.locator(".box").count() == page.locator(".box:visible").count() > 0


def test_without_script_the_still_stays(chromium, pages) -> None:
    """Where scripts are off, the page reads as it did."""
    with opened(chromium, pages / f"{LESSON}.html", java_script_enabled=False) as page:
        expect(page.locator(".bench > p > img")).to_be_visible()
