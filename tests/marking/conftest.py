"""A course with one small sheet, and answer files as learners hand them in."""

from collections.abc import Callable
from pathlib import Path

import pytest
from seatwork import files
from seatwork.marking import Answer, AnswerFile, Handout, Sheet, course, examples, sheets
from seatwork.record import hand_out

LEARNERS = ("L01", "L02", "L03", "L04")


@pytest.fixture
def sheet(tmp_path: Path) -> Sheet:
    """Give a sheet of three questions worth 2, 1 and 4 points."""
    path = tmp_path / "sheets" / "small.toml"
    path.parent.mkdir()
    path.write_text(
        'format = 1\ntitle = "Small"\nmode = "graded"\n'
        '[[questions]]\nid = "q1"\ntype = "seat-depth"\npoints = 2\n'
        '[[questions]]\nid = "q2"\ntype = "bore-depth"\npoints = 1\n'
        '[[questions]]\nid = "q3"\ntype = "standing"\npoints = 4\n',
        encoding="utf-8",
    )
    return sheets.read(path)


@pytest.fixture
def course_folder(tmp_path: Path) -> Path:
    """Give an empty folder for the instructor."""
    folder = tmp_path / "course"
    folder.mkdir()
    return folder


@pytest.fixture
def handouts(course_folder: Path, sheet: Sheet) -> dict[str, Handout]:
    """Hand the sheet out to four learners; the course key is fixed, and so are the numbers."""
    key = examples.KEY.hex() + "\n"
    files.write(course_folder / course.KEY_FILE, key, mode=files.PRIVATE)
    course_folder.chmod(files.PRIVATE_FOLDER)
    given = hand_out(course_folder, sheet, LEARNERS)
    return {one.given.learner: one for one in given}


@pytest.fixture
def handed_in(tmp_path: Path) -> Path:
    """Give the folder of what is handed in."""
    folder = tmp_path / "in"
    folder.mkdir()
    return folder


@pytest.fixture
def right_file(handouts: dict[str, Handout]) -> Callable[[str], AnswerFile]:
    """Give a function that answers everything right for a learner."""

    def answered(learner: str) -> AnswerFile:
        one = handouts[learner]
        answers = {
            name: Answer(
                parts=tuple(str(getattr(part, "rounded", part.answer)) for part in question.parts)
            )
            for name, question in one.questions.items()
        }
        return AnswerFile(learner=learner, sheet="small", form=one.given.form, answers=answers)

    return answered
