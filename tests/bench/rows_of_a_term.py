"""Rows of the table of benchmarks: marking a class, and keeping what was marked."""

import tempfile
from collections.abc import Iterator
from pathlib import Path
from random import Random
from types import ModuleType

from bench.timed import Timed, grown, part, runs
from seatwork.marking import Answer, AnswerFile, Sheet, examples, hand_out, mark
from seatwork.marking.handed import Forms

from tests.as_saved import sealed

DAY = "2026-09-14"
HAND_INS = (1, 100, 10_000)
KEPT = (1_000, 10_000)
DRAWN = 100
"""Forms that are drawn; the rest of a class has the numbers of these, which marks as fast."""
STEPS = {
    "alone": "mark {} hand-ins of 10 questions, none kept",
    "keep": "mark and keep {} hand-ins",
    "again": "mark and keep the same {} again",
    "picture": "class picture of {}",
    "check": "check the record of {}",
    "copy": "back up the record of {}",
}


def of_marking() -> Iterator[Timed]:
    """Time marking of 20 questions beside executing a notebook of them."""
    bench = part("test_marking")
    executed = Timed("execute one worksheet in a kernel", runs(lambda: bench.execute_some(1), 2))
    yield executed
    few = None
    for count in HAND_INS:
        with tempfile.TemporaryDirectory() as made:
            known, sheet = hand_ins(bench, Path(made), count)
            place = Path(made) / "in"
            taken = runs(lambda: mark(known, sheet, place), 9 if count < 1000 else 1)  # noqa: B023
        one = Timed(f"mark {count:,} hand-ins of 20 questions", taken)
        said = f"1/{executed.middle * count / one.middle:.0f} of executing as many"
        step = count / few[1] if few else 0
        yield Timed(one.what, taken, f"{said}; {grown(few[0], one, step)}" if few else said)
        few = (one, count)


def hand_ins(bench: ModuleType, home: Path, count: int) -> tuple[Forms, Sheet]:
    """Write what a class of any size answers to a sheet of 20 questions."""
    sheet, rng, forms = bench.write_sheet(home), Random(9), Forms()
    drawn = hand_out(
        examples.KEY, forms, sheet, [f"L{n:05d}" for n in range(1, min(count, DRAWN) + 1)]
    )
    (home / "in").mkdir()
    for number in range(count):
        one, learner = drawn[number % len(drawn)], f"L{number + 1:05d}"
        if not forms.forms(sheet.name, learner):
            forms.forms(sheet.name, learner).extend(forms.forms(sheet.name, one.given.learner))
        answers = {
            name: Answer(parts=(bench.answer(question.parts[0], rng),))
            for name, question in one.questions.items()
        }
        file = AnswerFile(learner=learner, sheet=sheet.name, form=1, answers=answers)
        file = sealed(file, forms.forms(sheet.name, learner)[0])
        (home / "in" / file.name).write_bytes(file.content())
    return forms, sheet


def of_record() -> Iterator[Timed]:
    """Time a term of one sheet of 10 questions, each step at a thousand and at ten thousand."""
    bench = part("test_record")
    with tempfile.TemporaryDirectory() as made:
        few, many = (bench.measured(Path(made) / str(count), count) for count in KEPT)
        report, files = report_of(Path(made) / str(KEPT[1]) / "record.db"), many["bytes"] / 1e6
    for name, words in STEPS.items():
        pair = [
            Timed(words.format(f"{count:,}"), (found[name],))
            for count, found in zip(KEPT, (few, many), strict=True)
        ]
        growth = grown(*pair, KEPT[1] / KEPT[0])
        if name != "alone":
            growth = f"{many[name] / many['alone']:.2f} of marking them; {growth}"
        if name == "copy":
            growth += f"; {files:.0f} MB"
        yield from (pair[0], Timed(pair[1].what, pair[1].taken, growth))
    yield Timed(f"report of one learner of {KEPT[1]:,}", report)


def report_of(place: Path) -> tuple[float, ...]:
    """Time the page of one learner [s]."""
    from seatwork.record import Record, report

    record = Record(place, examples.KEY)
    try:
        return runs(lambda: report(record, "A000007", DAY), 2)
    finally:
        record.close()
