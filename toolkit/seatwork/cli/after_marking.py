"""``seatwork why``, ``slips``, ``override``: what comes after marking."""

from pathlib import Path
from typing import Annotated

import typer

from seatwork.cli.by_rooms import Scheduler, Workers, refuse_own_types
from seatwork.cli.course_folder import Course, Questions, day_of, folder_of, sheet_of
from seatwork.cli.feedback_again import feedback_again, points_of
from seatwork.cli.made_up import try_slips
from seatwork.errors import SeatworkError
from seatwork.marking import course
from seatwork.marking.names import sheet_name
from seatwork.record.course_record import open_record, writable_record
from seatwork.record.deciding import SHORT
from seatwork.record.giving import forms
from seatwork.record.paper_results import results
from seatwork.record.points_by_hand import Override, decided_form
from seatwork.record.points_by_hand import override as decide
from seatwork.record.tables_out import write_marks


def why(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet.")],
    learner: Annotated[str, typer.Argument(help="Learner code.")],
    question: Annotated[str, typer.Argument(help="Question, such as c1 or c3b.")],
    number: Annotated[str, typer.Argument(help="The number they wrote.")],
    form: Annotated[
        int | None, typer.Option(min=1, max=99, help="Form of the sheet, if there are several.")
    ] = None,
    named: Course = None,
    questions: Questions = None,
) -> None:
    """Find out what gives a learner's number; for the instructor alone.

    Example: seatwork why cones L4711 c1 .0169
    """
    from seatwork.marking.why import reasons

    plan, handed_out = sheet_of(sheet, named, questions), forms(folder_of(named))
    found = reasons(handed_out, plan, learner, question, number, form)
    for reason in found:
        typer.echo(f"  {reason.value:.5f}  {reason.how}")
    if not found:
        typer.echo("Nothing known gives this number; it is worth asking how it came about.")


def slips(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet.")] = "",
    named: Course = None,
    learners: Annotated[bool, typer.Option("--learners", help="Name their codes too.")] = False,
    picks: Annotated[
        Path | None,
        typer.Option(help="A folder of answers: count the bets in it instead, without names."),
    ] = None,
    made_up: Annotated[
        int, typer.Option(min=0, help="Let so many made-up learners make them: which are named?")
    ] = 0,
    questions: Questions = None,
    workers: Workers = 1,
    scheduler: Scheduler = "",
) -> None:
    """Count the slips of a sheet that was marked, the most frequent first.

    Example: seatwork slips cones --course course; for bets: seatwork slips --picks handed_in;
    to try your own sheet before it is handed out: seatwork slips mine --made-up 1000
    """
    from seatwork.marking.slip_count import counted

    if picks is not None:
        _count_picks(picks, sheet)
        return
    if made_up:
        refuse_own_types(questions, workers, scheduler)
        try_slips(sheet_of(sheet, named, questions), made_up, workers, scheduler)
        return
    name, course_folder = sheet_name(sheet), folder_of(named)
    record = open_record(course_folder)
    try:
        found = results(record, name, day_of(""))
    finally:
        record.close()
    if not any(one["questions"] for one in found["files"]):
        raise SeatworkError(name, "that sheet is not marked yet", "run: seatwork mark")
    rows = counted(found)
    for row in rows:
        typer.echo(f"{row}" + (f" ({' '.join(row.learners)})" if learners else ""))
    unknown = [f"{one['learner']} {one['question']}" for one in found["unknown"]]
    typer.echo(f"Known slips: {len(rows)}. Wrong for no known reason: {len(unknown)}.")
    if learners and unknown:
        typer.echo(f"To ask: {', '.join(unknown)}.")


def _count_picks(folder: Path, sheet: str) -> None:
    """Count what a class bet on each pick."""
    from seatwork.marking.pick_file import handed_in
    from seatwork.picks.counts import counted

    if sheet:
        fault = "bets belong to no sheet"
        raise SeatworkError(sheet, fault, "give --picks with a folder, and no sheet")
    if not folder.is_dir():
        raise SeatworkError(str(folder), "there is no such folder", "name the folder of answers")
    found = list(handed_in(folder))
    for row in counted(found):
        typer.echo(str(row))
    typer.echo(f"First bets of {len(found)} learners. They are no marks.")


def override(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet.")],
    learner: Annotated[str, typer.Argument(help="Learner code.")],
    question: Annotated[str, typer.Argument(help="Question, such as c1.")],
    points: Annotated[str, typer.Argument(help="Points you give, such as 1.5.")],
    reason: Annotated[str, typer.Argument(help="Why, in a few words.")],
    form: Annotated[
        int | None, typer.Option(min=1, max=99, help="Form of the sheet, if several are in.")
    ] = None,
    named: Course = None,
    day: Annotated[str, typer.Option(help="Day of the decision; today if not given.")] = "",
) -> None:
    """Give points yourself, with the reason; they count in the marks at once.

    Example: seatwork override cones L4711 c1 2 "working right, misread the print"
    """
    given = Override(learner, sheet, form, question, _number(points), reason)
    course_folder, when = folder_of(named), day_of(day)
    course.read_key(course_folder)
    record = writable_record(course_folder, when)
    try:
        made = decide(record, given, when)
        number = decided_form(record, made)
        found = write_marks(record, course_folder, sheet, when)
    finally:
        record.close()
    again = feedback_again(learner, sheet, number, named, when)
    theirs = (one for one in found["files"] if (one["learner"], one["form"]) == (learner, number))
    paper = next(theirs)
    typer.echo(f"Kept and counted: {learner}, {sheet}, form {number}: {points_of(paper)}.{again}")
    typer.echo(f'Undo: seatwork undo {made[:SHORT]} "reason"')


def _number(text: str) -> float:
    """Read points as they are typed, with a point or a comma."""
    try:
        return float(text.replace(",", "."))
    except ValueError as error:
        fault, remedy = "that is no number of points", "write one such as 1.5"
        raise SeatworkError(text, fault, remedy) from error
