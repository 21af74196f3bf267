"""What marking a pile is told as: a line for each thing that a person should know."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from seatwork.marking.marker import Marked
from seatwork.marking.results import Data
from seatwork.marking.sheets import Sheet
from seatwork.marking.typed_back import NO_ROW, WHOLE
from seatwork.record.marking_course import Marking
from seatwork.record.piling import piled
from seatwork.record.tables_out import marks_place

MOST_NAMED = 30
"""Learners named in one line."""
ASK_AND_COUNT = (
    'ask the learner; to let it count: seatwork count-paper ID "why", with the ID that'
    " seatwork history CODE shows."
)
SETTLED = 'seatwork undo ID "why", with the ID that seatwork class --next shows.'
EVEN = 1e-9
"""Points that the last digit of a sum may lack."""


def told(plan: Sheet, done: Marking, folder: Path) -> list[str]:
    """Return what marking a pile of a sheet came to, line by line.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    done : Marking
        What came of it.
    folder : Path
        The instructor's folder, where the marks were written.
    """
    return [
        *_files(plan, done.marked),
        f"Written: {marks_place(folder, plan.name)} and the spreadsheet beside it, "
        "from the record.",
        *_added(done),
        _passed(plan, done.results),
        *(
            f"  changed: {who}, {question}: {_points(old)} before, {_points(new)} now"
            for who, question, old, new in done.changes
        ),
        *_missing(done.results["missing"]),
    ]


def _files(plan: Sheet, marked: Sequence[Marked]) -> Iterator[str]:
    doubtful = [one for one in marked if one.needs_a_person]
    twice = [one for one in marked if one.same_as]
    done = len(marked) - len(doubtful) - len(twice)
    count = "1 file" if len(marked) == 1 else f"{len(marked)} files"
    yield f"{plan.title}: {count}, {done} marked."
    for one in doubtful:
        waits = [item for item in one.scored if item.points is None]
        reasons = [one.doubt, *(f"{item.id}: {item.doubt}" for item in waits)]
        held = piled(one, ()).name
        called = f" (the class calls it {held})" if not one.scored and held != one.name else ""
        yield f"  needs a person: {one.name}: {'; '.join(filter(None, reasons))}{called}"
    yield from _what_to_do(plan.name, doubtful)
    for one in twice:
        yield f"  the same paper twice: {one.name} is the same as {one.same_as}; it counts once"
    for one in marked:
        if one.question:
            yield f"  to ask: {one.name}: {one.question}"


def _what_to_do(sheet: str, doubtful: Sequence[Marked]) -> Iterator[str]:
    if any(one.scored and one.doubt for one in doubtful):
        yield f"  A paper whose form id or seal does not fit is kept: {ASK_AND_COUNT}"
    if any(item.doubt == NO_ROW for one in doubtful for item in one.scored):
        yield f"  A paper that was typed in part: {WHOLE}."
    if any(item.points is None for one in doubtful for item in one.scored):
        line = f'seatwork override {sheet} CODE QUESTION POINTS "reason"'
        yield f"  Read each answer that needs a person, then give its points: {line}"
    if any(not one.scored for one in doubtful):
        yield "  A file that cannot be marked: ask for it again and mark what comes."
        yield f"  One that is settled otherwise: {SETTLED}"


def _added(done: Marking) -> Iterator[str]:
    """Say what a run added to what was marked before."""
    papers = sum(bool(one["questions"]) for one in done.results["files"])
    yield (
        f"  {done.new} new, {done.known} known already, {done.changed} changed;"
        f" papers in the marks now: {papers}."
    )
    if done.late:
        yield f"  after the day: {', '.join(done.late)}."
    for line in done.notes:
        yield f"  {line}."


def _passed(plan: Sheet, after: Data) -> str:
    """Say how many papers reach the pass mark of the sheet, of those that have all their points."""
    settled = [one for one in after["files"] if one["questions"] and one["points"] is not None]
    passed = sum(one["points"] >= plan.pass_mark * one["of"] - EVEN for one in settled)
    return f"  pass mark {plan.pass_mark:.0%}: reached by {passed} of {len(settled)} papers."


def _missing(missing: Sequence[str]) -> Iterator[str]:
    """Name who was given the sheet and has no paper in the marks."""
    more = f" and {len(missing) - MOST_NAMED} more" if len(missing) > MOST_NAMED else ""
    if missing:
        yield f"  no paper in the marks yet: {', '.join(missing[:MOST_NAMED])}{more}."


def _points(value: float | None) -> str:
    return "a person" if value is None else f"{value:g}"
