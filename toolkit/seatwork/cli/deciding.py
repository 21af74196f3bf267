"""``seatwork excuse``, ``lost``, ``void``, ``count-paper``, ``undo`` and their like: decisions."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Annotated, NamedTuple

import typer

from seatwork.cli.course_folder import Course, day_of, folder_of
from seatwork.cli.feedback_again import papers_now, told_anew
from seatwork.errors import SeatworkError
from seatwork.marking import course
from seatwork.record import choosing, deciding
from seatwork.record.course_record import has_old_files, has_record, open_record, writable_record
from seatwork.record.deciding import SHORT
from seatwork.record.history import Line
from seatwork.record.history import history as history_of
from seatwork.record.keeping import Record
from seatwork.record.tables_out import write_all_marks

Learner = Annotated[str, typer.Argument(help="Learner code.")]
Sheet = Annotated[str, typer.Argument(help="Name of the sheet.")]
Reason = Annotated[str, typer.Argument(help="Why, in a few words; no names.")]
Day = Annotated[str, typer.Option(help="Day of the decision; today if not given.")]
Sitting = Annotated[int, typer.Option(min=1, max=99, help="2 for the first re-test.")]


class Deciding(NamedTuple):
    """A record to decide in.

    Parameters
    ----------
    record : Record
        The term record.
    day : str
        Year-month-day.
    changed : list of str
        Filled at the end: of each paper that the decision changed, what it has now.
    """

    record: Record
    day: str
    changed: list[str]


@contextmanager
def deciding_in(named: Path | None, day: str) -> Iterator[Deciding]:
    """Give the record to decide in; the marks, and feedback of before, are written anew then."""
    folder, when = folder_of(named), day_of(day)
    if not has_record(folder) and not has_old_files(folder):
        open_record(folder)  # says what is missing
    course.read_key(folder)
    record = writable_record(folder, when)
    changed: list[str] = []
    try:
        before = papers_now(record, folder, when)
        yield Deciding(record, when, changed)
        after = papers_now(record, folder, when)
        write_all_marks(record, folder, when)
    finally:
        record.close()
    changed += told_anew(before, after, named, when)


def _kept(what: str, made: str, changed: list[str]) -> None:
    typer.echo(f'{what} Undo: seatwork undo {made[:SHORT]} "reason"')
    for line in changed:
        typer.echo(f"  {line}")


def excuse(
    sheet: Sheet,
    learner: Learner,
    reason: Reason,
    sitting: Sitting = 1,
    named: Course = None,
    day: Day = "",
) -> None:
    """Excuse a learner from one sitting of a sheet: it is no zero.

    Example: seatwork excuse angles L05 "court date"
    """
    with deciding_in(named, day) as (record, when, changed):
        made = deciding.excuse(record, sheet, learner, reason, when, sitting)
    _kept(f"{learner}, {sheet}: excused.", made, changed)


def lost(
    sheet: Sheet,
    learner: Learner,
    reason: Reason,
    sitting: Sitting = 1,
    named: Course = None,
    day: Day = "",
) -> None:
    """Say that a learner's paper was lost, through no fault of theirs: no zero.

    Example: seatwork lost angles L07 "lost in the shop"
    """
    with deciding_in(named, day) as (record, when, changed):
        made = deciding.lose(record, sheet, learner, reason, when, sitting)
    _kept(f"{learner}, {sheet}: paper lost. Print it again, or give a re-test.", made, changed)


def void(
    sheet: Sheet,
    learner: Learner,
    reason: Reason,
    sitting: Sitting = 1,
    named: Course = None,
    day: Day = "",
) -> None:
    """Say that a sitting of a learner gives no mark: it is no zero, and the paper stays kept.

    Example: seatwork void angles L07 "two sheets were mixed up"
    """
    with deciding_in(named, day) as (record, when, changed):
        made = deciding.void(record, sheet, learner, reason, when, sitting)
    _kept(f"{learner}, {sheet}: void, no mark and no zero. Give a re-test.", made, changed)


def count_paper(
    paper: Annotated[str, typer.Argument(help="First signs of the paper, from history.")],
    reason: Reason,
    named: Course = None,
    day: Day = "",
) -> None:
    """Let this paper count, of several of one form; all of them stay kept.

    Example: seatwork count-paper 4f2a "the other is a copy"
    """
    with deciding_in(named, day) as (record, when, changed):
        made, learner = choosing.count_paper(record, paper, reason, when)
    _kept(f"{learner}: this paper counts.", made, changed or ["The marks stay as they are."])


def leave(learner: Learner, reason: Reason, named: Course = None, day: Day = "") -> None:
    """Say that a learner left the course; marks stay, and nothing more is asked for.

    Example: seatwork leave L10 "moved away"
    """
    with deciding_in(named, day) as (record, when, changed):
        made = deciding.leave(record, learner, reason, when)
    _kept(f"{learner} left the course; marks stay.", made, changed)


def sign(
    learner: Learner,
    machine: Annotated[str, typer.Argument(help='The machine, such as "bench drill press".')],
    paper_at: Annotated[
        str, typer.Option("--paper-at", help='Where the paper lies, such as "binder 2026".')
    ] = "",
    withdrawn: Annotated[
        bool, typer.Option("--withdrawn", help="The signature was withdrawn.")
    ] = False,
    named: Course = None,
    day: Annotated[str, typer.Option(help="Day of the signature; today if not given.")] = "",
) -> None:
    """Keep that somebody signed on paper for a learner at a machine, and where the paper lies.

    Software clears nobody to run a machine.

    Example: seatwork sign L03 "bench drill press" --paper-at "binder 2026, sheet 4"
    """
    with deciding_in(named, day) as (record, when, changed):
        made = deciding.sign(record, learner, machine, paper_at, when, withdrawn=withdrawn)
    said = "that it was withdrawn" if withdrawn else "that a person signed"
    _kept(f"Kept {said}: {learner}, {machine}. Software clears nobody.", made, changed)


def undo(
    target: Annotated[str, typer.Argument(help="First signs of what is taken back.")],
    reason: Reason,
    named: Course = None,
    day: Day = "",
) -> None:
    """Take a decision or a paper back; both stay written down, and an undo can be undone.

    Example: seatwork undo 4f2a "talked it over"
    """
    with deciding_in(named, day) as (record, when, changed):
        made, back = deciding.undo(record, target, reason, when)
    _kept(f"Taken back: {back[:SHORT]}.", made, changed)


def history(
    learner: Learner,
    named: Course = None,
    csv: Annotated[Path | None, typer.Option(help="Write it as CSV.")] = None,
) -> None:
    """Show what the record holds of a learner; what counts now has a = beside it.

    Example: seatwork history L04
    """
    record = open_record(folder_of(named))
    try:
        lines = history_of(record, learner)
    finally:
        record.close()
    if csv is not None:
        _write(csv, lines)
        return
    for one in lines:
        mark = "x" if not one.stands else "=" if one.counts else " "
        text = f"{one.id[:SHORT]} {mark} {one.day} {one.author}  {one.about}: {one.text}"
        typer.secho(text, bold=one.counts, dim=not one.stands)
    typer.echo("x: taken back. =: counts now.")


def _write(path: Path, lines: list[Line]) -> None:
    from seatwork import files

    if path.exists():
        raise SeatworkError(str(path), "there is something of that name already", "name another")
    heads = ("id", "day", "by", "about", "what", "stands", "counts")
    files.write_table(path, heads, ([str(cell) for cell in one] for one in lines))
    typer.echo(f"Wrote {path}: {len(lines)} facts.")
