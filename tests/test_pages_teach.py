"""The order of the course: taught before asked, met again later, and no code to be afraid of."""

import re
import sys
from pathlib import Path

import pytest
from seatwork.marking import sheets

sys.path.insert(0, str(Path(__file__).parent))
import page_measures as measured  # beside this file, on no path of its own

pytestmark = pytest.mark.slow

HOME = measured.HOME
NUMBER = re.compile(r"\b[Ll]essons? \d", re.ASCII)
TEXTS = [
    HOME / "README.md",
    *(HOME / "toolkit" / "seatwork" / "shop" / "defaults").glob("*.toml"),
    *(HOME / "exercises" / "sheets").rglob("*.toml"),
]
PAGES = [*sorted((HOME / "notebooks").glob("*.ipynb")), *measured.SHEETS]
MOST_SHARED = {"mixed_test": 1 / 3}
ONE_SKILL = ("reads_the_print", "whole_part")
"""Sheets that are about one thing: reading a note, and one part from end to end."""


@pytest.mark.parametrize("path", PAGES, ids=[path.stem for path in PAGES])
def test_pages_are_named_by_title(path: Path) -> None:
    """No page calls another by its number: numbers change, titles stay."""
    assert [
        cell.source for cell in measured.cells(path) if NUMBER.search(measured.told(cell))
    ] == []


@pytest.mark.parametrize("path", TEXTS, ids=[path.name for path in TEXTS])
def test_texts_name_pages_by_title(path: Path) -> None:
    """README, sheets and the words of the package call no page by its number."""
    assert NUMBER.findall(path.read_text(encoding="utf-8")) == []


def test_what_is_asked_was_taught() -> None:
    """Each question of a lesson has its sum told in words there or on a page before."""
    assert measured.untaught() == []


def test_the_words_that_teach_stand_on_their_page() -> None:
    """The list of what is taught where holds words that the page really says."""
    assert measured.words_missing() == []


def test_a_skill_comes_back() -> None:
    """From the fifth page on, one question of four was taught two or more lessons before."""
    assert {page: share for page, share in measured.spaced().items() if share < 0.25} == {}


def test_no_page_asks_the_same_numbers() -> None:
    """No two pages ask one question with the same numbers."""
    assert measured.same_numbers() == []


def test_neighbors_on_a_sheet_differ() -> None:
    """At most half of the neighbors share a code of the outline; in a test one third."""
    crowded = {
        sheet: (shared, of)
        for sheet, (shared, of) in measured.interleaved().items()
        if sheet not in ONE_SKILL and shared > of * MOST_SHARED.get(sheet, 1 / 2)
    }
    assert crowded == {}


@pytest.mark.parametrize("path", measured.SHEETS, ids=[path.stem for path in measured.SHEETS])
def test_a_sheet_names_the_lessons_it_needs(path: Path) -> None:
    """A worksheet that needs lessons links those that teach its questions, and no others."""
    named, taught = measured.needs(path), set(measured.lessons_of(path.stem))
    if path.stem in ("mixed_test", "placement"):  # the first asks all, the second asks where
        assert not named
    elif path.stem == "whole_part":
        assert taught <= named
    else:
        assert named == taught


def test_every_question_of_a_lesson_is_on_its_own_sheet() -> None:
    """A lesson asks from the sheet of its own name, and all of it."""
    for one in measured.asked():
        assert one.sheet == one.page
    for path in (sheets.folder() / sheets.LESSONS).glob("*.toml"):
        names = [one.name for one in measured.asked() if one.page == path.stem]
        assert names == [item.id for item in sheets.load(path.stem).items], path.stem


def test_code_is_one_line_a_cell() -> None:
    """On a page or a sheet for learners no cell has more than one line of code."""
    assert measured.multi_line_cells([*measured.LEARNERS, *measured.SHEETS]) == []


def test_no_setting_is_called_by_name() -> None:
    """No name of a setting stands on a learner's page."""
    assert measured.setting_names([*measured.LEARNERS, *measured.SHEETS]) == []


def test_a_thing_has_one_word() -> None:
    """The house word stands everywhere, and none of the words of before."""
    assert measured.refused_words([*measured.LEARNERS, *measured.SHEETS]) == []
