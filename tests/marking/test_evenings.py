"""The evening course: filled from pages, sheets and outline, and never over its time."""

import json
import shutil

import pytest
from seatwork import opening
from seatwork.errors import SeatworkError
from seatwork.marking import coverage, evening_course
from seatwork.marking.lesson_pages import notebooks
from seatwork.shop.folder import package_text
from seatwork.shop.house.cautions import cautions

pytestmark = pytest.mark.slow

FORMS = {"eight": 8, "four": 4}


@pytest.fixture
def workbook(tmp_path):
    """Make a workbook with the pages and sheets of the course, to be changed."""
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    (tmp_path / "shop").mkdir()
    shutil.copytree(notebooks(), tmp_path / "notebooks", ignore=shutil.ignore_patterns("images"))
    sheets = opening.source() / "exercises" / "sheets"
    shutil.copytree(sheets, tmp_path / "exercises" / "sheets")
    return tmp_path


def edited(folder, key, change):
    """Change the cells of a page of a workbook."""
    (path,) = (folder / "notebooks").glob(f"*_{key}.ipynb")
    notebook = json.loads(path.read_text(encoding="utf-8"))
    for cell in notebook["cells"]:
        cell["source"] = change("".join(cell["source"]))
    path.write_text(json.dumps(notebook), encoding="utf-8")


@pytest.mark.parametrize("form", FORMS)
def test_no_evening_takes_longer_than_it_has(form):
    """Eight and four evenings of two hours, with three from before, cautions and a ticket each."""
    course = evening_course(form)
    assert len(course.evenings) == FORMS[form]
    for one in course.evenings:
        assert one.frame.evening == 120
        assert one.taken <= 120
        labels = [row.label for row in one.clock]
        assert labels[:2] == ["0 to 6", "6 to 10"]
        assert len(one.again) == (3 if one.number > 1 else 0)


def test_eight_evenings_take_every_lesson_and_every_code():
    """No lesson of the course and no code of the outline that a lesson serves is left out."""
    course = evening_course()
    assert course.left_out == ()
    served = {one.code for one in coverage().codes if one.lessons}
    assert {code for code, _ in course.unserved}.isdisjoint(served)


@pytest.mark.parametrize("form", FORMS)
def test_no_evening_lacks_a_page(form):
    """Every page that the list names is there, whatever its number is now."""
    assert [page for one in evening_course(form).evenings for page in one.lacking] == []


def test_four_evenings_say_what_they_leave_out():
    """What the shorter form does not reach is named by page and by code, as coverage has it."""
    course = evening_course("four")
    assert "Chatter" in course.left_out
    kept = {page.file for one in course.evenings for page, _ in one.pages}
    for code, _ in course.unserved:
        lessons = next(one.lessons for one in coverage().codes if one.code == code)
        assert kept.isdisjoint(lessons)


@pytest.mark.parametrize("form", FORMS)
def test_the_questions_of_an_evening_stand_on_its_pages(form):
    """What is asked comes from the pages; what comes again was asked on an evening before."""
    seen = set()
    for one in evening_course(form).evenings:
        assert set(one.again) <= seen
        on_pages = {asked for page, part in one.pages for asked in page.asked_of(part.part)}
        assert {(sheet, place) for sheet, place, _ in one.asked} == on_pages
        seen |= set(one.asked)


@pytest.mark.parametrize("form", FORMS)
def test_every_evening_can_be_read_aloud_and_laid_out(form):
    """Each has its cautions, things to lay out, and something shown, cut and gaged in words."""
    for one in evening_course(form).evenings:
        given = one.given
        assert cautions(*given.cautions)
        assert given.prepare
        assert given.shown
        assert given.cut
        assert given.gaged
        assert bool(given.bench) is ("Nothing tonight" not in given.cut[0])


def test_a_longer_lesson_changes_the_plan(workbook, monkeypatch):
    """A page of 60 minutes in place of 40 is read on for 20 more at home, and costs 20 more."""
    monkeypatch.chdir(workbook)
    before = evening_course(folder=workbook).evening(2)
    edited(workbook, "depth_diameter_travel",
           lambda text: text.replace("**Time:** 40 minutes", "**Time:** 60 minutes"))  # fmt: skip
    after = evening_course(folder=workbook).evening(2)
    home = dict(after.home).get("Depth, diameter, travel", 0)
    assert home - dict(before.home).get("Depth, diameter, travel", 0) == 20
    assert after.missed[0].text.startswith(f"{22 + 60} minutes of pages")
    assert after.taken == before.taken


def test_a_question_taken_out_of_a_lesson_leaves_the_plan(workbook, monkeypatch):
    """A page that asks nothing any more has nothing asked, and is not asked again later."""
    monkeypatch.chdir(workbook)
    edited(workbook, "flush_heads", lambda text: text.replace(".ask(", ".see("))
    course = evening_course(folder=workbook)
    assert not [asked for one in course.evenings for asked in one.again if asked[0] == "flushness"
                and asked[1] in ("f1", "f2", "f4", "f5")]  # fmt: skip


def test_an_outline_of_ones_own_changes_the_plan(workbook, monkeypatch):
    """The codes of an evening are those of the workbook's outline, with its words."""
    monkeypatch.chdir(workbook)
    (workbook / "shop" / "outline.csv").write_text("code,competency\nS1,Pick a seat\n", "utf-8")
    course = evening_course(folder=workbook)
    assert course.evening(1).codes == (("S1", "Pick a seat"),)
    assert course.evening(2).codes == ()


def test_a_page_that_is_not_there_is_named(workbook, monkeypatch):
    """An evening whose page is gone says so, in the plan and to whoever looks."""
    monkeypatch.chdir(workbook)
    (path,) = (workbook / "notebooks").glob("*_flush_heads.ipynb")
    path.unlink()
    found = evening_course(folder=workbook).evening(3)
    assert "flush_heads" in found.lacking
    assert "page: flush_heads" in str(found)


def test_a_missed_evening_says_what_needs_it():
    """Flush heads says that it needs the two pages of evening two."""
    course = evening_course()
    words = [str(row) for row in course.evening(2).missed]
    assert any("Flush heads needs" in line and "Depth, diameter, travel" in line for line in words)
    assert any(line.startswith("costs: 62 minutes") for line in words)


def test_a_missed_cut_is_made_up_with_the_instructor():
    """Nobody makes up a cut alone."""
    words = str(evening_course().evening(4).missed)
    assert "with the instructor beside" in words
    assert "no cut alone" in words


OWN = package_text("evenings.toml")


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda text: text.replace("format = 1", "format = 2"), "format is not known"),
        (lambda text: "format = 1\n", "no list of evenings"),
        (lambda text: text.replace("here = 40", 'here = "long"'), "no minutes"),
        (lambda text: text.replace("here = 40", "hear = 40"), "no such name is known"),
        (lambda text: text.replace('part = "first"', 'part = "half"'), "no part of a page"),
        (lambda text: text.replace("shown_minutes = 35", "shown_minutes = 90"), "more than it has"),
        (lambda text: text.replace("again = 6\n", ""), "something is not said"),
        (lambda text: text.replace('form = "eight"', 'form = "nine"', 1), "form is not known"),
        (lambda text: text.replace('title = "The triangle"', "title = 3"), "no text"),
        (lambda text: text + "\n[[evening", "cannot be read"),
    ],
)
def test_a_list_of_ones_own_with_a_fault_is_refused_in_a_sentence(workbook, change, said):
    """The sentence names the file and the place; the package's own plan is not shown instead."""
    (workbook / "shop" / "evenings.toml").write_text(change(OWN), encoding="utf-8")
    with pytest.raises(SeatworkError, match=said):
        evening_course(folder=workbook)


def test_there_is_no_ninth_evening_and_no_form_of_five():
    """What is not there is asked about, with what is."""
    with pytest.raises(SeatworkError, match="say 1 to 8"):
        evening_course().evening(9)
    with pytest.raises(SeatworkError, match="say eight or four"):
        evening_course("five")
