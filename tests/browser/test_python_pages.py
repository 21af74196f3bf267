"""Pages with Python in them over file://, without a network: the package's own verdicts."""

import json
import os
import time
from pathlib import Path

import pytest
from playwright.sync_api import expect
from seatwork.errors import SeatworkError
from seatwork.marking import examples, sheets
from seatwork.marking.given import practice
from seatwork.plan import make_plan
from seatwork.questions import all_types
from seatwork.record import hand_out
from seatwork.takehome import graded_page, papers, practice_page
from seatwork.takehome.blocks import policy, script
from seatwork.takehome.graded import PAGE
from seatwork.takehome.package_block import practice_files
from seatwork.takehome.python_blocks import python_blocks
from seatwork.takehome.runtime import NOTICE, Runtime, runtime
from seatwork.worksheet.desk import Desk

from tests.browser import said_in_page
from tests.browser.pages import PHONE, SMALL, WIDE, opened, sideways, too_small

pytestmark = pytest.mark.long

LONGEST = 60
"""How long a page may take to start before the test gives up [s]; no bound on a page."""
PATIENT = 1000 * LONGEST
SHEET = "cones"
READ = "read as 0.139 in (3.53 mm)"
NOTE = "4X \u2300.201 THRU \u2335 FOR #10-32 FLAT HEAD"
ENTRIES = (".139 in", "3,53 mm", "a", "17/64", "", "</script>", "\u00bd")
MOST = {"practice": 8_000_000, "graded": 7_500_000}
SEEDS = 20
ASKING = """
startPython("said").then(
  (ask) => { globalThis.seatwork = { ask }; },
  (error) => { globalThis.seatwork = { fault: String(error) }; });
"""


@pytest.fixture(scope="module")
def made() -> Runtime:
    """Find Python for pages; without it the tests skip, or fail where it is required."""
    try:
        return runtime()
    except SeatworkError as error:
        if os.environ.get("SEATWORK_PAGE_PYTHON") == "required":
            raise
        pytest.skip(str(error))


@pytest.fixture(scope="module")
def pages(made, tmp_path_factory):
    """Write a practice sheet with the planner, and a graded sheet with its reader."""
    place = tmp_path_factory.mktemp("pages")
    folder = examples.make_course(place / "course")
    hand_out(folder, SHEET, ["L01"], mode="graded", day="2026-09-07")
    (paper,) = papers(folder, sheets.load(SHEET))
    (place / "graded.html").write_text(graded_page(paper, made), encoding="utf-8")
    page = practice_page(sheets.load(SHEET), made, planner=True)
    (place / "practice.html").write_text(page, encoding="utf-8")
    return place


def write_page(path: Path, made: Runtime, said: bytes, carried: dict[str, bytes]) -> Path:
    """Write a page that shows nothing and whose Python answers by the module `said`."""
    code = script("unpack.js", "python.js") + ASKING
    page = PAGE.format(
        language="en", policy=policy(code, python=True), title="said", style="", body="",
        code=code, blocks=python_blocks(made, carried | {"./said.py": said}),
    )  # fmt: skip
    path.write_text(page, encoding="utf-8")
    return path


@pytest.fixture(scope="module")
def asked(chromium, made, tmp_path_factory):
    """Open a page whose Python says what this one says, and give what asks it."""
    said = Path(said_in_page.__file__).read_bytes()
    path = tmp_path_factory.mktemp("said") / "said.html"
    write_page(path, made, said, practice_files())
    with opened(chromium, path, WIDE) as page:
        wait(page, "seatwork.ask")
        yield lambda name, given: page.evaluate(
            f"seatwork.ask({json.dumps(name)}, {json.dumps(given)})"
        )


def wait(page, what: str) -> None:
    """Wait until something is so: the page's policy allows no waiting of the usual kind."""
    end = time.monotonic() + LONGEST
    while time.monotonic() < end:
        if page.evaluate(f"!!globalThis.seatwork && !!(seatwork.fault || ({what}))"):
            assert not page.evaluate("seatwork.fault ?? ''")
            return
        time.sleep(0.2)
    pytest.fail(f"not so in {LONGEST} s: {what}")


def test_entries_typed_early_are_read_later(chromium, pages) -> None:
    """The form can be used before Python is there; what was typed is read once it is."""
    with opened(chromium, pages / "graded.html", PHONE) as page:
        first = page.locator("input[type=text]").first
        first.fill(".139 in")
        wait(page, "seatwork.reader")
        expect(page.locator(".read").first).to_have_text(READ, timeout=PATIENT, use_inner_text=True)
        first.fill("</script><img src=x>")
        expect(page.locator(".read").first).to_contain_text("cannot be read", timeout=PATIENT)
        assert page.locator("#form img").count() == page.locator(".strip img").count()
        assert NOTICE in page.content()


def test_verdicts_and_plans_are_the_notebook_s(chromium, pages) -> None:
    """The same kinds and sentences for each question and entry, and the same rows of a plan."""
    desk = Desk(sheets.load(SHEET), practice(SHEET), None)
    with opened(chromium, pages / "practice.html", WIDE) as page:
        wait(page, "seatwork.ready")
        for item in desk.plan.items:
            parts = len(desk.question(item.id).parts)
            for text in ENTRIES:
                entry = desk.ask(item.id, answer=[text] * parts)
                given = json.dumps({"id": item.id, "parts": [text] * parts})
                found = page.evaluate(f"seatwork.ask('check', {given})")
                assert found["kinds"] == [verdict.kind for verdict in entry.verdicts]
                assert found["said"] == list(entry.feedback)
        given = {"note": NOTE, "material": "1018 steel", "machine": "knee mill"}
        found = page.evaluate(f"seatwork.ask('plan', {json.dumps(given)})")
        made = make_plan(NOTE, material="1018 steel", machine="knee mill")
        wanted = [[head, [[r.label, r.text] for r in rows]] for head, rows in made._blocks()]
        assert found["blocks"] == wanted


def test_a_note_that_cannot_be_read_gets_a_sentence(chromium, pages) -> None:
    """As text, in place of the plan; the next note is planned."""
    with opened(chromium, pages / "practice.html", PHONE) as page:
        wait(page, "seatwork.ready")
        page.locator("#note").fill("<img src=x> no note")
        page.get_by_role("button", name="Plan it").click()
        expect(page.locator("#plan .warn")).to_be_visible(timeout=PATIENT)
        assert page.locator("#plan img").count() == 0
        page.locator("#note").fill(NOTE)
        page.get_by_role("button", name="Plan it").click()
        expect(page.locator("#plan table").first).to_be_visible(timeout=PATIENT)
        assert sideways(page) == 0


@pytest.mark.parametrize("size", [WIDE, PHONE, SMALL, (844, 390)])
def test_the_pages_fit(chromium, pages, size) -> None:
    """No sideways scroll, with a verdict and a plan on the page; no page beyond its size."""
    with opened(chromium, pages / "practice.html", size) as page:
        wait(page, "seatwork.ready")
        page.locator("[data-part]").first.fill(".139 in")
        page.get_by_role("button", name="Check").first.click()
        expect(page.locator(".said").first).not_to_be_empty(timeout=PATIENT)
        page.get_by_role("button", name="Plan it").click()
        expect(page.locator("#plan table").first).to_be_visible(timeout=PATIENT)
        assert sideways(page) == 0
        assert too_small(page) == []
    for name, most in MOST.items():
        assert (pages / f"{name}.html").stat().st_size < most


def test_what_cannot_be_read_is_said_once(chromium, pages) -> None:
    """In practice the verdict says why; it is not said a second time before it."""
    with opened(chromium, pages / "practice.html", PHONE) as page:
        wait(page, "seatwork.ready")
        page.locator("[data-part]").first.fill("about half")
        page.get_by_role("button", name="Check").first.click()
        said = page.locator(".said").first
        expect(said).to_contain_text("cannot be read", timeout=PATIENT)
        assert said.inner_text().count("cannot be read") == 1


NO_WORKER = "globalThis.Worker = class { constructor() { throw new Error('none'); } }"


def test_without_a_worker_the_form_still_saves(chromium, pages) -> None:
    """Where Python cannot start, the page says so; what was typed is kept and saved."""
    context = chromium.new_context(offline=True, accept_downloads=True)
    context.add_init_script(NO_WORKER)
    page = context.new_page()
    page.goto((pages / "graded.html").as_uri())
    page.locator("input[type=text]").first.fill(".139 in")
    expect(page.locator("#state")).to_contain_text("did not start", timeout=PATIENT)
    with page.expect_download() as download:
        page.get_by_role("button", name="Save the answer file").click()
    assert b".139 in" in download.value.path().read_bytes()
    context.close()


@pytest.mark.parametrize("name", sorted(all_types()))
def test_a_type_says_the_same_in_the_page(asked, name: str) -> None:
    """Words, verdicts and slips of 20 draws, to right answers, slips and what is none."""
    for seed in range(SEEDS):
        given = {"type": name, "seed": seed}
        assert asked("question", given) == said_in_page.question(given), seed


@pytest.mark.parametrize("note", said_in_page.NOTES)
def test_a_plan_says_the_same_in_the_page(asked, note: str) -> None:
    """With each material on each machine of the shop: 144 plans of six notes."""
    materials, machines = asked("stock", {})
    assert [materials, machines] == said_in_page.stock({})
    assert len(materials) * len(machines) == 24
    for material in materials:
        for machine in machines:
            given = {"note": note, "material": material, "machine": machine}
            assert asked("plan", given) == said_in_page.plan(given)
