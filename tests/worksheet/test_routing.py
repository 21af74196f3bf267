"""The sheet that asks where to begin sends each missed question to its lesson."""

import ast
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
PAGE = HOME / "exercises" / "worked" / "placement.ipynb"
ANSWERS = {
    found[1]: ast.literal_eval(found[2])
    for cell in nbformat.read(PAGE, as_version=4).cells
    if (found := re.fullmatch(r'sheet\.ask\("(\w+)", answer=(.*)\)', cell.source, re.DOTALL))
}
"""The answers of the worked sheet, which nbval holds against the questions of learner L00."""

SHEET = 'format = 1\n[[questions]]\nid = "c1"\ntype = "seat-depth"\n'


def answered(**changed: object) -> str:
    """Answer the sheet, with some answers changed, and give what its end says."""
    sheet = worksheet.model_sheet("placement")
    for name, answer in (ANSWERS | changed).items():
        if answer:
            sheet.ask(name, answer=answer)
    return repr(sheet.finish())


def test_ten_questions_each_lead_to_a_lesson_in_the_order_of_the_course() -> None:
    """Ten items, ten lessons, none twice, first lesson first."""
    lessons = [item.lesson for item in sheets.load("placement").items]
    assert len(lessons) == 10
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
    assert said.count(": right (") == 10
    assert said.endswith("the whole part, and look back as you need.")


@pytest.mark.parametrize(
    ("missed", "lesson"), [("q2", "Which angle?"), ("q8", "Spot facing on castings")]
)
def test_a_missed_question_leads_to_its_lesson(missed: str, lesson: str) -> None:
    """A wrong answer ends in the lesson that teaches it, not in an error."""
    said = answered(**{missed: ("a", "a") if missed == "q2" else "b a c e d"})
    assert f"{missed}: missed ({lesson})" in said
    assert "Begin with " + lesson.rstrip("?") in said


def test_the_first_of_several_comes_first_and_blanks_count() -> None:
    """What is left empty is no disgrace: its lesson is the place to begin."""
    said = answered(q3="", q7="1 in")
    assert "q3: left empty (Depth, diameter, travel)" in said
    assert "q7: missed (Counterbores and pilots)" in said
    assert said.endswith("Begin with Depth, diameter, travel.")


def test_the_table_links_the_lessons_from_where_the_notebook_stands(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Links are relative, so they work in a workbook anywhere."""
    monkeypatch.chdir(HOME / "exercises")
    table = worksheet.model_sheet("placement").finish()._repr_mimebundle_()["text/markdown"]
    assert "| [Which angle?](../notebooks/02_angle_standards.ipynb) |" in table
    assert "\n\n**Begin with Seats and their screws.**" in table


def test_the_notebook_names_the_lesson_below_each_question() -> None:
    """A reader without the last cell finds the way too: the title stands below the question."""
    cells = nbformat.read(HOME / "exercises" / "placement.ipynb", as_version=4).cells
    for item in sheets.load("placement").items:
        (at,) = [n for n, cell in enumerate(cells) if cell.source == f'sheet.ask("{item.id}")']
        told = re.sub(r"\[|\]\([^)]*\)", "", cells[at + 1].source)
        assert f"Start at {item.start}" in told


@pytest.mark.parametrize("more", ['lesson = "02_angle_standards"', 'lesson = "../x"\nstart = "X"'])
def test_half_a_lesson_or_a_path_is_refused(tmp_path: Path, more: str) -> None:
    """A lesson needs its file name and its title; a path is none."""
    path = tmp_path / "own.toml"
    path.write_text(SHEET + more, encoding="utf-8")
    with pytest.raises(SeatworkError, match="half a lesson"):
        sheets.read(path)
