"""Every door where text of a learner, an instructor or a print comes in, as one call on bytes.

A door takes whatever comes. It may read it, or refuse it with the one error in one sentence;
anything else is a find. What a door reads must be of a kind that the rest can work with, which
`checked` says for each.
"""

import atexit
import functools
import math
import tempfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path
from random import Random
from typing import Any

from seatwork import hardware, inspection, notes, questions, units
from seatwork.entries.measures import ANGLE, LENGTH, SPINDLE_SPEED
from seatwork.entries.typed import read as read_typed_number
from seatwork.errors import SeatworkError
from seatwork.files import read_table
from seatwork.marking import answers, pick_file, roster, sheets, submissions, typed_back
from seatwork.marking.evening_file import read_evenings
from seatwork.marking.handed import Forms, HandedOut
from seatwork.plan.part_files import plan_part
from seatwork.record import lines
from seatwork.record.old_files import read_handed_out, read_overrides
from seatwork.shop import cautions, cutters, glossary, machines, materials, rules, wording
from seatwork.shop.folder import package_text, read_toml
from seatwork.takehome.calls import bench_call

LONGEST = 2500  # letters of a line of an error


class FoundError(AssertionError):
    """A door did something else than to read or to refuse in one sentence."""


@dataclass(frozen=True, slots=True)
class Door:
    """A door.

    Parameters
    ----------
    name : str
        Its name, and that of its corpus.
    enter : callable
        Takes the bytes; raises SeatworkError alone.
    samples : tuple of bytes
        What is right there: a fuzzer begins with these.
    """

    name: str
    enter: Callable[[bytes], None]
    samples: tuple[bytes, ...]

    def try_(self, raw: bytes) -> bool:
        """Try what came; tell whether it was read, raise `FoundError` for a find."""
        try:
            self.enter(raw)
        except SeatworkError as error:
            told(error, self.name)
            return False
        return True


def told(error: SeatworkError, door: str) -> None:
    """Refuse an error that no person can read; one of a line of text is one line itself."""
    said = str(error)
    lines = [said] if door in LINES else said.split("\n")
    if not said or not all(one.isprintable() for one in lines):
        raise FoundError(f"{door}: no plain sentence: {said[:300]!r}")
    if max(map(len, lines)) > LONGEST:
        raise FoundError(f"{door}: {len(said)} letters of error: {said[:200]!r}")


LINES = {"length", "angle", "speed", "feed", "number", "note", "answer", "typed", "screw", "drill",
         "thread", "washer", "bench call"}  # fmt: skip
"""Doors of one line of text, whose error is one line too; files may list several faults."""


def line(read: Callable[[str], Any], checked: Callable[[Any], None]) -> Callable[[bytes], None]:
    """Make a door of a reader of one line of text."""

    def enter(raw: bytes) -> None:
        checked(read(raw.decode("utf-8", "surrogateescape")))

    return enter


def above(value: float) -> None:
    """Refuse a number that no sum can go on with."""
    if not isinstance(value, float | int | Decimal) or not math.isfinite(value):
        raise FoundError(f"it was read as {value!r}")


def nothing(value: object) -> None:
    """Ask nothing of what was read."""


def comes_back(callout: notes.Callout) -> None:
    """Ask that a note that was read can be written or refused, and is read the same again."""
    try:
        text = notes.write(callout)
    except SeatworkError:
        return
    again = notes.read(text)
    if len(again.features) != len(callout.features):
        raise FoundError(f"written as {text!r} it has {len(again.features)} features")


@functools.cache
def room() -> Path:
    """Make one folder for the files of this process; it goes when the process ends."""
    made = tempfile.TemporaryDirectory(prefix="doors-")
    atexit.register(made.cleanup)
    return Path(made.name)


def file(name: str, read: Callable[[Path], Any]) -> Callable[[bytes], None]:
    """Make a door of a reader of a file of that name, which is given the file's place."""

    def enter(raw: bytes) -> None:
        place = room() / name
        place.parent.mkdir(parents=True, exist_ok=True)
        place.write_bytes(raw)
        read(place)

    return enter


@functools.cache
def asked() -> list[questions.Question]:
    """Draw one question of each type."""
    return [kind.draw(Random(7)) for _, kind in sorted(questions.all_types().items())]


def judged(text: str) -> None:
    """Judge a text as the answer to a question; its first letter chooses the question."""
    drawn = asked()
    question = drawn[ord(text[:1] or "a") % len(drawn)]
    for part in question.parts:
        questions.judge(part, text[1:])


def typed_number(text: str) -> float:
    """Read a number as a learner types it; its first letter chooses what is asked."""
    measure = (LENGTH, ANGLE, SPINDLE_SPEED)[ord(text[:1] or "a") % 3]
    return float(read_typed_number(text[1:], measure, ("inch", "metric")[len(text) % 2]).value)


def shop_list(reader: Callable[[Path], Any]) -> Callable[[Path], Any]:
    """Read a list of the shop from the folder that a file lies in."""
    return lambda place: reader(place.parents[1])


def typed_papers(place: Path) -> None:
    """Read answers typed from paper, for two learners of one sheet."""
    sheet = cones()
    form = HandedOut(sitting=1, form=1, mode="practice", sizes={}, versions={})
    typed_back.read(place, sheet, Forms(sheets={"cones": {"L07": [form], "L09": [form]}}))


@functools.cache
def cones() -> sheets.Sheet:
    """Load the sheet that papers answer."""
    return sheets.load("cones")


def collected(place: Path) -> None:
    """Collect what was handed in: nothing stops the others."""
    for paper in submissions.collect(place.parent):
        if (paper.file is None) is (not paper.doubt) and paper.file is None:
            raise FoundError("a paper was left out without a word")


def near(reader: Callable[[Path], Any]) -> Callable[[Path], Any]:
    """Make a reader of a folder one of a file in it."""
    return lambda place: reader(place.parent)


def kept_lines(place: Path) -> list[lines.Line]:
    """Read the lines beside a record, whose file the door has written."""
    lines.place_of(place).write_bytes(place.read_bytes())
    return list(lines.read(place))


def sample(*texts: str) -> tuple[bytes, ...]:
    """Write samples as bytes."""
    return tuple(text.encode() for text in texts)


NOTES = (
    "4X ⌀.201 THRU ⌵ ⌀.385 X 82°",
    "⌀6.6 THRU ⌵ FOR M6 CSK SOCKET",
    "M10 × 25/30",
    "17/32 DRILL THRU, SPOTFACE 1-1/4 DIA TO CLEAN UP, .38 MIN FLANGE",
    "18 x 10.6\n11 x 14",
    "2X ⌀.266 THRU ⌵ ⌀.507 X 82° BOTH SIDES",
    "⌀.281 THRU | ⌴ ⌀.438 ↧ .250 +.005/-.000",
)
ANSWERS = (
    '{"format":1,"learner":"L07","sheet":"cones","form":2,"answers":'
    '{"c1":{"parts":[".139 in"],"attempt":1,"tries":2,"hints":1,"sure":true}}}'
)
BETS = '{"format":1,"learner":"L07","picks":{"angle-eight":{"bet":"a","sure":true}}}'
SHEET = """format = 1
title = "Cones"
[[questions]]
id = "c1"
type = "seat-depth"
points = 2
"""
RULES = ('[speeds]\ncountersink_cap = "300 rev/min"\n', '[note]\ninch_tolerance = ".005 in"\n')
CAUTIONS = """closing = "The manual comes first."
[before]
title = "Before any cut"
short = "Glasses on everybody."
hazard = "Flying chips."
do = ["Sleeves up."]
source = "common practice, no source"
"""
GLOSSARY = """note = "From memory."
[[plate]]
name = "cone"
english = "A countersink"
spanish = "Un avellanado"
"""
FORMS = (
    '{"format":2,"sheets":{"cones":{"L07":'
    '[{"sitting":1,"form":1,"mode":"graded","sizes":{},"versions":{}}]}}}'
)
GIVEN = """date,learner,sheet,form,question,points,reason
2026-01-09,L07,cones,1,c1,1,spoken
"""


def of_lines() -> Iterator[Door]:
    """Yield the doors of one line of text."""
    lengths = sample("1-1/4 in", "0,139 mm", '.015"', "15 thou")
    yield Door("length", line(units.length, above), lengths)
    yield Door("angle", line(units.angle, above), sample("82°", "59,5 deg", "100"))
    yield Door("speed", line(units.cutting_speed, above), sample("90 sfm", "30 m/min"))
    yield Door("feed", line(units.feed, above), sample(".004 ipr", "0.1 mm/rev"))
    yield Door("number", line(units.number, above), sample("688", "1,5", "1e3"))
    yield Door("note", line(notes.read, comes_back), sample(*NOTES))
    papers = sample("a.139 in", "bA", "c2 1 3", "d82°", "e")
    yield Door("answer", line(judged, nothing), papers)
    yield Door("typed", line(typed_number, above), sample("c.139 in", "a82°", "b688 rpm"))
    screws = sample("#10 flat head", "M6 SHCS", "1/4 FHMS", "M6 DIN 7991")
    yield Door("screw", line(hardware.screw, nothing), screws)
    yield Door("drill", line(hardware.drill, nothing), sample("#7", "17/64", "6,6 mm", "letter F"))
    threads = sample("1/4-20 UNC-2B", "M8x1.25-6H", "#10")
    yield Door("thread", line(hardware.thread, nothing), threads)
    yield Door("washer", line(hardware.washer, nothing), sample("M6", "3/8 narrow", "M6 lock"))
    yield Door("bench call", line(bench_call, nothing), sample("sw.benches.depth(cut=True)"))


def of_papers() -> Iterator[Door]:
    """Yield the doors of what learners hand in and what a course keeps."""
    parsed = lambda raw: nothing(answers.parse(raw, "L07-cones-2.json"))  # noqa: E731
    yield Door("answer file", parsed, sample(ANSWERS))
    bets = lambda raw: nothing(pick_file.parse(raw, "L07-picks.json"))  # noqa: E731
    yield Door("bets", bets, sample(BETS))
    given_in = sample(ANSWERS, '{"cells": [], "metadata": {}, "nbformat": 4}')
    yield Door("handed in", file("in/L07-cones-2.json", collected), given_in)
    learners = sample("learner,group,extra_tries\nL07,evening,1\n", "learner;group\nB22;\n")
    yield Door("roster", file("course/roster.csv", near(roster.read)), learners)
    typed = sample("learner,question,answer\nL07,c1,.139 in\nL07,c3a,82\n")
    yield Door("typed papers", file("typed.csv", typed_papers), typed)
    measured = sample("part,diameter [mm],depth,unit\n1,9.8,2.1,mm\nL07-2,.385 in,,\n")
    yield Door("readings", file("readings.csv", inspection.read_readings), measured)
    yield Door("lines", file("record.db", kept_lines), sample('{"head":{"id":"ab"},"body":{}}\n'))
    yield Door("handed out", file("old/handed_out.json", near(read_handed_out)), sample(FORMS))
    yield Door("overrides", file("old/overrides.csv", near(read_overrides)), sample(GIVEN))


def of_lists() -> Iterator[Door]:
    """Yield the doors of files that an instructor edits."""
    part = sample("feature,note,material,machine\nA,⌀.201 THRU ⌵ ⌀.385 X 82°,,knee mill\n")
    planned = functools.partial(plan_part, material="1018 steel", machine="knee mill")
    yield Door("part", file("part.csv", planned), part)
    yield Door("sheet", file("own.toml", sheets.read), sample(SHEET))
    for name, reader in (("cutters", cutters), ("machines", machines), ("materials", materials)):
        whole = package_text(f"{name}.csv").encode().splitlines(keepends=True)
        yield Door(name, file(f"shop/{name}.csv", shop_list(reader)), (b"".join(whole[:4]),))
    edited = {
        "house_rules": (rules, RULES),
        "wording": (wording, ('flush = "even with the face"\n',)),
        "cautions": (lambda folder: cautions(folder=folder), (CAUTIONS,)),
        "glossary": (glossary, (GLOSSARY,)),
        "evenings": (read_evenings, ("format = 1\n[[evening]]\ntitle = 1\n[minutes]\n",)),
    }
    for name, (read, texts) in edited.items():
        yield Door(name, file(f"shop/{name}.toml", shop_list(read)), sample(*texts))
    tables = sample("a,b\n1,2\n", 'a\tb\n"1"\t2\n', "\ufeffa;b\r\n1;2\r\n")
    yield Door("table", file("any.csv", functools.partial(read_table, columns=("a", "b"))), tables)
    yield Door("toml", file("any.toml", read_toml), sample('a = 1\n[b]\nc = "d"\n'))


DOORS = {door.name: door for each in (of_lines, of_papers, of_lists) for door in each()}
