"""The sheet that asks where to begin sends each missed question to its lesson."""

import re
import tomllib
from pathlib import Path

import nbformat
import pytest
from seatwork import opening, worksheet
from seatwork.errors import SeatworkError
from seatwork.marking import sheets
from seatwork.shop.folder import package_text

HOME = opening.source()
ANSWERS = {
    "q1": "1-3/8", "q2": ("b", "b"), "q3": ".131 in", "q4": (".016 in", ".026 in"),
    "q5": ("8", ".344 in", ".635 in", "82"), "q6": "502", "q7": ".640 in", "q8": "e c b d f a",
}  # fmt: skip
"""Worked on paper from the questions of learner L00; exercises/worked/placement.ipynb."""

SHEET = 'format = 1\n[[questions]]\nid = "c1"\ntype = "seat-depth"\n'


def answered(**changed: object) -> str:
    """Answer the sheet, with some answers changed, and give what its end says."""
    sheet = worksheet.model_sheet("placement")
    for name, answer in (ANSWERS | changed).items():
        if answer:
            sheet.ask(name, answer=answer)
    return repr(sheet.finish())


def test_eight_questions_each_lead_to_a_lesson_in_the_order_of_the_course() -> None:
    """Eight items, eight lessons, none twice, first lesson first."""
    lessons = [item.lesson for item in sheets.load("placement").items]
    assert len(lessons) == 8
    assert all(lessons)
    assert lessons == sorted(set(lessons))


def test_the_titles_are_those_of_the_lessons() -> None:
    """The file of contents lists each lesson under the title that the sheet shows."""
    listed = tomllib.loads(package_text("contents.toml"))["page"]
    titles = {page["file"]: page["title"] for page in listed}
    for item in sheets.load("placement").items:
        assert titles[item.lesson] == item.start


def test_all_right_leads_to_the_last_lesson() -> None:
    """Who misses nothing is sent to the whole part."""
    said = answered()
    assert said.count(": right (lesson") == 8
    assert said.endswith("the whole part, and look back as you need.")


@pytest.mark.parametrize(("missed", "lesson"), [("q2", "02, Which angle"), ("q8", "11, Spot")])
def test_a_missed_question_leads_to_its_lesson(missed: str, lesson: str) -> None:
    """A wrong answer ends in the lesson that teaches it, not in an error."""
    said = answered(**{missed: ("a", "a") if missed == "q2" else "b a c e d"})
    assert f"{missed}: missed (lesson {lesson}" in said
    assert f"Begin with lesson {lesson}" in said


def test_the_first_of_several_comes_first_and_blanks_count() -> None:
    """What is left empty is no disgrace: its lesson is the place to begin."""
    said = answered(q3="", q7="1 in")
    assert "q3: left empty (lesson 03" in said
    assert "q7: missed (lesson 10" in said
    assert said.endswith("Begin with lesson 03, Depth, diameter, travel.")


def test_the_table_links_the_lessons_from_where_the_notebook_stands(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Links are relative, so they work in a workbook anywhere."""
    monkeypatch.chdir(HOME / "exercises")
    table = worksheet.model_sheet("placement").finish()._repr_mimebundle_()["text/markdown"]
    assert "| [02, Which angle?](../notebooks/02_angle_standards.ipynb) |" in table
    assert "\n\n**Begin with lesson 01, Seats and their screws.**" in table


def test_the_notebook_names_the_lesson_below_each_question() -> None:
    """A reader without the last cell finds the way too: number and title below the question."""
    cells = nbformat.read(HOME / "exercises" / "placement.ipynb", as_version=4).cells
    for item in sheets.load("placement").items:
        (at,) = [n for n, cell in enumerate(cells) if cell.source == f'sheet.ask("{item.id}")']
        told = re.sub(r"\[|\]\([^)]*\)", "", cells[at + 1].source)
        assert f"Start at lesson {item.lesson[:2]}: {item.start}" in told


@pytest.mark.parametrize("more", ['lesson = "02_angle_standards"', 'lesson = "../x"\nstart = "X"'])
def test_half_a_lesson_or_a_path_is_refused(tmp_path: Path, more: str) -> None:
    """A lesson needs its file name and its title; a path is none."""
    path = tmp_path / "own.toml"
    path.write_text(SHEET + more, encoding="utf-8")
    with pytest.raises(SeatworkError, match="half a lesson"):
        sheets.read(path)
