"""A graded sheet over file://, without a network: typed, kept, handed in, marked as any other."""

import hashlib
import json
import os
import random
from pathlib import Path

import pytest
from playwright.sync_api import expect
from seatwork.marking import Answer, AnswerFile, examples, form_secret, sheets, submissions
from seatwork.record import forms, hand_out, mark
from seatwork.takehome import graded_page, papers
from seatwork.takehome.blocks import HERE

from tests.browser.pages import PHONE, SMALL, WIDE, opened, sideways, too_small

SHEET = "angles"
TWELVE = tuple(f"L{number:02d}" for number in range(1, 13))
TYPED = (".139 in", "13,2 mm", "1 1/4", "82", "b", "\u2300 \u00bd", '"quoted" \\ back', "caa", "6")
FEW = 40
SIGNS = "abcdefghij"
WRITTEN = {"number": ".139", "choice": "b", "order": "cab"}


@pytest.fixture(scope="module")
def course(tmp_path_factory):
    """Hand one sheet out to twelve learners, and write their pages."""
    folder = examples.make_course(tmp_path_factory.mktemp("term") / "course")
    hand_out(folder, SHEET, TWELVE, mode="graded", day="2026-09-07")
    for paper in papers(folder, sheets.load(SHEET)):
        path = folder.parent / f"{paper.learner}-{SHEET}-{paper.form}.html"
        path.write_text(graded_page(paper), encoding="utf-8")
    return folder


def page_of(course: Path, learner: str = "L01") -> Path:
    """Return a learner's page."""
    return course.parent / f"{learner}-{SHEET}-1.html"


def fill(page, typed) -> None:
    """Type into every box, and choose the first of every choice."""
    boxes = page.locator("input[type=text]")
    for number in range(boxes.count()):
        boxes.nth(number).fill(typed[number % len(typed)])
    for group in page.get_by_role("radiogroup").all():
        group.get_by_role("radio").first.check()
    page.locator(".sure input").first.check()


def saved(page) -> bytes:
    """Press the button, and return the bytes of the file that the browser saves."""
    with page.expect_download() as download:
        page.get_by_role("button", name="Save the answer file").click()
    assert download.value.suggested_filename == page.evaluate("seatwork.name")
    return Path(download.value.path()).read_bytes()


def by_desk(page, course: Path, learner: str = "L01") -> AnswerFile:
    """Return the answer file as the notebook's worksheet writes it, of what the page holds."""
    held = page.evaluate("seatwork.kept.answers")
    answers = {
        name: Answer(parts=tuple(one["parts"]), sure=one["sure"])
        for name, one in held.items()
        if any(one["parts"]) or one["sure"]
    }
    form = forms(course).form(SHEET, learner, 1)
    file = AnswerFile(learner=learner, sheet=SHEET, form=1, answers=answers, form_id=form.form_id)
    return file.sealed(form_secret(examples.KEY, form.form_id))


def test_a_seal_is_worked_out_as_the_standard_says(chromium) -> None:
    """SHA-256 of every length over three blocks, as the standard library has it."""
    page = chromium.new_page()
    code = (HERE / "sealing.js").read_text(encoding="utf-8")
    texts = [bytes(range(n % 256)) * (n // 256 + 1) for n in range(200)]
    found = page.evaluate(
        f"texts => {{ {code}; return texts.map((one) => inHex(sha256(new Uint8Array(one)))); }}",
        [list(text) for text in texts],
    )
    assert found == [hashlib.sha256(text).hexdigest() for text in texts]
    page.close()


def test_the_file_has_the_bytes_of_the_notebook(chromium, course) -> None:
    """Quotes, signs and units included; typed text is what the page holds, its ends trimmed."""
    with opened(chromium, page_of(course), PHONE) as page:
        fill(page, TYPED)
        first = page.locator("input[type=text]").first
        first.fill("  .139 in ")
        raw = saved(page)
        assert raw == by_desk(page, course).content()
        assert b'".139 in"' in raw
        expect(page.locator("#done")).to_contain_text("Hand that file in")
        expect(page.locator("#done")).to_be_in_viewport(ratio=1)


def test_what_is_typed_is_kept_by_learner_sheet_and_form(chromium, course) -> None:
    """Loaded again it stands there; another learner's page in the same browser is empty."""
    with opened(chromium, page_of(course)) as page:
        fill(page, TYPED)
        before = saved(page)
        page.reload()
        expect(page.locator("input[type=text]").first).to_have_value(TYPED[0])
        assert saved(page) == before
        page.goto(page_of(course, "L02").as_uri())
        expect(page.locator("input[type=text]").first).to_have_value("")
        page.goto(page_of(course).as_uri())
        page.on("dialog", lambda dialog: dialog.accept())
        page.get_by_role("button", name="Clear this sheet").click()
        expect(page.locator("input[type=text]").first).to_have_value("")
        assert page.evaluate("localStorage.length") == 0


@pytest.fixture
def tabs(chromium, course):
    """Open the same sheet in two tabs of one browser."""
    context = chromium.new_context(offline=True)
    both = context.new_page(), context.new_page()
    for page in both:
        page.goto(page_of(course).as_uri())
        page.locator("input[type=text]").first.wait_for()
    yield both
    context.close()


def test_a_second_tab_overwrites_nothing(tabs) -> None:
    """The tab that is behind says so, writes nothing, and can still save its file."""
    first, second = tabs
    first.locator("input[type=text]").first.fill("first")
    expect(second.locator("#warn")).to_contain_text("open a second time")
    second.locator("input[type=text]").first.fill("second")
    expect(second.locator("#warn")).to_contain_text("Nothing was overwritten")
    assert b'"second"' in saved(second)
    second.reload()
    expect(second.locator("input[type=text]").first).to_have_value("first")
    expect(second.locator("#warn")).to_be_hidden()


UNREAD = ("about half", ".1 + .2", "7 8", "1/3")


def test_what_nobody_could_read_is_told_in_both_languages(chromium, course) -> None:
    """Below its box once it is left, and at saving by its name; mended it is gone; kept as typed.

    Nothing is told of what the reader reads, right or wrong.
    """
    with opened(chromium, page_of(course), PHONE) as page:
        boxes, told = page.locator("input[type=text]"), page.locator("p.read")
        for number, text in enumerate(UNREAD[: boxes.count()]):
            boxes.nth(number).fill(text)
        boxes.first.focus()
        expect(page.locator("[aria-invalid=true]")).to_have_count(boxes.count())
        raw = saved(page)
        done = page.locator("#done")
        expect(told.first).to_contain_text("This cannot be read. Write one number")
        expect(boxes.first).to_have_attribute("aria-invalid", "true")
        expect(done).to_contain_text("Cannot be read as it stands: a1, a3, a4. Mend it")
        for text in UNREAD[: boxes.count()]:
            assert json.dumps(text).encode() in raw
        page.get_by_role("button", name="Español").click()
        expect(told.first).to_contain_text("Esto no se puede leer. Escriba un solo número")
        page.get_by_role("button", name="Guardar el archivo de respuestas").click()
        expect(done).to_contain_text("No se puede leer como está: a1, a3, a4.")
        page.reload()
        expect(told.first).to_contain_text("This cannot be read")
        for box in boxes.all():
            box.fill("12")
        expect(page.locator("[aria-invalid=true]")).to_have_count(0)
        assert "".join(told.all_inner_texts()) == ""
        page.get_by_role("button", name="Save the answer file").click()
        expect(done).not_to_contain_text("Cannot be read")


THROWS = "Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no'); }})"
FULL = "Storage.prototype.setItem = () => { throw new DOMException('full'); }"


@pytest.mark.parametrize("script", [THROWS, FULL])
def test_where_nothing_can_be_kept_it_says_so_and_the_file_is_saved(
    chromium, course, script
) -> None:
    """A private window, storage off or full: a warning in words, and the file all the same."""
    context = chromium.new_context(offline=True)
    context.add_init_script(script)
    page = context.new_page()
    page.goto(page_of(course).as_uri())
    fill(page, TYPED)
    expect(page.locator("#warn")).to_contain_text("Save the answer file before you close it")
    assert saved(page) == by_desk(page, course).content()
    context.close()


def damaged(seed: int) -> str:
    """Make a kept text that no page wrote."""
    rng = random.Random(seed)
    whole = {"stamp": "1", "answers": {"a1": {"parts": ["x"], "sure": False}}}
    spoiled = [
        "", "{", "null", "[]", "1e999", '{"stamp":1}', json.dumps(whole)[:-2],
        json.dumps(whole | {"answers": [1]}), json.dumps({"stamp": "1", "answers": None}),
        json.dumps({"stamp": "1", "answers": {"a1": {"parts": "x", "sure": 1}}}),
        json.dumps({"stamp": "1", "answers": {"__proto__": {"parts": ["x"], "sure": False}}}),
        "".join(chr(rng.randrange(1, 0xD7FF)) for _ in range(rng.randrange(60))),
    ]  # fmt: skip
    return rng.choice(spoiled)


def test_damaged_storage_is_set_aside_and_told(chromium, course) -> None:
    """Whatever stands there: an empty form, the text kept under another name, nothing run."""
    with opened(chromium, page_of(course)) as page:
        page.wait_for_function("typeof seatwork !== 'undefined'")
        key = page.evaluate("seatwork.kept.key")
        for seed in range(FEW):
            page.evaluate("([k, v]) => { localStorage.clear(); localStorage.setItem(k, v); }",
                          [key, damaged(seed)])  # fmt: skip
            page.reload()
            expect(page.locator("#warn")).to_contain_text("set aside, not deleted")
            expect(page.locator("input[type=text]").first).to_have_value("")
            assert page.evaluate("Object.values(localStorage)") == [damaged(seed)]


def test_twelve_hand_in_from_pages_and_are_marked(chromium, course, tmp_path) -> None:
    """As a file, a second download, a file that a phone renamed, and text in a message.

    A seal that fits is on each, also where a phone made the quotation marks curly.
    """
    folder = tmp_path / "handed_in"
    folder.mkdir()
    names = (
        "{0}-{1}-1.json", "{0}-{1}-1 (1).json", "{0}-{1}-1.json.txt", "message {0}.txt",
        "curly {0}.txt",
    )  # fmt: skip
    by_notebook = {}
    for number, learner in enumerate(TWELVE):
        with opened(chromium, page_of(course, learner), PHONE) as page:
            fill(page, TYPED[number % 5 :])
            content = saved(page)
            by_notebook[learner] = by_desk(page, course, learner).content()
        name = names[number % len(names)].format(learner, SHEET)
        hello = "Good evening,\n" if name.endswith(f" {learner}.txt") else ""
        text = content.decode().replace('"', "\u201d") if "curly" in name else content.decode()
        (folder / name).write_bytes((hello + text).encode())
    found = list(submissions.collect(folder))
    assert {one.file.learner: one.file.content() for one in found} == by_notebook
    marked = mark(course, SHEET, folder, day="2026-09-14")
    assert {one.file.learner for one in marked.marked if one.scored} == set(TWELVE)
    assert not [one for one in marked.marked if one.doubt or one.question]


def test_clearing_is_asked_first_and_leaves_nothing(chromium, course) -> None:
    """Not meant: all stays. Meant: what was kept and what was set aside goes, no other sheet's."""
    with opened(chromium, page_of(course)) as page:
        page.wait_for_function("typeof seatwork !== 'undefined'")
        key = page.evaluate("seatwork.kept.key")
        page.evaluate("key => localStorage.setItem(key, '{')", key)
        page.evaluate("localStorage.setItem('seatwork L09 cones 1 0', 'another')")
        page.reload()
        expect(page.locator("#warn")).to_contain_text("set aside, not deleted")
        first = page.locator("input[type=text]").first
        first.fill(".139 in")
        assert page.evaluate("localStorage.length") == 3
        asked: list[str] = []
        page.once("dialog", lambda one: (asked.append(one.message), one.dismiss()))
        page.get_by_role("button", name="Clear this sheet").click()
        expect(first).to_have_value(".139 in")
        assert page.evaluate("localStorage.length") == 3
        page.get_by_role("button", name="Español").click()
        page.once("dialog", lambda one: (asked.append(one.message), one.accept()))
        page.get_by_role("button", name="Borrar esta hoja").click()
        expect(first).to_have_value("")
        assert page.evaluate("Object.values(localStorage)") == ["another"]
        assert "deleted from this browser for good" in asked[0]
        assert "se borra para siempre" in asked[1]


@pytest.mark.parametrize("size", [WIDE, PHONE, SMALL, (844, 390)])
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_it_fits_a_phone(chromium, course, size, theme) -> None:
    """No sideways scroll, buttons of 44 px, and an audit that finds nothing."""
    with opened(chromium, page_of(course), size, color_scheme=theme) as page:
        page.locator("input[type=text]").first.wait_for()
        assert sideways(page) == 0
        assert too_small(page) == []
        if os.environ.get("SEATWORK_PICTURES"):
            place = Path(os.environ["SEATWORK_PICTURES"])
            page.screenshot(path=str(place / f"graded_{size[0]}_{theme}.png"))


LEAST_LETTERS = 11
LETTERS = """all => all.map(one =>
  17.5 * one.getBoundingClientRect().width / one.naturalWidth)"""  # 18 pt at 70 dots an inch
SCROLLS = "all => all.filter(one => one.scrollWidth > one.clientWidth).length"


@pytest.mark.parametrize("size", [PHONE, SMALL, (844, 390)])
def test_a_picture_is_whole_and_larger_at_a_press(chromium, course, size) -> None:
    """No picture is cut off; where its letters are small, a button makes them 11 px, and back."""
    with opened(chromium, page_of(course), size) as page:
        images, button = page.locator(".strip img"), page.locator("button.larger:visible")
        images.last.wait_for()
        page.wait_for_timeout(300)
        assert page.locator(".strip").evaluate_all(SCROLLS) == 0
        small = [one for one in images.evaluate_all(LETTERS) if one < LEAST_LETTERS]
        assert button.count() == len(small)
        assert (size[0] > 640) == (not small)
        for one in button.all():
            assert one.bounding_box()["height"] >= 44
            one.click()
        assert min(images.evaluate_all(LETTERS)) >= LEAST_LETTERS
        assert sideways(page) == 0
        for one in button.all():
            expect(one).to_contain_text("Whole picture")
            one.click()
        assert page.locator(".strip").evaluate_all(SCROLLS) == 0


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_an_audit_finds_nothing(chromium, course, theme) -> None:
    """Contrast, names and roles, by a library of checks."""
    from axe_playwright_python.sync_playwright import Axe

    context = chromium.new_context(color_scheme=theme, bypass_csp=True)
    page = context.new_page()
    page.goto(page_of(course).as_uri())
    page.locator("input[type=text]").first.wait_for()
    found = Axe().run(page)
    assert [one["id"] for one in found.response["violations"]] == []
    context.close()


def test_on_paper_it_has_lines_and_no_buttons(chromium, course) -> None:
    """What is pressed is hidden; questions and lines stay."""
    with opened(chromium, page_of(course)) as page:
        page.emulate_media(media="print")
        expect(page.get_by_role("button")).to_have_count(0)
        expect(page.locator("fieldset").first).to_be_visible()


def test_what_is_written_on_the_printed_page_is_marked(chromium, tmp_path) -> None:
    """By the id and the questions that stand on paper; what the page said of saving does not."""
    folder = examples.make_course(tmp_path / "course")
    hand_out(folder, SHEET, ["L01"], mode="graded", day="2026-09-07")
    (paper,) = papers(folder, sheets.load(SHEET))
    path = tmp_path / "page.html"
    path.write_text(graded_page(paper), encoding="utf-8")
    with opened(chromium, path) as page:
        saved(page)
        page.emulate_media(media="print")
        expect(page.locator("#done")).to_be_hidden()
        heading = page.get_by_role("heading", level=1).inner_text()
        legends = [one.split(" ")[0] for one in page.locator("legend").all_inner_texts()]
        kinds = page.evaluate("seatwork.sheet.items.map(one => one.parts.map(part => part.kind))")
    learner, form_id = heading.split(", ")[1], heading.split(", ")[-1]
    typed = tmp_path / "typed.csv"
    rows = [
        f"{learner},{name}{SIGNS[n] if len(parts) > 1 else ''},{WRITTEN[kind]},{form_id}"
        for name, parts in zip(legends, kinds, strict=True)
        for n, kind in enumerate(parts)
    ]
    typed.write_text("\n".join(["learner,question,answer,form", *rows, ""]), encoding="utf-8")
    (one,) = mark(folder, SHEET, typed, day="2026-09-14").marked
    assert one.scored
    assert (one.doubt, one.question) == ("", "")
    parts = {name: one.file.of(name).parts for name in legends}
    assert parts == {
        name: tuple(WRITTEN[kind] for kind in asked)
        for name, asked in zip(legends, kinds, strict=True)
    }
