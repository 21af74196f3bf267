"""Rehearse a term of twelve learners, command by command, and hold it against its design.

``python tests/record/rehearse_term.py FOLDER`` gives every command in a new folder and prints, for
each, what the design of the record said one would see, what is seen, and why it is another word
where it is one. The end tells how long it took and how large the record is.
"""

import contextlib
import io
import os
import sys
import time
from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path

from seatwork.cli import program
from seatwork.marking import AnswerFile, examples, form_secret, sheets
from seatwork.marking.text import right_answer
from seatwork.record import Record, forms

NAMES = {code: f"Quillfeather{code[1:]} Ottoline" for code in examples.CLASS}
FEW = ("L01", "L11")
SECONDS, BYTES = 10.0, 1_000_000
"""What the design asks of the whole term, without its prints [s], and of the record [bytes]."""
PICTURE = {
    ("L01", "cones"): ("100+ r2", "100+ r2", ""),
    ("L05", "angles"): ("E", "excused", "a cell says it in plain English"),
    ("L06", "angles"): ("?", "?", ""),
    ("L07", "angles"): ("L", "paper lost", "a cell says it in plain English"),
    ("L09", "mixed_test"): ("100+*", "100+*", ""),
    ("L10", "mixed_test"): ("w", "", "who left is handed nothing more, so there is no cell"),
    ("L11", "cones"): ("50-.", "50- ? ...", "the other paper that came is a ?, the re-test ..."),
    ("L12", "cones"): ("100+*", "100+*", ""),
}
"""Cells of the class on the last day: as designed, as they are, why they differ."""


@dataclass(frozen=True)
class Step:
    """One command of the term.

    Parameters
    ----------
    day : str
        When; empty where the command takes none.
    words : tuple of str
        What is typed.
    designed : str
        What the design said one would see.
    seen : tuple of str
        Words that are seen.
    why : str
        Why they are other words.
    """

    day: str
    words: tuple[str, ...]
    designed: str
    seen: tuple[str, ...]
    why: str = ""


def answer(course: Path, to: Path, name: str, who: tuple[str, ...], form: int = 1, **wrong) -> None:
    """Hand in what some answered: right but for the questions named for each."""
    to.mkdir(exist_ok=True)
    for learner in who:
        given = forms(course).form(name, learner, form)
        file = AnswerFile(learner=learner, sheet=name, form=form)
        for question, asked in given.questions(sheets.load(name)).items():
            off = question in wrong.get(learner, ())
            parts = tuple(".001" if off else right_answer(part) for part in asked.parts)
            file = file.changed(question, parts=parts, tries=1)
        secret = form_secret(examples.KEY, given.form_id)
        file = replace(file, form_id=given.form_id).sealed(secret)
        (to / file.name).write_bytes(file.content())


def without(*absent: str) -> tuple[str, ...]:
    """Name the class but for some."""
    return tuple(code for code in examples.CLASS if code not in absent)


def give(*words: str) -> str:
    """Give a command in this process and return what it says, with single spaces."""
    told = io.StringIO()
    before, sys.argv = sys.argv, ["seatwork", *words]
    try:
        with contextlib.redirect_stdout(told), contextlib.redirect_stderr(told):
            program.main()
    except SystemExit:
        pass
    finally:
        sys.argv = before
    return " ".join(told.getvalue().split())


def term(home: Path) -> Iterator[tuple[Step, str]]:
    """Go through the term in the working folder `home`; yield each step and what it said."""
    course = examples.make_course(home / "course")

    def step(day: str, *words: str, designed: str, seen: tuple[str, ...], why: str = "") -> tuple:
        told = give(*words, *(("--day", day) if day else ()))
        return Step(day, words, designed, seen, why), told

    def out(name: str, day: str, due: str, *more: str, count: int = 12) -> tuple:
        words = ("hand-out", name, "--mode", "graded", *(("--due", due) if due else ()), *more)
        return step(day, *words, designed=f"{count} forms", seen=(f"{count} forms", due))

    yield step("2026-09-07", "record", "new", designed="course/record.db",
               seen=("record.db", "decisions here are by I1"))  # fmt: skip
    yield out("cones", "2026-09-14", "2026-09-21")
    slips = {"L01": ("c1", "c2"), "L11": ("c1", "c2"), "L04": ("c1",)}
    answer(course, home / "in", "cones", without("L12"), **slips)
    yield step("2026-09-21", "mark", "cones", "in",
               designed="11 taken in, 11 marked. Not here: L12.",
               seen=("11 files, 11 marked", "11 new", "no paper in the marks yet: L12."),
               why="not here is said from the day after, so on the day: no paper yet")  # fmt: skip
    yield step("2026-09-21", "mark", "cones", "in",
               designed="11 known already. Nothing changed.",
               seen=("0 new, 11 known already, 0 changed",))  # fmt: skip
    kept = step("2026-09-22", "override", "cones", "L04", "c1", "1",
                "set up right, slipped on the keys",
                designed="Kept: c1 of 2 is 1 now. Undo: seatwork undo 4f2a",
                seen=("L04", "seatwork undo "),
                why="an id is a hash of what was said")  # fmt: skip
    yield kept
    target = kept[1].partition("seatwork undo ")[2].split()[0]
    yield out("angles", "2026-09-21", "2026-09-28")
    answer(course, home / "angles", "angles", without("L05", "L07"), L06=("a1",))
    yield step("2026-09-28", "mark", "angles", "angles", designed="10 marked", seen=("10 new",))
    answer(course, home / "late", "cones", ("L12",))
    yield step("2026-09-28", "mark", "cones", "late",
               designed="1 taken in, late: L12. The other 11 stay as they are.",
               seen=("1 new, 0 known already, 0 changed", "after the day: L12."),
               why="0 changed says that the others stay")  # fmt: skip
    yield step("2026-09-29", "lost", "angles", "L07", "paper lost in the shop",
               designed="cell L; no zero", seen=("paper lost",))  # fmt: skip
    yield step("2026-09-29", "excuse", "angles", "L05", "court date",
               designed="cell E; no zero", seen=("excused",))  # fmt: skip
    yield step("2026-10-02", "leave", "L10", "moved away",
               designed="later cells w; marks stay", seen=("L10",))  # fmt: skip
    yield step("2026-10-05", "class", "--next", designed="who needs what",
               seen=("re-test cones: L01; L11", "L07 angles"))  # fmt: skip
    yield out("cones", "2026-10-05", "", "--sitting", "2",
              *(word for one in FEW for word in ("--only", one)), count=2)  # fmt: skip
    yield step("2026-10-06", "sign", "L03", "bench drill press", "--paper-at",
               "binder 2026, sheet 4",
               designed="Kept that a person signed. Software clears nobody.",
               seen=("Software clears nobody",))  # fmt: skip
    yield out("mixed_test", "2026-10-05", "2026-10-12", count=11)
    answer(course, home / "mixed", "mixed_test", without("L09", "L10"))
    yield step("2026-10-12", "mark", "mixed_test", "mixed", designed="", seen=("10 new",))
    answer(course, home / "again", "cones", ("L01",), form=2)
    answer(course, home / "again", "cones", ("L11",))
    yield step("2026-10-12", "mark", "cones", "again",
               designed="L01 form 2 marked. L11: another paper of form 1 came; the first stands:"
                        " look.",
               seen=("L11, form 1 has a paper that came after the day; the first stands",),
               why="the due day decides which of two papers counts")  # fmt: skip
    yield from _two_instructors(home, step)
    yield step("2026-10-15", "undo", target, "talked it over", designed="", seen=("L04",))
    yield step("", "history", "L04", designed="every fact in the order it follows",
               seen=(f"{target} x 2026-09-22 I1 L04/cones/1/c1: c1: 1 of 2 given",),
               why="an x marks what was taken back, since bold does not print")  # fmt: skip
    yield step("", "record", "check", designed="well", seen=("All is well",))


def ending(home: Path) -> Iterator[tuple[Step, str]]:
    """Print with names, and take a learner out, at the end of the term."""
    rows = "".join(f"{code},{name}\n" for code, name in NAMES.items())
    (home / "names.csv").write_text(f"learner,name\n{rows}", encoding="utf-8")
    named = ("--names", "names.csv")
    for words, designed, seen in (
        (("class", "--print", "class.pdf", *named, "--day", "2026-10-15"), "PDFs", "Wrote class"),
        (("report", "--all", "--to", "out", *named, "--day", "2026-10-15"), "PDFs", "L12-report"),
        (("record", "check", *named), "names on paper only", "All is well"),
        (("record", "erase", "L10", "--yes", "--day", "2027-01-15"),
         "what goes, asked once, done, checked", "The code is in 0 files"),
    ):  # fmt: skip
        yield Step("", words, designed, (seen,)), give(*words)


def _two_instructors(home: Path, step) -> Iterator[tuple[Step, str]]:
    """Let a second instructor work on a copy, and combine: a disagreement is told, none chosen."""
    yield step("2026-10-14", "record", "copy", "stick.db", designed="a copy on a stick",
               seen=("Copied to stick.db",))  # fmt: skip
    from seatwork.record import Override, override

    theirs = Record(home / "stick.db", examples.KEY, "I2")
    override(theirs, Override("L06", "angles", 1, "a1", 0.5, "method right"), "2026-10-14")
    theirs.close()
    yield step("2026-10-14", "override", "angles", "L06", "a1", "1", "misread, talked about it",
               designed="", seen=("L06",))  # fmt: skip
    answer(home / "course", home / "their", "mixed_test", ("L09",))
    yield step("2026-10-14", "mark", "mixed_test", "their", designed="L09 late",
               seen=("after the day: L09.",))  # fmt: skip
    yield step("2026-10-14", "record", "combine", "stick.db",
               designed="3 facts added. L06 angles a1: I1 gave 0, I2 gave 1: decide.",
               seen=("1 facts added", "L06"),
               why="here I2 adds one fact, since L09's paper comes to I1")  # fmt: skip
    yield step("2026-10-14", "record", "combine", "stick.db", designed="again adds 0",
               seen=("0 facts added",))  # fmt: skip


def rehearse(home: Path) -> tuple[list[tuple[Step, str]], float, int]:
    """Rehearse the term in a folder; return steps and answers, seconds, and bytes of the record."""
    home.mkdir(parents=True, exist_ok=True)
    here, began = Path.cwd(), time.process_time()
    os.chdir(home)
    try:
        found = list(term(home))
        took = time.process_time() - began
        found += ending(home)
    finally:
        os.chdir(here)
    return found, took, (home / "course" / "record.db").stat().st_size


def main(home: Path) -> int:
    """Print the term, and tell what differs from its design and why."""
    found, took, size = rehearse(home.resolve())
    missing = 0
    for step, told in found:
        lacks = [words for words in step.seen if words not in told]
        missing += len(lacks)
        sys.stdout.write(f"{step.day or '-':10}  seatwork {' '.join(step.words)}\n")
        sys.stdout.write(
            f"            designed: {step.designed or '-'}\n            seen: {told}\n"
        )
        sys.stdout.write(f"            why: {step.why}\n" if step.why else "")
        sys.stdout.write(f"            LACKS: {lacks}\n" if lacks else "")
    sys.stdout.write(f"{len(found)} commands, {took:.1f} s, {size:,} bytes, {missing} lacking\n")
    return 1 if missing else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
