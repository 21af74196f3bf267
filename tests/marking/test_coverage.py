"""The report of coverage is honest: what is listed is there, and what is missing is said."""

import tomllib
from pathlib import Path

import pytest
from seatwork import opening
from seatwork.errors import SeatworkError
from seatwork.marking.outline import Coverage, coverage
from seatwork.questions.checking.template import own_type
from seatwork.shop.folder import package_text

HOME = opening.source()
OUTLINE = "code,competency\nA1,Cut a cone\nA2,Sing a song\n"


@pytest.fixture
def workbook(tmp_path: Path) -> Path:
    """Deliver a workbook."""
    return opening.deliver(tmp_path / "w").folder


def changed(workbook: Path, outline: str, serves: str) -> Coverage:
    """Give the workbook lists of its own and report."""
    (workbook / "shop" / "outline.csv").write_text(outline, encoding="utf-8")
    if serves:
        (workbook / "shop" / "coverage.csv").write_text(serves, encoding="utf-8")
    return coverage(workbook)


def test_every_lesson_and_question_type_serves_a_code() -> None:
    """Nothing that is taught or asked stands outside of the outline."""
    assert coverage().unlisted == ()


def test_lessons_that_are_there_are_found_and_the_rest_is_said() -> None:
    """Each listed lesson is either a notebook or among the missing; the start page is neither."""
    pages = tomllib.loads(package_text("contents.toml"))["page"]
    listed = {page["file"] for page in pages if "codes" in page}
    files = {path.stem for path in (HOME / "notebooks").glob("*.ipynb")}
    assert set(coverage().missing) == listed - files
    assert not any("00_" in lesson for one in coverage().codes for lesson in one.lessons)


def test_a_cone_s_depth_is_taught_and_asked() -> None:
    """S4 has lesson 03 and the question on depth, which stands on the first sheet."""
    (found,) = [one for one in coverage().codes if one.code == "S4"]
    assert "03_depth_diameter_travel" in found.lessons
    assert "seat-depth" in found.questions
    assert "cones" in found.sheets
    assert found.gaps == ()


def test_no_code_of_the_course_is_a_gap() -> None:
    """Every code is taught, asked and on a sheet; the care of cutters came last."""
    assert [one.code for one in coverage().codes if one.gaps] == []
    (found,) = [one for one in coverage().codes if one.code == "T2"]
    assert "cutter-care" in found.questions


def test_a_code_without_questions_is_a_gap(workbook: Path) -> None:
    """What a lesson teaches and no question asks is said to be missing."""
    serves = "kind,name,codes\nlesson,02_angle_standards,A1\nquestion,seat-depth,A2\n"
    first = changed(workbook, OUTLINE, serves).codes[0]
    assert "no question" in first.gaps
    assert "no lesson" not in first.gaps


def test_an_outline_can_be_changed_and_its_codes_served(workbook: Path) -> None:
    """The instructor's own outline counts, with what a list of their own says serves it."""
    serves = "kind,name,codes\nlesson,02_angle_standards,A1\nquestion,seat-depth,A1; A2\n"
    found = changed(workbook, OUTLINE, serves)
    first, second = found.codes
    assert (first.code, first.lessons, first.questions) == (
        "A1", ("02_angle_standards",), ("seat-depth",),
    )  # fmt: skip
    assert second.gaps == ("no lesson",)
    assert "seat-diameter" in found.unlisted
    assert "03_depth_diameter_travel" in found.unlisted


def test_an_own_outline_is_taken_as_it_is(workbook: Path) -> None:
    """Its codes are listed though nothing meets them; other columns, blank words, codes twice stay.

    The codes that the lessons and questions of the package serve are named, not refused.
    """
    outline = "Hours;code;competency\n2;7.1;Drill\n;7.1;Ream\n4;7/B;\n"
    found = changed(workbook, outline, "")
    assert [(one.code, one.competency) for one in found.codes] == [
        ("7.1", "Drill; Ream"),
        ("7/B", ""),
    ]
    assert all(one.gaps == ("no lesson", "no question") for one in found.codes)
    assert {"seat-depth", "14_the_whole_part"} <= set(found.unlisted)
    assert {"S4", "H1"} <= set(found.unknown)


def test_one_row_of_an_own_list_changes_one_thing(workbook: Path) -> None:
    """What the list does not name serves what it served, and a code nobody knows is named."""
    before = coverage(workbook)
    (workbook / "shop" / "coverage.csv").write_text("kind,name,codes\nquestion,seat-depth,Z9\n")
    after = coverage(workbook)
    assert after.unknown == ("Z9",)
    assert after.unlisted == ("seat-depth",)
    changes = [old.code for old, new in zip(before.codes, after.codes, strict=True) if old != new]
    assert changes == ["S4"]


def test_a_question_that_no_sheet_asks_is_a_gap(workbook: Path) -> None:
    """A question type is of no use to a class until it stands on a sheet."""
    for path in (workbook / "exercises" / "sheets").glob("*.toml"):
        if path.stem != "cones":
            path.unlink()
    found = changed(workbook, OUTLINE, "kind,name,codes\nquestion,two-balls,A1\n")
    assert found.codes[0].gaps == ("no lesson", "on no sheet")


@pytest.mark.slow
def test_an_instructor_s_own_question_type_is_counted(workbook: Path) -> None:
    """A type in the workbook's questions folder is there, and unlisted until it has a code."""
    (workbook / "questions").mkdir(exist_ok=True)
    (workbook / "questions" / "own.py").write_text(own_type("own"), encoding="utf-8")
    before = set(coverage().unlisted)
    assert len(set(coverage(workbook).unlisted) - before) == 1


@pytest.mark.parametrize(
    ("outline", "serves", "place", "fault"),
    [
        (OUTLINE, "kind,name,codes\npoem,x,A1\n", "coverage.csv, row 2", "not a known word"),
        (OUTLINE, "kind,name,codes\nlesson,x,A1\nlesson,x,A2\n", "row 3", "stands in row 2 too"),
        ("code,competency\n,Cut\n", "kind,name,codes\n", "outline.csv, row 2", "blank"),
        ("code\nA1\n", "kind,name,codes\n", "outline.csv, row 1", "heading is missing"),
    ],
)
def test_a_spoiled_list_is_told_with_file_and_row(
    workbook: Path, outline: str, serves: str, place: str, fault: str
) -> None:
    """File, row and fault are in one sentence."""
    with pytest.raises(SeatworkError) as told:
        changed(workbook, outline, serves)
    assert place in str(told.value)
    assert fault in str(told.value)
