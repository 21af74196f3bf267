"""What an instructor is told of papers collected: which form, what is missing, what to do."""

from pathlib import Path

import pytest
from seatwork.marking import Answer, AnswerFile, examples, sheets
from seatwork.marking.text import right_answer
from seatwork.record import forms, hand_out

from tests.as_saved import as_saved, sealed

pytestmark = pytest.mark.slow


@pytest.fixture
def course(tmp_path: Path) -> Path:
    """Give a course that handed the sheet cones out to twelve."""
    folder = examples.make_course(tmp_path / "course")
    hand_out(folder, sheets.load("cones"), examples.CLASS)
    return folder


def right(course: Path, learner: str, form: int = 1) -> AnswerFile:
    """Answer a form right."""
    sheet, given = sheets.load("cones"), forms(course).form("cones", learner, form)
    assert given is not None
    answers = {
        name: Answer(parts=tuple(right_answer(part) for part in question.parts))
        for name, question in given.questions(sheet).items()
    }
    return sealed(AnswerFile(learner=learner, sheet="cones", form=form, answers=answers), given)


def changed(course: Path, text: str) -> AnswerFile:
    """Answer the form of L01 right but for the first question."""
    return as_saved(course, right(course, "L01").changed("c1", parts=(text,)))


def typed(path: Path, file: AnswerFile, form: str = "") -> None:
    """Write answers as they are typed from paper into a spreadsheet."""
    rows = [f"{file.learner};{name};{one.parts[0]};{form}" for name, one in file.answers.items()]
    path.write_text("\n".join(["learner;question;answer;form", *rows]), encoding="utf-8")


def test_a_paper_list_is_never_taken_for_the_retest(course, tmp_path, run) -> None:
    """After a re-test was handed out a list without forms is refused, once a learner."""
    typed(tmp_path / "typed.csv", right(course, "L01"))
    run("mark", "cones", "typed.csv")
    before = (course / "cones-marks.csv").read_bytes()
    run("hand-out", "cones", "--sitting", "2")
    done = run("mark", "cones", "typed.csv")
    assert done.code == 1
    assert done.out.count("L01 was given the forms 1 and 2; write in a column form") == 1
    assert (course / "cones-marks.csv").read_bytes() == before
    typed(tmp_path / "typed.csv", right(course, "L01"), form="1")
    assert "1 known already" in run("mark", "cones", "typed.csv").out


def test_why_asks_which_form_is_meant(course, run) -> None:
    """After a re-test the form must be said; its own numbers give the answer."""
    run("hand-out", "cones", "--sitting", "2")
    number = right(course, "L01", 1).of("c1").parts[0]
    done = run("why", "cones", "L01", "c1", number)
    assert done.code == 1
    assert "was given form 1 and 2 of cones; add --form" in done.out
    assert "right" in run("why", "cones", "L01", "c1", number, "--form", "1").out


def test_who_has_no_paper_yet_is_named(course, tmp_path, run) -> None:
    """Those who were given the sheet and are not in the marks stand in one line."""
    for learner in examples.CLASS[:10]:
        right(course, learner).save(tmp_path / "in")
    assert "no paper in the marks yet: L11, L12." in run("mark", "cones", "in").out
    for learner in examples.CLASS[10:]:
        right(course, learner).save(tmp_path / "late")
    assert "no paper in the marks yet" not in run("mark", "cones", "late").out


def test_what_needs_a_person_is_told_with_what_to_do(course, tmp_path, run) -> None:
    """Points to give and a file to ask for again each have their line, only where they are."""
    changed(course, "5-Aug").save(tmp_path / "in")
    done = run("mark", "cones", "in", "--feedback")
    assert 'give its points: seatwork override cones CODE QUESTION POINTS "reason"' in done.out
    assert "ask for it again" not in done.out
    assert "Feedback: course/feedback" in done.out
    (tmp_path / "bad").mkdir()
    (tmp_path / "bad" / "L02-cones-1.json").write_bytes(right(course, "L02").content()[:90])
    (tmp_path / "bad" / "cones.ipynb").write_text("{}", encoding="utf-8")
    done = run("mark", "cones", "bad")
    assert "L02-cones-1.json: it is damaged, cut off, or not from a worksheet" in done.out
    assert "cones.ipynb: that is the page, which holds no answers; ask for the file" in done.out
    assert "ask for it again and mark what comes" in done.out


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("override", "cones", "L01", "c1", "two", "because"), "write one such as 1.5"),
        (("override", "cones", "L01", "c1", "1", ""), "reason: 0 letters are no reason"),
        (("override", "cones", "L01", "c1", "1", "because", "--day", "today"), "that is no day"),
        (("mark", "cones", "in", "--day", "2026-13-01"), "that is no day"),
        (("hand-out", "cones", "--paper", "--size", "legal", "--to", "new"), "write letter or a4"),
    ],
)
def test_what_is_refused_changes_nothing(course, tmp_path, run, words, told) -> None:
    """A wrong number, reason, day or paper is one sentence, and no file is written."""
    changed(course, "1 in").save(tmp_path / "in")
    run("mark", "cones", "in")
    before = sorted(tmp_path.rglob("*"))
    done = run(*words)
    assert done.code == 1
    assert told in done.out
    assert sorted(tmp_path.rglob("*")) == before


def test_points_are_read_with_a_comma(course, tmp_path, run) -> None:
    """Points as much of the world writes them are the same points."""
    changed(course, "1 in").save(tmp_path / "in")
    run("mark", "cones", "in")
    assert "7.5 of 8 points" in run("override", "cones", "L01", "c1", "1,5", "right aloud").out


def test_the_key_of_a_retest_leaves_the_first_key(course, run) -> None:
    """Each sitting has its own key on paper."""
    run("hand-out", "cones", "--paper")
    first = (course / "cones-key.pdf").read_bytes()
    run("hand-out", "cones", "--paper", "--sitting", "2")
    assert (course / "cones-key.pdf").read_bytes() == first
    assert (course / "cones-key-2.pdf").is_file()


def test_a_latecomers_paper_leaves_those_of_the_class(course, run) -> None:
    """Who is handed a sheet alone gets papers of that name; the class's stay as they are."""
    run("hand-out", "cones", "--paper")
    first = [(course / f"cones-{what}.pdf").read_bytes() for what in ("papers", "key")]
    run("hand-out", "cones", "--paper", "--only", "L02")
    assert first == [(course / f"cones-{what}.pdf").read_bytes() for what in ("papers", "key")]
    assert (course / "cones-key-L02.pdf").is_file()
