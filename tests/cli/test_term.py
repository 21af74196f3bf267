"""A term of twelve, command by command, as an instructor types it."""

import csv
import re
from pathlib import Path

import pytest
from seatwork.marking import AnswerFile, examples, sheets
from seatwork.marking.text import right_answer
from seatwork.record import forms
from seatwork.record.erasing import still_naming

from tests.as_saved import sealed

pytestmark = pytest.mark.slow
NAMES = {code: f"Quillfeather{code[1:]} Ottoline" for code in examples.CLASS}


def paper(course: Path, name: str, learner: str, form: int = 1, **typed: str) -> AnswerFile:
    """Answer everything right but what is given."""
    one = forms(course).form(name, learner, form)
    assert one is not None
    file = AnswerFile(learner=learner, sheet=name, form=form)
    for question, asked in one.questions(sheets.load(name)).items():
        parts = tuple(right_answer(part) for part in asked.parts)
        file = file.changed(question, parts=(typed[question],) if question in typed else parts)
    return sealed(file, one)


@pytest.fixture
def course(tmp_path: Path, run) -> Path:
    """Give a course of twelve that handed two sheets out."""
    folder = examples.make_course(tmp_path / "course")
    for name, day, due in (
        ("cones", "2026-09-14", "2026-09-21"), ("angles", "2026-09-21", "2026-09-28")
    ):  # fmt: skip
        done = run("hand-out", name, "--mode", "graded", "--due", due, "--day", day)
        assert "12 forms" in done.out
        assert f"due {due}" in done.out
    return folder


def test_a_term_command_by_command(course: Path, tmp_path: Path, run) -> None:
    """Late, known, points by hand, lost, excused, left, re-test: each says what became of it."""
    for code in examples.CLASS[:-1]:
        wrong = {"c1": ".001"} if code in ("L03", "L05") else {}
        paper(course, "cones", code, **wrong, **({"c2": ".001"} if wrong else {})).save(
            tmp_path / "in"
        )
    done = run("mark", "cones", "in", "--day", "2026-09-21")
    assert "11 new, 0 known already, 0 changed" in done.out
    assert "no paper in the marks yet: L12." in done.out
    before = (course / "record.db").read_bytes()
    assert "0 new, 11 known already" in run("mark", "cones", "in", "--day", "2026-09-21").out
    assert (course / "record.db").read_bytes() == before
    done = run("override", "cones", "L03", "c1", "1", "slipped on the keys", "--day", "2026-09-22")
    target = done.out.partition("seatwork undo ")[2].split()[0]
    paper(course, "cones", "L12").save(tmp_path / "late")
    done = run("mark", "cones", "late", "--day", "2026-09-28")
    assert "1 new, 0 known already, 0 changed; papers in the marks now: 12." in done.out
    assert "after the day: L12." in done.out
    assert run("lost", "angles", "L07", "lost in the shop", "--day", "2026-09-29").code == 0
    assert run("excuse", "angles", "L05", "court date", "--day", "2026-09-29").code == 0
    assert run("leave", "L10", "moved away", "--day", "2026-10-02").code == 0
    done = run("class", "--day", "2026-10-05")
    row = next(line for line in done.out.split("L07 ") if "paper lost" in line)
    assert "100+" in row
    for words in ("100+*", "excused", "not here", "paper lost", "left the course"):
        assert words in done.out
    assert "re-test cones: L03; L05" in run("class", "--next", "--day", "2026-10-05").out
    assert "L03" not in run("class", "--projector", "--day", "2026-10-05").out
    done = run("hand-out", "cones", "--sitting", "2", "--only", "L03", "--only", "L05")
    assert "2 forms" in done.out
    assert "left the course" in run("hand-out", "cones", "--only", "L10").out
    paper(course, "cones", "L03", form=2).save(tmp_path / "again")
    paper(course, "cones", "L05").save(tmp_path / "again")
    done = run("mark", "cones", "again", "--day", "2026-10-12")
    assert "L05, form 1 has a paper that came after the day; the first stands" in done.out
    done = run("class", "--day", "2026-10-15")
    assert "100+ r2" in done.out
    assert "L05 cones: another paper came after the day: look" in done.out
    done = run("undo", target, "talked it over")
    assert done.code == 0
    assert "L03, cones, form 1: " in done.out
    done = run("history", "L03")
    assert f"{target} x 2026-09-22 I1 L03/cones/1/c1: c1: 1 of 2 given" in done.out
    assert "All is well" in run("record", "check").out


def test_a_signature_lies_on_paper(course: Path, run) -> None:
    """Without saying where the paper lies nothing is kept, and the report clears nobody."""
    assert "--paper-at" in run("sign", "L03", "bench drill press").out
    done = run("sign", "L03", "bench drill press", "--paper-at", "binder 2026, sheet 4")
    assert "Software clears nobody" in done.out
    done = run("report", "L03")
    assert "bench drill press: signed on paper" in done.out
    assert "binder 2026, sheet 4" in done.out
    assert "This page clears nobody to run a machine" in done.out


def test_inspected_parts_are_kept(course: Path, tmp_path: Path, run) -> None:
    """One part of L03 is rejected, of another too little was measured: the report tells both."""
    note = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
    (tmp_path / "plate.csv").write_text(f"feature,note\nA,{note}\n", encoding="utf-8")
    rows = "part,feature,diameter,burr\nL03-1,A,.500 in,no\nL03-2,A,.398 in,no\n"
    (tmp_path / "measured.csv").write_text(rows, encoding="utf-8")
    words = ("inspect", "measured.csv", "--part", "plate.csv", "--material", "6061 aluminum",
             "--machine", "bench drill press", "--keep", "--codes", "S5 P1")  # fmt: skip
    done = run(*words, "--day", "2026-10-06")
    assert "Kept in the record: L03-1, L03-2." in done.out, done.out
    before = (course / "record.db").read_bytes()
    run(*words, "--day", "2026-10-06")
    assert (course / "record.db").read_bytes() == before
    done = run("report", "L03")
    assert "A, L03-1: reject" in done.out
    assert "A, L03-2: cannot tell with this instrument, burr no" in done.out
    assert "P1 part 0 of 2" in done.out
    (tmp_path / "measured.csv").write_text(rows.replace("L03-1", "Ann-1"), encoding="utf-8")
    assert "names no learner" in run(*words).out


def test_no_name_is_in_any_byte_of_the_course(course: Path, tmp_path: Path, run) -> None:
    """Names stand on the pages and in the tables, and nowhere in the course folder."""
    names = tmp_path / "names.csv"
    with names.open("w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows([("learner", "name"), *NAMES.items()])
    for code in examples.CLASS:
        paper(course, "cones", code).save(tmp_path / "in")
    (tmp_path / "in" / f"{NAMES['L03']} cones.json").write_text("{", encoding="utf-8")
    assert "needs a person" in run("mark", "cones", "in", "--feedback").out
    for words in (
        ("class", "--print", "class.pdf", "--names", "names.csv"),
        ("class", "--table", "class.xlsx", "--names", "names.csv"),
        ("class", "--table", "class.csv", "--names", "names.csv"),
        ("report", "--all", "--to", "reports", "--names", "names.csv"),
        ("record", "check", "--names", "names.csv"),
    ):
        done = run(*words)
        assert done.code == 0, done.out
    assert NAMES["L03"] in (tmp_path / "class.csv").read_text(encoding="utf-8-sig")
    for name in NAMES.values():
        for piece in (name, name.partition(" ")[0]):
            assert still_naming(course, piece) == []
    done = run("class", "--print", "course/class.pdf", "--names", "names.csv")
    assert "names are never written into the course folder" in done.out
    run("excuse", "angles", "L03", f"{NAMES['L03']} is ill")
    done = run("record", "check", "--names", "names.csv")
    assert done.code == 1
    assert "record.db holds the name of L03" in done.out


def test_tables_open_harmless_and_say_the_same(course: Path, tmp_path: Path, run) -> None:
    """A name that could be a formula is text in the spreadsheet; CSV and XLSX agree."""
    import openpyxl

    names = tmp_path / "names.csv"
    names.write_text('learner,name\nL01,"=HYPERLINK(""x"")"\nL02,+1\n', encoding="utf-8")
    run("class", "--table", "class.xlsx", "--names", "names.csv")
    book = openpyxl.load_workbook(tmp_path / "class.xlsx").active
    cells = [book.cell(row=row, column=1) for row in (2, 3)]
    assert [cell.value for cell in cells] == ['=HYPERLINK("x")', "+1"]
    assert {cell.data_type for cell in cells} == {"s"}
    paper(course, "cones", "L01").save(tmp_path / "in")
    run("mark", "cones", "in")
    with (course / "cones-marks.csv").open(encoding="utf-8-sig", newline="") as file:
        (row,) = csv.DictReader(file)
    marks = openpyxl.load_workbook(course / "cones-marks.xlsx").active
    heads, first = list(marks.values)
    found = dict(zip(heads, first, strict=True))
    assert found["learner"] == row["learner"] == "L01"
    assert float(found["points"]) == float(row["points"]) == 8


def test_two_instructors_each_with_a_record(course: Path, tmp_path: Path, run) -> None:
    """I2 marks at home; after combining both show the same class, and who disagrees is told."""
    import shutil

    paper(course, "cones", "L01", c1=".001").save(tmp_path / "in")
    run("mark", "cones", "in", "--day", "2026-10-01")
    assert run("record", "copy", "home", "--day", "2026-10-01").code == 0
    shutil.copy(course / "course.key", tmp_path / "home")
    assert run("record", "new", "--course", "home", "--by", "I2").code == 0
    assert run("record", "new", "--course", "home", "--by", "Quill").code == 1
    paper(course, "cones", "L09").save(tmp_path / "late")
    run("mark", "cones", "late", "--course", "home", "--day", "2026-10-14")
    for folder, points in (("home", "1"), ("course", "0.5")):
        done = run("override", "cones", "L01", "c1", points, "by hand", "--course", folder)
        assert done.code == 0, done.out
    done = run("record", "combine", "home/record.db")
    assert "L01 cones 1 c1: I1 said 0.5, I2 said 1: decide anew" in done.out
    assert "0 facts added" in run("record", "combine", "home/record.db").out
    run("record", "combine", "course/record.db", "--course", "home")
    here, there = (
        run("class", "--day", "2026-10-15", "--course", folder).out for folder in ("course", "home")
    )
    assert here == there
    assert "?" in here


def test_erasing_asks_and_tells(course: Path, tmp_path: Path, run) -> None:
    """What goes is listed first; afterwards no byte below the course holds the code."""
    paper(course, "cones", "L10").save(tmp_path / "in")
    run("mark", "cones", "in", "--feedback")
    done = run("record", "erase", "L10", "--yes", "--day", "2027-01-15")
    assert "1 paper" in done.out
    assert "The code is in 0 files" in done.out
    assert still_naming(course, "L10") == []
    assert "nobody of that code" in run("record", "erase", "L10", "--yes").out


def test_a_course_in_files_is_taken_over_and_compared(tmp_path: Path, run) -> None:
    """A mark that the old files hold and the papers do not give is listed for a person."""
    import json
    import shutil

    kept = Path(__file__).parents[1] / "data" / "course_0_1"
    shutil.copytree(kept / "course", tmp_path / "course")
    (tmp_path / "course" / "course.key").chmod(0o600)
    place = tmp_path / "course" / "cones-results.json"
    old = json.loads(place.read_bytes())
    old["files"][0]["points"] = 900.0
    place.write_text(json.dumps(old), encoding="utf-8")
    done = run("record", "new")
    learner = old["files"][0]["learner"]
    assert f"{learner}, cones, form 1: 900 in the old marks" in done.out
    facts = done.out.partition(" facts;")[0].split()[-1]
    assert place.exists()
    assert f"{facts} facts" in run("record", "new").out


def test_a_person_lets_a_paper_count_and_voids_a_sitting(course: Path, tmp_path: Path, run) -> None:
    """A late paper counts when a person says so; a void sitting is no zero; both are undone."""
    paper(course, "cones", "L01", c1=".001").save(tmp_path / "in")
    run("mark", "cones", "in", "--day", "2026-09-20")
    paper(course, "cones", "L01").save(tmp_path / "late")
    told = run("mark", "cones", "late", "--day", "2026-09-25").out
    (late,) = re.findall(r"(\w{6}) .? ?2026-09-25 \w+ \S+ paper came in", run("history", "L01").out)
    assert f'to count this one: seatwork count-paper {late} "why"' in told
    done = run("count-paper", late, "was ill on the day", "--day", "2026-09-26")
    assert "L01: this paper counts." in done.out
    assert "8 of 8" in run("report", "L01", "--day", "2026-09-26").out
    done = run("void", "cones", "L01", "two sheets were mixed up", "--day", "2026-09-27")
    assert "void, no mark and no zero" in done.out
    assert "Cones, sitting 1: void" in run("report", "L01", "--day", "2026-09-27").out
    target = done.out.partition("seatwork undo ")[2].split()[0]
    run("undo", target, "they were not", "--day", "2026-09-28")
    assert "8 of 8" in run("report", "L01", "--day", "2026-09-28").out


def test_the_key_goes_along_only_when_asked_for(course: Path, tmp_path: Path, run) -> None:
    """A copy has no key unless it is asked for; another course's key is never written over."""
    assert run("record", "copy", "stick/").code == 0
    assert not list(tmp_path.rglob("stick*/course.key"))
    (tmp_path / "other").mkdir()
    done = run("record", "copy", "other", "--with-key")
    assert "Whoever has it knows every answer" in done.out
    assert (tmp_path / "other" / "course.key").read_text() == (course / "course.key").read_text()
    (tmp_path / "other" / "course.key").write_text("ab" * 32)
    assert "the key of another course" in run("record", "copy", "other", "--with-key").out
    assert (tmp_path / "other" / "course.key").read_text() == "ab" * 32
    assert "beside the key saves nothing" in run("record", "copy", "--with-key").out


def test_what_is_erased_is_listed_in_words(course: Path, tmp_path: Path, run) -> None:
    """Before a learner is erased, what goes is counted in words."""
    paper(course, "cones", "L01").save(tmp_path / "in")
    run("mark", "cones", "in", "--day", "2026-09-20")
    said = run("record", "erase", "L01", "--yes").out
    assert "2 forms handed out, 1 paper, 1 mark" in said


def test_a_report_says_slips_in_words(course: Path, tmp_path: Path, run) -> None:
    """What went wrong stands on a learner's report as a sentence, never as a code."""
    asked = forms(course).form("cones", "L01", 1).questions(sheets.load("cones"))["c1"]
    slip = asked.parts[0].slips[0]
    paper(course, "cones", "L01", c1=f"{slip.value:.3f}").save(tmp_path / "in")
    run("mark", "cones", "in", "--day", "2026-09-20")
    said = run("report", "L01", "--day", "2026-09-26").out
    assert slip.sentence in said
    assert not re.search(r"\bM\d\d\b", said)
