"""Every page walked for its accessibility, for ``python tests/accessibility.py``."""

import pytest
from seatwork import opening
from seatwork.errors import SeatworkError
from seatwork.marking import examples, sheets
from seatwork.opening.export import export
from seatwork.record import hand_out
from seatwork.takehome import graded_page, papers, planner_page, practice_page
from seatwork.takehome.moving import Moving
from seatwork.takehome.runtime import runtime

from tests.access.walking import DESK, Walk
from tests.browser.test_benches import BENCHES as SLIDING
from tests.browser.test_text_benches import BENCHES as TYPED

pytestmark = pytest.mark.long

HOME = opening.source()
LESSONS = sorted((HOME / "notebooks").glob("*.ipynb"))
SHEETS = sorted((HOME / "exercises").glob("*.ipynb"))
NAMES = [path.relative_to(HOME).as_posix() for path in (*LESSONS, *SHEETS)]
OURS = ".jp-Notebook .jp-MarkdownOutput, .jp-Notebook .jp-OutputArea-output"
THEME = "theme => jupyterapp.commands.execute('apputils:change-theme', { theme })"
NOTE = "4X \u2300.201 THRU \u2335 FOR #10-32 FLAT HEAD"
CARDS = {
    "job card": "cards.job_card(plan)",
    "gage page": "cards.gage_page(plan)",
    "profile": "cards.seat_profile(plan)",
    "demonstration": "cards.demonstration(plan)",
    "coupons": "cards.coupon_set()",
    "formulas": "cards.formula_page()",
    "glossary": "cards.glossary_page()",
    "wall charts": "cards.charts.drills()",
    "sign": "cards.station.station_sign('bench drill press')",
    "bench sheets": "cards.bench_sheets(4)",
}
"""Every kind of page that is printed without a class, and how a notebook makes it."""

BEGIN = (
    "import seatwork as sw\nfrom seatwork import cards\nfrom seatwork.cards import charts, station"
)
RESTED = 1_500
STARTED = 120_000


@pytest.fixture(scope="session")
def axe():
    """Load the library of checks once."""
    from axe_playwright_python.sync_playwright import Axe

    return Axe()


@pytest.fixture
def walked(axe, record_property):
    """Walk a page, keep what was found for the report, and hold that it is nothing."""

    def walk(page, kind, name, parts, dark) -> None:
        found = Walk(page, parts, axe).all(dark).record()
        record_property("accessibility", {"kind": kind, "page": name, **found})
        assert {look: faults for look, faults in found["faults"].items() if faults} == {}

    return walk


@pytest.fixture
def in_lab(page, walked):
    """Walk what stands in JupyterLab now."""

    def dark(on: bool) -> None:
        page.evaluate(THEME, "JupyterLab Dark" if on else "JupyterLab Light")

    def walk(kind: str, name: str) -> None:
        page.set_viewport_size({"width": DESK[0], "height": DESK[1]})
        page.wait_for_timeout(RESTED)
        walked(page, kind, name, OURS, dark)

    return walk


@pytest.fixture
def in_a_file(chromium, walked):
    """Open a page from a file, without a network, and walk it."""

    def walk(path, kind: str, name: str, rest: str = "body") -> None:
        size = {"width": DESK[0], "height": DESK[1]}
        context = chromium.new_context(viewport=size, offline=True, bypass_csp=True)
        page = context.new_page()
        page.goto(path.as_uri())
        page.locator(rest).first.wait_for(timeout=STARTED)
        page.wait_for_timeout(RESTED)

        def dark(on: bool) -> None:
            page.emulate_media(color_scheme="dark" if on else "light")

        walked(page, kind, name, "body", dark)
        context.close()

    return walk


@pytest.mark.parametrize("place", NAMES)
def test_a_page_of_the_workbook(place, lab, page, in_lab) -> None:
    """A lesson, an instructor's page or a sheet, run from top to end."""
    lab.open(page, place)
    lab.run_all(page)
    in_lab("sheet" if place.startswith("exercises") else "notebook", place)


@pytest.mark.parametrize("name", sorted({**SLIDING, **TYPED}))
def test_a_bench(name, lab, page, in_lab) -> None:
    """A bench on a page of its own, begun, with every setting shown."""
    cells = ["from seatwork import benches", f"benches.{name}()"]
    lab.open(page, lab.write(f"seen_{name}.ipynb", cells))
    lab.run_all(page)
    page.locator(".seatwork-picture svg").wait_for()
    press = {**SLIDING, **TYPED}[name].press
    for button in [press] if isinstance(press, str) else press:
        page.get_by_role("button", name=button).click()
        page.wait_for_timeout(RESTED / 3)
    more = page.get_by_role("button", name="More settings")
    if more.count():
        more.click()
    in_lab("bench", name)


def test_the_cards(lab, page, in_lab) -> None:
    """Every printed page as a notebook shows it: a picture with its words, and the words alone."""
    plan = f"plan = sw.make_plan({NOTE!r}, material='6061 aluminum', machine='knee mill')"
    shown = [f"card = {made}\nprint(card)\ncard.page()" for made in CARDS.values()]
    lab.open(page, lab.write("seen_cards.ipynb", [BEGIN, plan, *shown]))
    lab.run_all(page)
    assert page.locator(".jp-OutputArea-output img").count() == len(CARDS)
    in_lab("card", ", ".join(CARDS))


@pytest.mark.parametrize("path", LESSONS, ids=lambda path: path.stem)
def test_an_exported_page(path, tmp_path, in_a_file) -> None:
    """A lesson taken home, its benches moving."""
    made = tmp_path / f"{path.stem}.html"
    export(path, made, (), Moving())
    in_a_file(made, "taken home", path.stem)


def test_a_graded_page(tmp_path, in_a_file) -> None:
    """A graded sheet taken home: a form that keeps what is typed."""
    course = examples.make_course(tmp_path / "course")
    hand_out(course, "angles", ["L01"], mode="graded", day="2026-09-07")
    (paper,) = papers(course, sheets.load("angles"))
    made = tmp_path / "graded.html"
    made.write_text(graded_page(paper), encoding="utf-8")
    in_a_file(made, "taken home", "graded sheet", "input[type=text]")


@pytest.mark.parametrize("kind", ["practice sheet", "planner"])
def test_a_page_with_python(kind, tmp_path, in_a_file) -> None:
    """A practice sheet and the planner, once their Python has started."""
    try:
        python = runtime()
    except SeatworkError as error:
        pytest.skip(str(error))
    page = (
        planner_page(python) if kind == "planner" else practice_page(sheets.load("cones"), python)
    )
    made = tmp_path / "python.html"
    made.write_text(page, encoding="utf-8")
    in_a_file(made, "taken home", kind, "#state:has-text('Ready')")


def test_jupyterlab_itself(lab, page, axe, record_property) -> None:
    """What axe finds round our parts is told on the report; it is not ours to mend."""
    import jupyterlab

    lab.open(page, NAMES[0])
    lab.run_all(page)
    context = {"include": [["body"]], "exclude": [[one.strip()] for one in OURS.split(",")]}
    found = axe.run(page, context=context).response["violations"]
    rules = {one["id"]: [one["help"], len(one["nodes"])] for one in found}
    assert all(rules.values())
    record_property("jupyterlab", {"version": jupyterlab.__version__, "rules": rules})


BAD = """<!DOCTYPE html><html lang="en"><title>Bad</title><body style="margin: 0">
<style>a { outline: none !important } #far { width: 400px } #late { order: -1 }
@keyframes go { to { opacity: 0 } } #moves { animation: go 9s infinite }</style>
<p style="color: #999">pale</p><button></button><a href="#x">plain</a>
<p id="far" style="white-space: nowrap">a line that does not fit, a line that does not</p>
<p style="height: 10px; overflow: hidden">cut<br>off</p><p id="moves">moves</p>
<div style="display: flex; flex-direction: column"><input aria-label="first"><input id="late"
aria-label="second"></div><input type="range" style="position: relative; z-index: -1"
aria-label="below"><button style="border: 0; background: none" tabindex="-1">no stop</button>
<div tabindex="0" style="border: 0">bare</div><button style="border: 0">no edge</button></body>"""


def test_the_walk_sees_what_is_wrong(chromium, axe) -> None:
    """On a page made wrong on purpose every look but the dark one has something to say."""
    context = chromium.new_context(viewport={"width": DESK[0], "height": DESK[1]})
    page = context.new_page()
    page.set_content(BAD)
    faults = Walk(page, "body", axe).all(lambda on: None).record()["faults"]
    said = {look: " ".join(told) for look, told in faults.items()}
    assert "color-contrast" in said["axe, light"]
    assert "button-name" in said["axe, light"]
    assert 'no focus to be seen: a "plain"' in said["keyboard"]
    assert "goes back up" in said["keyboard"]
    assert "stands out of the page: p" in said["320 px"]
    assert "cut below: p" in said["200 %"]
    assert "cut below: p" in said["text spacing"]
    assert "no edge: button" in said["forced colors"]
    assert "no name (button)" in said["names and values"]
    assert "moves on and on: p" in said["reduced motion"]
    context.close()
