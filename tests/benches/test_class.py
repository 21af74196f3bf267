"""The class to press a cell of: places in words, what lies behind each, no name in it."""

from pathlib import Path

import pytest
from seatwork import benches, record
from seatwork.benches.term.class_bench import ClassPicture
from seatwork.errors import SeatworkError
from seatwork.marking import examples, sheets

pytestmark = pytest.mark.slow
DAY = "2026-09-22"


@pytest.fixture(scope="module")
def course(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Give the course of the made-up class with cones handed out and marked."""
    folder = examples.make_course(tmp_path_factory.mktemp("term") / "course")
    plan = sheets.load("cones")
    record.hand_out(folder, plan, examples.CLASS, mode="graded", day="2026-09-14")
    paper = examples.answer(folder, plan, record.forms(folder))
    record.mark(folder, plan, paper, day="2026-09-21")
    record.hand_out(folder, "angles", ["L01"], day="2026-09-21")
    return folder


@pytest.fixture
def shown(course: Path) -> ClassPicture:
    """Give the class of that course."""
    return benches.class_picture(course, DAY)


def test_each_cell_says_learner_sheet_and_state_in_words(shown: ClassPicture) -> None:
    """The accessible name needs no sign; what was not handed out and parts are no buttons."""
    first, second = shown._grid.grid["rows"][:2]
    # L01 has one slip of four equal parts of the sheet on cones (demo/class.csv): 6 of 8
    assert [cell["label"] for cell in first] == [
        "L01: the report",
        "L01, cones: 75 percent, not yet",
        "L01, angles: handed out",
        "",
        "",
    ]
    assert second[2] == {"text": "", "label": ""}


def test_a_press_shows_the_paper_with_its_slip_and_history(shown: ClassPicture) -> None:
    """L01 used the whole angle in cones (M01 in demo/class.csv): the sentence stands there."""
    shown._press(0, 1)
    paper, history = shown._below.blocks
    assert paper["heading"].startswith("L01, cones, sitting 1: not yet, 6 of 8")
    assert any("whole angle" in cell for row in paper["rows"] for cell in row)
    assert history["heading"] == "History"
    assert shown.chosen == ("L01", "cones")
    assert shown._grid.chosen == [0, 1]


def test_a_press_on_a_code_shows_the_report(shown: ClassPicture) -> None:
    """The report clears nobody."""
    shown._press(4, 0)
    (report,) = shown._below.blocks
    assert report["heading"] == "Report of L05, as of 2026-09-22"
    assert report["rows"][-1][0].startswith("This page clears nobody")


@pytest.mark.parametrize(("row", "column"), [(99, 1), (-1, 0), (0, 3), (0, 9)])
def test_a_press_beside_the_class_changes_nothing(
    shown: ClassPicture, row: int, column: int
) -> None:
    """Whatever a page sends, only cells of the class are looked up."""
    shown._press(row, column)
    assert shown.chosen is None
    assert shown._below.blocks == []


def test_a_press_on_a_cell_without_the_sheet_says_so(shown: ClassPicture) -> None:
    """Nothing chosen before is lost."""
    shown.look("L01", "cones")
    shown._press(1, 2)
    assert "angles was not handed out" in shown._below.blocks[0]["heading"]
    assert shown.chosen == ("L01", "cones")


def test_it_is_read_anew_and_keeps_the_cell(course: Path) -> None:
    """Points that were given since stand in the cell and below it; the text is the picture."""
    shown = benches.class_picture(course, DAY)
    shown.look("L05", "cones")
    kept = record.open_record(course)
    record.override(kept, record.Override("L05", "cones", 1, "c1", 1, "half"), DAY)
    kept.close()
    shown.renew()
    assert "5 of 8" in shown._below.blocks[0]["heading"]
    assert str(shown) == str(shown.picture)
    assert repr(shown.view) == str(shown.picture)


def test_without_a_record_it_says_what_is_missing(tmp_path: Path) -> None:
    """And makes nothing."""
    with pytest.raises(SeatworkError, match="no sheet was handed out here"):
        benches.class_picture(tmp_path / "course")
    assert list(tmp_path.iterdir()) == []
