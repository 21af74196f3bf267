"""From roster to marks in the terminal, as an instructor does it."""

import csv
import subprocess
import sys
from pathlib import Path

import pytest
from seatwork.marking import AnswerFile, examples, sheets
from seatwork.record import forms, hand_out

from tests.as_saved import as_saved

pytestmark = pytest.mark.slow


def seatwork(folder: Path, *words: str) -> subprocess.CompletedProcess[str]:
    """Run a command in a folder."""
    return subprocess.run(
        [sys.executable, "-m", "seatwork.cli", *words],
        capture_output=True,
        text=True,
        cwd=folder,
        timeout=120,
        check=False,
    )


def test_a_class_is_marked_from_the_terminal(tmp_path: Path) -> None:
    """Roster, hand-out, marks with feedback, why, override, and marks again."""
    assert seatwork(tmp_path, "roster", "new", "2").returncode == 0
    done = seatwork(tmp_path, "hand-out", "counterbores", "--mode", "graded")
    assert done.returncode == 0, done.stderr
    given, sheet = forms(tmp_path / "course"), sheets.load("counterbores")
    learner = min(given.sheets["counterbores"])
    form = given.form("counterbores", learner, 1)
    assert form is not None
    stack = (form.sizes["b3"]["height"] + form.sizes["b3"]["washer"]) / 25.4
    file = AnswerFile(learner=learner, sheet="counterbores", form=1)
    as_saved(tmp_path / "course", file.changed("b3", parts=(f"{stack:.3f}",))).save(tmp_path / "in")
    done = seatwork(tmp_path, "mark", "counterbores", "in", "--feedback", "--day", "2026-03-02")
    assert done.returncode == 0, done.stderr
    rows = list(csv.DictReader((tmp_path / "course" / "counterbores-marks.csv").open()))
    assert [(row["learner"], row["points"], row["state"]) for row in rows] == [
        (learner, "0.0", "marked")
    ]
    page = (tmp_path / "course" / "feedback" / f"{learner}-counterbores-1.html").read_text()
    assert "[M23]" not in page
    assert "M23" in seatwork(tmp_path, "why", "counterbores", learner, "b3", f"{stack:.3f}").stdout
    words = ("override", "counterbores", learner, "b3", "1", "said it right aloud")
    assert seatwork(tmp_path, *words).returncode == 0
    done = seatwork(tmp_path, "mark", "counterbores", "in", "--day", "2026-03-03")
    assert "1 known already, 0 changed" in done.stdout
    rows = list(csv.DictReader((tmp_path / "course" / "counterbores-marks.csv").open()))
    assert rows[0]["points"] == "1.0"
    assert sheet.points > 10


def test_a_mistake_in_a_command_is_one_sentence(tmp_path: Path) -> None:
    """No roster, no such sheet, no such folder: what would do is said, without a traceback."""
    for words, said in (
        (("hand-out", "cones"), "roster new"),
        (("hand-out", "nothing"), "no such sheet"),
        (("mark", "cones", "nowhere"), "course key"),
        (("check", "nothing.ipynb"), "no such notebook"),
    ):
        done = seatwork(tmp_path, *words)
        assert done.returncode == 1
        assert said in done.stderr + done.stdout
        assert "Traceback" not in done.stderr


def test_the_slips_of_a_class_are_counted(tmp_path: Path) -> None:
    """The most frequent slip first, learners only if asked for; not before it is marked."""
    course = examples.make_course(tmp_path / "course")
    sheet = sheets.load("cones")
    hand_out(course, sheet, examples.CLASS)
    done = seatwork(tmp_path, "slips", "cones")
    assert done.returncode == 1
    assert "not marked yet" in done.stderr
    answers = examples.answer(course, sheet, forms(course))
    assert seatwork(tmp_path, "mark", "cones", str(answers)).returncode == 0
    done = seatwork(tmp_path, "slips", "cones")
    assert done.stdout.startswith("M01: 4 learners, question c1: You used the whole angle")
    assert "L01" not in done.stdout
    assert done.stdout.endswith("Wrong for no known reason: 1.\n")  # times 1.37 in the class
    done = seatwork(tmp_path, "slips", "cones", "--learners")
    assert "(L01 L05 L07 L12)" in done.stdout
    assert "To ask: L09 c1." in done.stdout


def test_screen_and_paper_are_marked_in_one_go(tmp_path: Path) -> None:
    """Answer files of a folder and a CSV typed from paper stand in one table of marks."""
    course, sheet = examples.make_course(tmp_path / "course"), sheets.load("cones")
    hand_out(course, sheet, examples.CLASS)
    typed = examples.answer(course, sheet, forms(course)).read_text(encoding="utf-8").splitlines()
    paper = [line for line in typed if not line.startswith("L07")]
    (tmp_path / "typed.csv").write_text("\n".join(paper), encoding="utf-8")
    file = AnswerFile(learner="L07", sheet="cones", form=1)
    as_saved(course, file.changed("c1", parts=(".1",))).save(tmp_path / "in")
    done = seatwork(tmp_path, "mark", "cones", "in", "typed.csv")
    assert "12 files, 12 marked" in done.stdout
    with (course / "cones-marks.csv").open(encoding="utf-8") as marks:
        learners = [row["learner"] for row in csv.DictReader(marks)]
    assert sorted(learners) == list(examples.CLASS)
