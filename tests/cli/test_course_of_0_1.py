"""A course folder written by version 0.1.0 is marked, told and decided on as it was then.

What is expected was written by that version: see tests/data/course_0_1/README.md.
"""

import csv
import json
import re
import shutil
from collections.abc import Iterable
from html import unescape
from pathlib import Path
from typing import Any

import pytest
from seatwork.record import open_record, results
from seatwork.record.tables import override
from sqlalchemy import select

pytestmark = pytest.mark.slow
KEPT = Path(__file__).parents[1] / "data" / "course_0_1"
GIVEN_BY_HAND = "Your instructor gave the points for this question."


def marks(path: Path) -> list[dict[str, str]]:
    """Read the marks of a sheet; where a paper lay is no part of them."""
    with path.open(encoding="utf-8-sig", newline="") as file:
        return [{key: row[key] for key in row if key != "file"} for row in csv.DictReader(file)]


def questions(folder: Path) -> dict[str, Any]:
    """Return what the results say of each question, by learner."""
    if (folder / "record.db").exists():
        record = open_record(folder)
        held = results(record, "cones", "2026-03-04")
        record.close()
    else:
        held = json.loads((folder / "cones-results.json").read_text(encoding="utf-8"))
    keys = ("id", "points", "of", "typed", "verdicts", "slips")
    return {
        paper["learner"]: [{key: one[key] for key in keys} for one in paper["questions"]]
        for paper in held["files"]
    }


def sentences(page: Path) -> list[str]:
    """Return what a feedback page says, without its form."""
    body = page.read_text(encoding="utf-8").partition("<body>")[2]
    said = [line.strip() for line in re.sub(r"<[^>]+>", "\n", body).splitlines()]
    return [unescape(line) for line in said if line]


def lasting(lines: Iterable[str]) -> list[str]:
    """Return the lines without the words of slips and without the workings."""
    said = (line.replace("Not answered yet.", "No answer yet.") for line in lines)
    kept = [line.partition("Not yet.")[0] for line in said if " = " not in line]
    numbers = [re.findall(r"\d*\.?\d+", line) for line in kept]
    return [
        "; ".join(found) if len(found) > 3 else line
        for line, found in zip(kept, numbers, strict=True)
    ]


@pytest.fixture
def course(tmp_path: Path) -> Path:
    """Give a copy of the course, where a learner handed in and a paper was typed back."""
    shutil.copytree(KEPT, tmp_path, dirs_exist_ok=True)
    (tmp_path / "course" / "course.key").chmod(0o600)  # git keeps no more than who may run a file
    return tmp_path / "course"


def test_marking_again_changes_no_mark(course: Path, run) -> None:
    """Points, states, notes and what is said of each question stay as they were written."""
    before = questions(course)
    done = run("mark", "cones", "handed_in", "answers.csv", "--day", "2026-03-03")
    assert done.code == 0, done.out
    assert "papers in the marks now: 3." in done.out
    assert marks(course / "cones-marks.csv") == marks(KEPT / "course" / "cones-marks.csv")
    assert questions(course) == before


def test_marking_without_the_results_gives_the_first_marks(course: Path, run) -> None:
    """From what was handed out and handed in alone come the marks of the first marking."""
    for name in ("cones-results.json", "cones-marks.csv", "overrides.csv"):
        (course / name).unlink()
    done = run("mark", "cones", "handed_in", "answers.csv", "--day", "2026-03-02")
    assert done.code == 0, done.out
    assert marks(course / "cones-marks.csv") == marks(KEPT / "marks_first.csv")


def test_the_feedback_says_the_same(course: Path, run) -> None:
    """Each learner reads what 0.1.0 said, and now also whose points a decision gave.

    What a slip is called, how a question is put and how an answer is worked out is worded anew
    since; the numbers of a question are the same.
    """
    shutil.rmtree(course / "feedback")
    run("mark", "cones", "handed_in", "answers.csv", "--day", "2026-03-03", "--feedback")
    for page in sorted((KEPT / "course" / "feedback").glob("*.html")):
        now = sentences(course / "feedback" / page.name)
        by_hand = page.name.startswith("L05")
        assert (GIVEN_BY_HAND in now) == by_hand
        assert lasting(line for line in now if line != GIVEN_BY_HAND) == lasting(sentences(page))


def test_a_decision_stands_beside_the_former_one(course: Path, run) -> None:
    """A later decision on the same question counts, and the former stays written down."""
    done = run("override", "cones", "L05", "c2", "2", "the drawing shows it", "--day", "2026-03-04")
    assert done.code == 0, done.out
    points = {row["learner"]: row["points"] for row in marks(course / "cones-marks.csv")}
    assert points == {"L01": "6.0", "L05": "6.0", "L08": "6.0"}
    record = open_record(course)
    with record.reading() as connection:
        reasons = set(connection.execute(select(override.c.reason)).scalars())
    record.close()
    assert reasons == {"the working is right, the last step slipped", "the drawing shows it"}


def test_the_slips_of_the_class_are_counted_as_they_were(course: Path, run) -> None:
    """M01 in two papers and M02 in one, as 0.1.0 counted them."""
    done = run("slips", "cones")
    assert "M01: 2 learners, question c1" in done.out
    assert "M02: 1 learner, question c2" in done.out
