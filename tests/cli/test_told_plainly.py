"""What commands of the term say where a word was missing, or the wrong one."""

from pathlib import Path

import pytest
from seatwork.marking import AnswerFile, examples, sheets
from seatwork.marking.text import right_answer
from seatwork.record import forms, hand_out

from tests.as_saved import sealed

pytestmark = pytest.mark.slow


def paper(course: Path, learner: str, form: int = 1, **typed: str) -> AnswerFile:
    """Answer everything right but what is given."""
    one = forms(course).form("cones", learner, form)
    assert one is not None
    file = AnswerFile(learner=learner, sheet="cones", form=form)
    for name, asked in one.questions(sheets.load("cones")).items():
        parts = tuple(right_answer(part) for part in asked.parts)
        file = file.changed(name, parts=(typed[name],) if name in typed else parts)
    return sealed(file, one)


@pytest.fixture
def course(tmp_path: Path) -> Path:
    """Give a course that handed the sheet cones out, of which L01 handed in a paper."""
    folder = examples.make_course(tmp_path / "course")
    hand_out(folder, "cones", examples.CLASS, due="2026-09-21", day="2026-09-14")
    paper(folder, "L01", c1=".001").save(tmp_path / "in")
    return folder


def test_a_sound_record_is_left_alone(course: Path, tmp_path: Path, run) -> None:
    """Nothing is set aside as damaged, from its own copies or from a stick."""
    assert run("mark", "cones", "in", "--day", "2026-09-20").code == 0
    run("record", "copy", "stick/")
    before = sorted(path.name for path in course.iterdir())
    for words in ((), ("--from", "stick")):
        done = run("record", "bring-back", *words)
        assert done.code == 1
        assert "the record is sound and whole" in done.out
    assert sorted(path.name for path in course.iterdir()) == before


def test_a_folder_is_named_to_bring_back_from(course: Path, tmp_path: Path, run) -> None:
    """The copy on a stick is found by the stick's folder."""
    run("mark", "cones", "in", "--day", "2026-09-20")
    run("record", "copy", "stick/")
    (course / "record.db").write_bytes(b"")
    for one in (course / "copies").glob("*.db"):
        one.unlink()
    assert "there is no sound copy" in run("record", "bring-back").out
    done = run("record", "bring-back", "--from", "stick")
    assert done.code == 0, done.out
    assert "stick/record.db" in done.out
    assert "0 new, 1 known already" in run("mark", "cones", "in").out


def test_a_name_in_a_reason_is_no_damage(course: Path, tmp_path: Path, run) -> None:
    """Bringing a copy back takes no name out, so that is not what is said."""
    (tmp_path / "names.csv").write_text("learner,name\nL03,Quillfeather\n", encoding="utf-8")
    run("excuse", "cones", "L03", "Quillfeather is ill")
    done = run("record", "check", "--names", "names.csv")
    assert done.code == 1
    assert "seatwork record erase CODE" in done.out
    assert "bring-back" not in done.out


def test_one_answer_file_is_marked(course: Path, tmp_path: Path, run) -> None:
    """A file is taken as what it is, and one that is none is named as such."""
    done = run("mark", "cones", "in/L01-cones-1.json", "--day", "2026-09-20")
    assert "1 new, 0 known already" in done.out
    (tmp_path / "mail.txt").write_bytes(b"Hello,\n" + paper(course, "L02").content())
    assert "1 new, 0 known already" in run("mark", "cones", "mail.txt").out
    (tmp_path / "typed.txt").write_text("learner,question,answer\nL04,c1,1\n", encoding="utf-8")
    assert "the file has no row for it" in run("mark", "cones", "typed.txt").out
    (tmp_path / "L03-cones-1.json").write_text("{", encoding="utf-8")
    done = run("mark", "cones", "L03-cones-1.json")
    assert "needs a person: L03-cones-1.json: it is damaged" in done.out
    assert "row" not in done.out


def test_a_half_typed_paper_waits(course: Path, tmp_path: Path, run) -> None:
    """Rows that are missing give no zero, and what would do is said."""
    (tmp_path / "typed.csv").write_text("learner,question,answer\nL02,c1,1 mm\n", encoding="utf-8")
    done = run("mark", "cones", "typed.csv")
    assert "c2: the file has no row for it" in done.out
    assert "type the whole paper" in done.out
    assert "L02 cones:" in run("class", "--next").out


def test_a_paper_that_counts_says_its_mark(course: Path, tmp_path: Path, run) -> None:
    """Letting a late paper count tells the new points; doing it again tells that none change."""
    run("mark", "cones", "in", "--day", "2026-09-20")
    paper(course, "L01").save(tmp_path / "late")
    told = run("mark", "cones", "late", "--day", "2026-09-25").out
    named = told.partition("seatwork count-paper ")[2].split()[0]
    assert "8 of 8 points" in run("count-paper", named, "was ill on the day").out
    assert "The marks stay as they are." in run("count-paper", named, "was ill on the day").out
    assert "excused, no mark and no zero" in run("excuse", "cones", "L01", "court date").out


def test_points_go_to_no_form_unsaid(course: Path, tmp_path: Path, run) -> None:
    """With papers of two forms in, the command asks for the form."""
    run("mark", "cones", "in", "--day", "2026-09-20")
    run("hand-out", "cones", "--sitting", "2", "--only", "L01", "--day", "2026-09-22")
    paper(course, "L01", 2, c1=".001").save(tmp_path / "again")
    run("mark", "cones", "again", "--day", "2026-09-25")
    words = ("override", "cones", "L01", "c1", "1", "set up right")
    assert "the forms 1, 2 of cones are in; add --form" in run(*words).out
    assert "L01, cones, form 2: 7 of 8 points" in run(*words, "--form", "2").out


def test_what_was_printed_for_the_class_is_named_at_erasing(
    course: Path, tmp_path: Path, run
) -> None:
    """A packed file cannot be searched for the code, so it is named to be looked at."""
    for name in ("cones-key.pdf", "given/L03/cones-1.pdf", "given/L10/cones-1.pdf"):
        place = course / name
        place.parent.mkdir(parents=True, exist_ok=True)
        place.write_bytes(b"%PDF packed")
    done = run("record", "erase", "L10", "--yes")
    assert "cones-key.pdf: printed before, it may show the code" in done.out
    assert "L03/cones-1.pdf" not in done.out
    assert not (course / "given" / "L10").exists()


def test_a_folder_without_a_course_is_no_silent_room(course: Path, tmp_path: Path, run) -> None:
    """Beside the rooms it is named as passed over."""
    school = tmp_path / "school"
    school.mkdir()
    course.rename(tmp_path / "kept")
    (school / "north").mkdir()
    (tmp_path / "kept").rename(school / "north" / "course")
    (tmp_path / "in").rename(school / "north" / "handed_in")
    (school / "annex" / "handed_in").mkdir(parents=True)
    done = run("mark", "cones", "school", "--rooms")
    assert "annex: passed over, no folder course is in it" in done.out
    assert "1 of 1 rooms marked. Passed over: 1." in done.out
