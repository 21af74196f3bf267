"""Every bench in a real JupyterLab: the same walk through each, as a learner would take it.

A new bench gets a line in BENCHES. ``SEATWORK_PICTURES=DIR`` keeps a picture of each page.
"""

import os
from dataclasses import dataclass
from pathlib import Path

import pytest

RANGE = ".seatwork-row input[type=range]:visible"
BOX = ".seatwork-row input[type=text]:visible"
TROUBLE = ".seatwork-row .seatwork-trouble:visible"
PICTURE = ".seatwork-picture svg"
STILL = ".jp-OutputArea-output img"
SHOWN = 640
"""Height of the notebook's page under JupyterLab's bars in a window of 1280 x 720 [px]."""


@dataclass(frozen=True, kw_only=True)
class Walk:
    """What a test needs to know of one bench.

    Parameters
    ----------
    opens_with : str
        A piece of the text it opens with.
    press : tuple of str
        Buttons pressed first, until a slider shows.
    typed : str
        Text for the first box that is out of its range.
    fault : str
        A piece of the sentence it earns.
    rows : int
        Most rows of controls that show at first.
    """

    opens_with: str
    press: tuple[str, ...] = ()
    typed: str = "9 in"
    fault: str = "goes from"
    rows: int = 3


BENCHES = {
    "chatter": Walk(
        opens_with="which one sings?",
        press=("Show which one sings",),
        typed="9000",
        fault="goes from",
    ),
    "angles": Walk(
        opens_with="seen from above", press=("Cut it open",), typed="130", fault="60° to 120°"
    ),
    "speeds": Walk(opens_with="step by step", typed="9 in"),
    "flush": Walk(opens_with="No one seat fits them all", typed="9 in"),
    "edges": Walk(opens_with="read in two ways"),
    "counterbore": Walk(opens_with="How will you tighten it?", typed="9 in"),
    "spotface": Walk(opens_with="What happens to it", press=("Tighten it",)),
    "gaging": Walk(
        opens_with="Will you pass this seat?",
        press=("Ask a second gage",),
        typed="9 in",
    ),
    "triangle": Walk(opens_with="A cone, included angle", typed="9", rows=4),
    "depth": Walk(opens_with="the stop has not moved", press=("Cut number 2",)),
    "on_the_hole": Walk(opens_with="How will the head stand", press=("Put the screw in",)),
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


def changed(page, before: str) -> str:
    """Wait until the picture tells something else; give it."""
    page.wait_for_function(
        "([p, b]) => document.querySelector(p).getAttribute('aria-label') !== b",
        arg=[PICTURE, before],
    )
    return label(page)


def rest(page) -> str:
    """Wait until the picture has told the same for half a second; give it."""
    page.wait_for_function(
        """p => {
          const told = document.querySelector(p).getAttribute('aria-label');
          const now = performance.now();
          if (window.__told !== told) [window.__told, window.__since] = [told, now];
          return now - window.__since > 500;
        }""",
        arg=PICTURE,
    )
    return label(page)


def run(lab, page, place: str, call: str) -> None:
    """Run a notebook with one bench; wait until its picture stands."""
    lab.open(page, lab.write(place, ["from seatwork import benches", call]))
    lab.run_all(page)
    page.locator(PICTURE).wait_for()


def bring(page) -> None:
    """Scroll the bench to the top of the notebook, as a teacher would."""
    page.evaluate("() => document.querySelector('.seatwork-bench').scrollIntoView()")


def begin(page, walk: Walk) -> None:
    """Press what has to be pressed before a slider shows."""
    for button in walk.press:
        before = label(page)
        page.get_by_role("button", name=button).click()
        changed(page, before)
    page.locator(RANGE).first.wait_for()


def test_a_walk_through_the_bench(name, lab, page):
    """It loads, follows keys and hand, switches units, refuses bad text and goes back to start."""
    walk = BENCHES[name]
    run(lab, page, f"walk_{name}.ipynb", f"benches.{name}()")
    bring(page)
    opening = label(page)
    assert walk.opens_with in opening
    keep(page, f"{name}-opens")
    begin(page, walk)
    keep(page, f"{name}-started")

    handle = page.locator(RANGE).first
    handle.focus()
    before = label(page)
    page.keyboard.press("PageUp")
    before = changed(page, before)
    box = handle.bounding_box()
    page.mouse.move(box["x"] + box["width"] * 0.3, box["y"] + box["height"] / 2)
    page.mouse.down()
    for share in range(30, 60, 3):
        page.mouse.move(box["x"] + box["width"] * share / 100, box["y"] + 5)
    page.mouse.up()
    changed(page, before)
    before = rest(page)

    page.get_by_role("button", name="Metric first").click()
    assert "mm" in changed(page, before) or name == "angles"
    rest(page)
    page.locator(BOX).first.fill(walk.typed)
    page.locator(BOX).first.press("Enter")
    page.locator(TROUBLE).first.filter(has_text=walk.fault).wait_for()
    keep(page, f"{name}-refused")
    before = rest(page)
    page.get_by_role("button", name="Inch first").click()
    changed(page, before)
    page.get_by_role("button", name="Back to start").click()
    page.wait_for_function(
        "([p, t]) => document.querySelector(p).getAttribute('aria-label') === t",
        arg=[PICTURE, opening],
    )


@pytest.mark.long
@pytest.mark.parametrize("size", ["desk", "projector"])
def test_all_of_it_is_on_one_screen(name, size, lab, page):
    """Picture, readouts and controls stand on one screen of 1280 x 720, at both sizes."""
    walk = BENCHES[name]
    projector = size == "projector"
    run(lab, page, f"{size}_{name}.ipynb", f"benches.{name}(projector={projector})")
    begin(page, walk)
    bring(page)
    page.wait_for_timeout(700)
    keep(page, f"{name}-{size}")
    top = page.locator(".seatwork-bench").bounding_box()["y"]
    rows = page.locator(".seatwork-row:visible, .widget-dropdown:visible").all()
    assert len(rows) <= walk.rows
    for shown in (page.locator(PICTURE), page.locator(".seatwork-readout"), *rows):
        box = shown.bounding_box()
        assert box["y"] + box["height"] - top <= SHOWN


@pytest.mark.long
def test_run_again_saved_and_reopened(name, lab, page):
    """Run twice there is one bench; saved and reopened without a kernel the still tells it all."""
    place = f"again_{name}.ipynb"
    run(lab, page, place, f"benches.{name}()")
    opening = label(page)
    lab.run_all(page)
    page.wait_for_function("p => document.querySelectorAll(p).length === 1", arg=PICTURE)
    assert label(page) == opening
    page.wait_for_timeout(700)
    for _ in range(20):
        lab.save(page)
        outputs = lab.read(place)["cells"][1]["outputs"]
        if outputs:
            break
        page.wait_for_timeout(200)
    assert "widget-view" not in str(outputs)
    assert opening in "".join(outputs[-1]["data"]["text/plain"])
    page.goto(lab.address(place))
    lab.wait_for(page, place)
    page.locator(STILL).first.wait_for()
    assert page.locator(STILL).first.get_attribute("alt") == opening
    assert page.locator(PICTURE).count() == 0
    lab.wait_idle(page)


@pytest.mark.long
def test_axe_finds_nothing(name, lab, page):
    """By axe-core's rules there is no fault in the bench, all settings shown."""
    axe = pytest.importorskip("axe_playwright_python.sync_playwright").Axe()
    run(lab, page, f"axe_{name}.ipynb", f"benches.{name}(palette='dark')")
    begin(page, BENCHES[name])
    page.get_by_role("button", name="More settings").click()
    page.get_by_role("button", name="Fewer settings").wait_for()
    keep(page, f"{name}-folded-out")
    found = axe.run(page, context=".seatwork-bench")
    faults = [
        (v["id"], [n["html"][:200] for n in v["nodes"]]) for v in found.response["violations"]
    ]
    assert not faults, faults


def test_a_screw_is_typed_by_its_name(lab, page):
    """The last entry of the menu opens a line; a name that could be two asks, then one is taken."""
    run(lab, page, "typed_screw.ipynb", "benches.flush()")
    bring(page)
    before = label(page)
    menu = page.locator(".widget-dropdown select:visible").first
    menu.select_option(label="another screw ...")
    line = page.locator(".seatwork-text input:visible")
    line.fill("M6 flat head")
    line.press("Enter")
    page.locator(".seatwork-trouble:visible").filter(
        has_text="slotted, recessed or socket?"
    ).wait_for()
    keep(page, "flush-asks")
    assert label(page) == before
    assert "M6 socket flat" in menu.inner_text().replace("\xa0", " ")
    page.get_by_role("button", name="M6 socket flat").focus()
    page.keyboard.press("Enter")
    before = changed(page, before)
    assert "M6 socket" in before
    menu.select_option(label="another screw ...")
    line.fill("5/16 flat head machine screw")
    line.press("Enter")
    assert "flat head machine screw" in changed(page, before)
    line.wait_for(state="hidden")
    assert menu.input_value() == "5/16 flat head machine screw"
    keep(page, "flush-typed")


SLIDING = "() => document.getAnimations().filter(a => a.transitionProperty === 'd').length"


@pytest.mark.long
@pytest.mark.parametrize(("motion", "slides"), [("no-preference", True), ("reduce", False)])
def test_a_step_of_the_triangle_slides_once(motion, slides, lab, page):
    """Pressed to the fold, lines slide and rest; where less motion is wanted they jump."""
    page.emulate_media(reduced_motion=motion)
    run(lab, page, f"sliding_{motion}.ipynb", "benches.triangle(step=2)")
    bring(page)
    assert page.evaluate(SLIDING) == 0
    before = label(page)
    page.locator(RANGE).first.press("ArrowRight")
    assert "half the difference" in changed(page, before)
    assert (page.evaluate(SLIDING) > 0) is slides
    page.wait_for_timeout(1000)
    assert page.evaluate(SLIDING) == 0
