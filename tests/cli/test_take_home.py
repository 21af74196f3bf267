"""Pages taken home from the terminal: one a learner, and a sentence where there is none."""

from pathlib import Path

import pytest
from seatwork.cli.program import app
from seatwork.marking import examples
from seatwork.record import hand_out
from typer.testing import CliRunner

pytestmark = pytest.mark.slow
SHEET = "angles"


@pytest.fixture
def course(tmp_path: Path) -> Path:
    """Hand one sheet out to two learners."""
    folder = examples.make_course(tmp_path / "course")
    hand_out(folder, SHEET, ["L01", "L02"], mode="graded", day="2026-09-07")
    return folder


def taken(course: Path, *words: str):
    """Write pages of the sheet into a folder beside the course."""
    to = ("--to", str(course.parent / "pages"), "--course", str(course))
    return CliRunner().invoke(app, ["take-home", *words, *to])


def test_each_learner_gets_a_page(course: Path) -> None:
    """Plain pages need no Python; the learner's code is in the name, no name of a person."""
    done = taken(course, SHEET, "--plain")
    assert done.exit_code == 0, done.output
    written = sorted((course.parent / "pages").iterdir())
    assert [path.name.partition("-")[0] for path in written] == ["L01", "L02"]
    assert "2 pages in" in done.output


def test_one_learner_alone(course: Path) -> None:
    """The others' pages are not written."""
    assert taken(course, SHEET, "--plain", "--only", "L02").exit_code == 0
    assert [path.name[:3] for path in (course.parent / "pages").iterdir()] == ["L02"]


@pytest.mark.parametrize(
    ("words", "said"),
    [((SHEET, "--plain", "--only", "L99"), "L99"), (("no_such_page", "--plain"), "no_such_page")],
)
def test_what_is_not_there_is_said(course: Path, words: tuple[str, ...], said: str) -> None:
    """A learner without a form, and a name of no page: told, and nothing is written."""
    done = taken(course, *words)
    assert done.exit_code != 0
    assert said in done.output + str(done.exception)
    assert not list((course.parent / "pages").glob("*.html"))


def test_a_file_that_is_no_python_is_told(course: Path, tmp_path: Path) -> None:
    """A lesson is not written with what was given in Python's place."""
    given = tmp_path / "given.tgz"
    given.write_bytes(b"no archive")
    done = taken(course, "02_angle_standards", "--python", str(given))
    assert done.exit_code != 0
    assert "given.tgz" in done.output + str(done.exception)
