"""Marking adds: nothing that was marked before is lost, and what is new is told."""

import csv
import json
import sqlite3
import stat
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest
from seatwork.marking import AnswerFile, examples, sheets
from seatwork.marking.text import right_answer
from seatwork.record import forms, hand_out, open_record, results
from seatwork.record.keeping import NAME

from tests.as_saved import sealed

pytestmark = pytest.mark.slow
LEARNERS = ("L01", "L02", "L03", "L04", "L05")


@pytest.fixture
def course(tmp_path: Path) -> Path:
    """Give a course that handed the sheet cones out."""
    folder = examples.make_course(tmp_path / "course")
    hand_out(folder, sheets.load("cones"), examples.CLASS)
    return folder


def paper(course: Path, learner: str, **typed: str) -> AnswerFile:
    """Answer everything right but what is given."""
    sheet = sheets.load("cones")
    form = forms(course).form("cones", learner, 1)
    assert form is not None
    file = AnswerFile(learner=learner, sheet="cones", form=1)
    for name, question in form.questions(sheet).items():
        parts = tuple(right_answer(part) for part in question.parts)
        file = file.changed(name, parts=(typed[name],) if name in typed else parts)
    return sealed(file, form)


def marks(course: Path) -> dict[str, dict[str, str]]:
    """Read the marks, by learner."""
    with (course / "cones-marks.csv").open(encoding="utf-8-sig", newline="") as file:
        return {row["learner"] or row["file"]: row for row in csv.DictReader(file)}


def points(course: Path) -> dict[str, str]:
    """Read the points, by learner."""
    return {learner: row["points"] for learner, row in marks(course).items()}


def standing(course: Path) -> dict[str, Any]:
    """Return what stands of the sheet in the record."""
    kept = open_record(course)
    found = results(kept, "cones", "2031-01-01")
    kept.close()
    return found


@pytest.fixture
def marked(course: Path, tmp_path: Path, run) -> dict[str, str]:
    """Mark five papers, one with a slip; give their points."""
    for learner in LEARNERS:
        paper(course, learner, **({"c1": ".001"} if learner == "L02" else {})).save(tmp_path / "in")
    done = run("mark", "cones", "in")
    assert "5 new, 0 known already, 0 changed; papers in the marks now: 5." in done.out
    return points(course)


def test_one_late_paper_adds_to_the_marks(course, tmp_path, run, marked) -> None:
    """Five papers stay as they were marked, and the sixth stands beside them."""
    paper(course, "L06").save(tmp_path / "late")
    done = run("mark", "cones", "late")
    assert "1 new, 0 known already, 0 changed; papers in the marks now: 6." in done.out
    now = points(course)
    assert {learner: now[learner] for learner in LEARNERS} == marked
    assert now["L06"] == marked["L01"]
    kept = standing(course)
    assert [one["learner"] for one in kept["files"]] == [*LEARNERS, "L06"]


def test_the_pass_mark_of_the_sheet_is_held_against_the_papers(course, tmp_path, run) -> None:
    """One paper is right, one has half of the points and misses 80 %, one waits for a person."""
    paper(course, "L01").save(tmp_path / "in")
    paper(course, "L02", c1=".001", c2=".001").save(tmp_path / "in")
    paper(course, "L03", c1="oct 5").save(tmp_path / "in")
    assert "pass mark 80%: reached by 1 of 2 papers." in run("mark", "cones", "in").out


def test_the_same_folder_again_changes_nothing(course, tmp_path, run, marked) -> None:
    """Papers marked before are known, and the record is the same to the byte."""
    before, kept = (course / NAME).read_bytes(), standing(course)
    done = run("mark", "cones", "in", "--day", "2031-01-01")
    assert "0 new, 5 known already, 0 changed" in done.out
    assert (course / NAME).read_bytes() == before
    assert standing(course) == kept


def test_a_paper_marked_again_replaces_only_itself(course, tmp_path, run, marked) -> None:
    """A mended paper changes its own marks, and old and new are told."""
    paper(course, "L02").save(tmp_path / "second")
    done = run("mark", "cones", "second")
    assert "0 new, 0 known already, 1 changed; papers in the marks now: 5." in done.out
    assert "changed: L02, form 1, c1: 0 before" in done.out
    assert "L02, form 1 has other answers than the paper marked before" in done.out
    now = points(course)
    assert now.pop("L02") == now["L01"] != marked.pop("L02")
    assert now == marked


def test_a_lost_record_costs_no_marks(course, tmp_path, run, marked) -> None:
    """Without the record nothing is marked or written over, and the way back is told."""
    (course / NAME).unlink()
    done = run("mark", "cones", "in")
    assert done.code == 1
    assert "the record is gone; run: seatwork record bring-back" in done.out
    assert points(course) == marked
    assert not (course / NAME).exists()
    assert run("record", "bring-back").code == 0
    run("mark", "cones", "in")
    assert points(course) == marked


def test_a_damaged_paper_is_settled_by_a_good_one(course, tmp_path, run, marked) -> None:
    """What needed a person goes from the list when the paper is handed in again."""
    (tmp_path / "late").mkdir()
    (tmp_path / "late" / "L06-cones-1.json").write_bytes(b"{")
    assert "needs a person: L06-cones-1.json" in run("mark", "cones", "late").out
    waits = marks(course)["L06"]
    assert (waits["file"], waits["state"]) == ("L06-cones-1.json", "needs a person")
    paper(course, "L06").save(tmp_path / "late")
    run("mark", "cones", "late")
    assert sorted(marks(course)) == [*LEARNERS, "L06"]
    assert marks(course)["L06"]["state"] == "marked"


def test_a_record_changed_by_hand_is_never_written_over(course, tmp_path, run, marked) -> None:
    """One point changed with a database tool stops marking with a way back that works."""
    with closing(sqlite3.connect(course / NAME)) as tool, tool:
        tool.execute("UPDATE answer SET points = 0 WHERE question = 'c2'")
    spoiled = (course / NAME).read_bytes()
    done = run("mark", "cones", "in")
    assert done.code == 1
    assert "was changed by hand" in done.out
    assert "seatwork record bring-back" in done.out
    assert (course / NAME).read_bytes() == spoiled
    assert run("record", "check").code == 1
    assert run("record", "bring-back").code == 0
    run("mark", "cones", "in")
    assert points(course) == marked
    assert run("record", "check").code == 0


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        ("about 0.876", "“about 0.876” cannot be read as one number"),
        ("O.101", "“O.101” cannot be read: a letter O, I or l may stand for a digit"),
        ("5-Aug", "“5-Aug” cannot be read: a spreadsheet may have made a date"),
        ("8/5/2026", "a spreadsheet may have made a date"),
        ("45874", "“45874” may be no number: a spreadsheet may have made a date"),
        ("\u202e931.", "holds characters that cannot be seen"),
        (".1\x0739", "holds characters that cannot be seen"),
    ],
)
def test_what_cannot_be_read_is_no_zero(course, tmp_path, run, typed: str, why: str) -> None:
    """The question needs a person, with what was read and why, and the marks stay blank."""
    paper(course, "L01", c1=typed).save(tmp_path / "in")
    done = run("mark", "cones", "in")
    assert "needs a person: L01-cones-1.json: c1: " in done.out
    assert why in done.out
    assert marks(course)["L01"]["points"] == ""
    assert why in marks(course)["L01"]["note"]


def test_a_blank_is_a_zero(course, tmp_path, run) -> None:
    """What was not answered needs nobody."""
    paper(course, "L01", c1=" ").save(tmp_path / "in")
    run("mark", "cones", "in")
    assert marks(course)["L01"]["state"] == "marked"


def test_half_a_character_is_that_papers_matter(course, tmp_path, run) -> None:
    """A lone surrogate in one answer leaves that paper to a person and marks the rest."""
    for learner in LEARNERS:
        paper(course, learner).save(tmp_path / "in")
    spoiled = tmp_path / "in" / "L03-cones-1.json"
    text = json.loads(spoiled.read_bytes())
    text["answers"]["c1"]["parts"] = ["\ud800"]
    spoiled.write_text(json.dumps(text), encoding="ascii")
    done = run("mark", "cones", "in")
    assert "5 files, 4 marked" in done.out
    assert "L03-cones-1.json: an answer in it holds half a character" in done.out


@pytest.mark.parametrize(
    "name", ["L01-cones-1 (1).json", "L01-cones-1(2).json", "cones (1).json", "cones.json"]
)
def test_a_browsers_copy_is_read(course, tmp_path, run, name: str) -> None:
    """A second download, or one named after the sheet alone, is marked."""
    (tmp_path / "in").mkdir()
    (tmp_path / "in" / name).write_bytes(paper(course, "L01").content())
    assert "1 file, 1 marked" in run("mark", "cones", "in").out


def test_the_same_paper_twice_is_told_and_counts_once(course, tmp_path, run) -> None:
    """Two copies are one paper; they do not need a person."""
    file = paper(course, "L01")
    file.save(tmp_path / "in")
    (tmp_path / "in" / "L01-cones-1 (1).json").write_bytes(file.content())
    done = run("mark", "cones", "in")
    assert "the same paper twice: L01-cones-1.json is the same as L01-cones-1 (1).json" in done.out
    assert "needs a person" not in done.out
    assert list(marks(course)) == ["L01"]


def test_a_row_typed_twice_needs_a_person(course, tmp_path, run) -> None:
    """Two rows for one question are left to a person with what both say."""
    rows = "learner,question,answer\nL01,c1,.139\nL01,c2,.2\nL01,c1,.140\n"
    (tmp_path / "typed.csv").write_text(rows, encoding="utf-8")
    done = run("mark", "cones", "typed.csv")
    assert "c1: it was typed twice: row 2 says “.139”, row 4 says “.140”" in done.out
    assert marks(course)["L01"]["points"] == ""


def test_all_bad_rows_of_a_typed_file_are_told_and_nothing_changes(course, tmp_path, run) -> None:
    """Three faults in one message, each with its row, and no marks are written."""
    rows = "Learner;Question;Answer\r\nL77;c1;1\r\nL01;c9;1\r\nAnna;c1;1\r\nL02;c1;.1\r\n;;\r\n"
    (tmp_path / "typed.csv").write_bytes(b"\xef\xbb\xbf" + rows.encode())
    done = run("mark", "cones", "typed.csv")
    assert done.code == 1
    for row in ("row 2, column form", "row 3, column question", "row 4, column learner"):
        assert f"typed.csv, {row}: " in done.out
    assert not (course / "cones-marks.csv").exists()


def test_an_override_is_counted_at_once_and_stays(course, tmp_path, run, marked) -> None:
    """Marks agree at once, and still after other papers are marked."""
    said = ("said it right aloud",)
    done = run("override", "cones", "L02", "c1", "1", *said)
    assert done.code == 0
    assert "Kept and counted: L02, cones, form 1: " in done.out
    before = points(course)
    assert float(before["L02"]) == float(marked["L02"]) + 1
    paper(course, "L06").save(tmp_path / "late")
    run("mark", "cones", "late")
    assert points(course)["L02"] == before["L02"]
    assert "c1: 1 given, said it right aloud" in marks(course)["L02"]["note"]
    run("mark", "cones", "in")
    assert points(course)["L02"] == before["L02"]


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("L02", "c1", "900", "because"), "give 0 to"),
        (("L02", "c1", "nan", "because"), "give 0 to"),
        (("L02", "c1", "0", "because"), "has them already"),
        (("L02", "c9", "1", "because"), "write one of c1"),
        (("L09", "c1", "1", "because"), "so nothing can change; check the code"),
        (("L02", "c1", "1", "because", "--form", "2"), "add --form with one of 1"),
        (("L02", "c1", "1", " "), "say why"),
    ],
)
def test_an_override_that_can_change_nothing_is_refused(course, run, marked, words, told) -> None:
    """Too many points, no such question, paper or form, or the points it has: nothing is kept."""
    kept = standing(course)
    done = run("override", "cones", *words)
    assert done.code == 1
    assert told in done.out
    assert standing(course) == kept
    assert points(course) == marked


def test_feedback_agrees_with_an_override(course, tmp_path, run) -> None:
    """Feedback that was written is written anew with the points given."""
    paper(course, "L02", c1=".001").save(tmp_path / "in")
    run("mark", "cones", "in", "--feedback", "--language", "es")
    page = course / "feedback" / "L02-cones-1.html"
    assert "c1: 0 / " in page.read_text(encoding="utf-8")
    run("override", "cones", "L02", "c1", "0.5", "half of it aloud")
    text = page.read_text(encoding="utf-8")
    assert "c1: 0.5 / " in text
    assert "Su instructor puso los puntos" in text
    assert '<html lang="es">' in text
    assert f"{float(points(course)['L02']):g}" in text


def test_feedback_agrees_with_an_undo(course, tmp_path, run) -> None:
    """What is taken back tells the points that count now, and the feedback has them, too."""
    paper(course, "L02", c1=".001").save(tmp_path / "in")
    run("mark", "cones", "in", "--feedback")
    page = course / "feedback" / "L02-cones-1.html"
    done = run("override", "cones", "L02", "c1", "0.5", "half of it aloud")
    assert "c1: 0.5 / " in page.read_text(encoding="utf-8")
    done = run("undo", done.out.partition("seatwork undo ")[2].split()[0], "typed it wrong")
    assert "L02, cones, form 1: 6 of 8 points. The feedback is written anew." in done.out
    assert "c1: 0 / " in page.read_text(encoding="utf-8")
    before = run("history", "L02").out.partition(": paper came in")[0].split()
    done = run("undo", before[-5], "not their paper")
    assert "L02, cones, form 1: no paper counts." in done.out
    before = run("history", "L02").out.partition(": marked 6 of 8")[0].split()
    assert "=" not in before[-4:]


@pytest.mark.slow
def test_what_holds_answers_is_for_its_owner_alone(tmp_path, run) -> None:
    """Record, copies, lines, marks and keys on paper are 0600 in folders of 0700."""
    assert run("roster", "new", "2").code == 0
    assert run("hand-out", "cones", "--paper").code == 0
    course = tmp_path / "course"
    learner = min(forms(course).sheets["cones"])
    paper(course, learner, c1=".001").save(tmp_path / "in")
    run("mark", "cones", "in", "--feedback")
    run("override", "cones", learner, "c1", "1", "said it right aloud")
    run("mark", "cones", "in")
    assert stat.S_IMODE(course.stat().st_mode) == 0o700
    assert stat.S_IMODE((course / "feedback").stat().st_mode) == 0o700
    private = {
        "record.db", "record.decisions.jsonl", "cones-marks.csv", "cones-marks.csv.bak",
        "cones-marks.xlsx", "cones-key.pdf", "course.key",
    }  # fmt: skip
    for name in private:
        assert stat.S_IMODE((course / name).stat().st_mode) == 0o600, name
    for copy in (course / "copies").iterdir():
        assert stat.S_IMODE(copy.stat().st_mode) == 0o600, copy.name


def test_a_roster_far_too_long_is_one_sentence(course, tmp_path, run) -> None:
    """A hundred thousand rows are refused at once."""
    rows = "\n".join(f"L{n:05d}" for n in range(100_000))
    (course / "roster.csv").write_text(f"learner\n{rows}\n", encoding="utf-8")
    done = run("hand-out", "cones")
    assert done.code == 1
    assert "roster.csv: it has more than 2000 rows" in done.out
