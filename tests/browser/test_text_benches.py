"""The benches without a slider in a real JupyterLab: opened, typed into, saved, reopened."""

import os
from dataclasses import dataclass
from pathlib import Path

import pytest

PICTURE = ".seatwork-picture svg"
STILL = ".jp-OutputArea-output img"
BOX = ".seatwork-text :is(input, textarea):visible"
SHOWN = 640
"""Height of the notebook's page under JupyterLab's bars in a window of 1280 x 720 [px]."""


@dataclass(frozen=True, kw_only=True)
class Walk:
    """What a test needs to know of one bench.

    Parameters
    ----------
    opens_with : str
        A piece of the text it opens with.
    press : str
        The button that opens the answer.
    tells : str
        A piece of the text after that.
    typed, answer : str
        Something typed into its box, and a piece of the text it leads to; empty without a box.
    """

    opens_with: str
    press: str
    tells: str
    typed: str = ""
    answer: str = ""


BENCHES = {
    "cutters": Walk(
        opens_with="Which would you take for the edges of the holes",
        press="Show the answer",
        tells="Take C, XH90",
    ),
    "note": Walk(
        opens_with="What does this note leave open?",
        press="What does it leave open?",
        tells="0.625 in",
        typed="4X .201 THRU <b>CSK</b>",
        answer="cannot be read",
    ),
    "slips": Walk(
        opens_with="What happened?",
        press="What gives it?",
        tells="M01 gives",
        typed="0.300 in",
        answer="No one slip",
    ),
    "which_seat": Walk(
        opens_with="Which of the four seats does it want?",
        press="Show the answer",
        tells="Spotface: yes",
    ),
}


@pytest.fixture(params=sorted(BENCHES))
def name(request):
    """Name one bench after the other."""
    return request.param


def keep(page, name: str) -> None:
    """Keep a picture of the page where one is asked for."""
    folder = os.environ.get("SEATWORK_PICTURES")
    if folder:
        Path(folder).mkdir(parents=True, exist_ok=True)
        page.screenshot(path=str(Path(folder) / f"{name}.png"))


def label(page) -> str:
    """Read what the picture tells a screen reader."""
    return page.locator(PICTURE).get_attribute("aria-label")


def until(page, piece: str) -> None:
    """Wait until the picture tells something."""
    page.wait_for_function(
        "([p, t]) => document.querySelector(p)?.getAttribute('aria-label').includes(t)",
        arg=[PICTURE, piece],
    )


def run(lab, page, place: str, call: str) -> None:
    """Run a notebook with one bench; wait until its picture stands."""
    lab.open(page, lab.write(place, ["from seatwork import benches", call]))
    lab.run_all(page)
    page.locator(PICTURE).wait_for()
    page.evaluate("() => document.querySelector('.seatwork-bench').scrollIntoView()")


def test_a_walk_through_the_bench(name, lab, page):
    """It opens on its question, gives the answer by keyboard, takes typed text, goes back."""
    walk = BENCHES[name]
    run(lab, page, f"text_{name}.ipynb", f"benches.{name}()")
    opening = label(page)
    assert walk.opens_with in opening
    keep(page, f"{name}-opens")
    page.get_by_role("button", name=walk.press).focus()
    page.keyboard.press("Enter")
    until(page, walk.tells)
    keep(page, f"{name}-started")
    page.get_by_role("button", name="Metric first").click()
    until(page, "mm (")
    if walk.typed:
        page.locator(BOX).fill(walk.typed)
        page.locator(BOX).press("Tab")
        until(page, walk.answer)
        keep(page, f"{name}-typed")
    page.get_by_role("button", name="Inch first").click()
    page.get_by_role("button", name="Back to start").click()
    page.wait_for_function(
        "([p, t]) => document.querySelector(p).getAttribute('aria-label') === t",
        arg=[PICTURE, opening],
    )


@pytest.mark.long
@pytest.mark.parametrize("size", ["desk", "projector"])
def test_all_of_it_is_on_one_screen(name, size, lab, page):
    """Picture, readouts and controls stand on one screen of 1280 x 720, at both sizes."""
    run(lab, page, f"{size}_{name}.ipynb", f"benches.{name}(projector={size == 'projector'})")
    page.get_by_role("button", name=BENCHES[name].press).click()
    until(page, BENCHES[name].tells)
    page.wait_for_timeout(700)
    keep(page, f"{name}-{size}")
    assert page.locator(".seatwork-bench").bounding_box()["height"] <= SHOWN


@pytest.mark.long
def test_run_again_saved_and_reopened(name, lab, page):
    """Run twice there is one bench; reopened without a kernel the still tells it all."""
    place = f"again_{name}.ipynb"
    run(lab, page, place, f"benches.{name}()")
    opening = label(page)
    lab.run_all(page)
    page.wait_for_function("p => document.querySelectorAll(p).length === 1", arg=PICTURE)
    page.wait_for_timeout(700)
    for _ in range(20):
        lab.save(page)
        outputs = lab.read(place)["cells"][1]["outputs"]
        if outputs:
            break
        page.wait_for_timeout(200)
    assert "widget-view" not in str(outputs)
    page.goto(lab.address(place))
    lab.wait_for(page, place)
    page.locator(STILL).first.wait_for()
    assert page.locator(STILL).first.get_attribute("alt") == opening
    assert page.locator(PICTURE).count() == 0
    lab.wait_idle(page)


@pytest.mark.long
def test_axe_finds_nothing(name, lab, page):
    """By axe-core's rules there is no fault in the bench, its answer shown."""
    axe = pytest.importorskip("axe_playwright_python.sync_playwright").Axe()
    run(lab, page, f"axe_{name}.ipynb", f"benches.{name}(palette='dark')")
    page.get_by_role("button", name=BENCHES[name].press).click()
    until(page, BENCHES[name].tells)
    found = axe.run(page, context=".seatwork-bench")
    faults = [
        (v["id"], [n["html"][:200] for n in v["nodes"]]) for v in found.response["violations"]
    ]
    assert not faults, faults
