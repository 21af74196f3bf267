"""``seatwork mark``: what was handed in is marked and kept, and the marks are written anew."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Annotated, Any

import typer

from seatwork import files
from seatwork.cli.by_rooms import Scheduler, Workers, mark_by_rooms, refuse_own_types
from seatwork.cli.course_folder import Course, Questions, day_of, folder_of, sheet_of
from seatwork.errors import SeatworkError
from seatwork.marking import sheets
from seatwork.record.course_record import open_record
from seatwork.record.marking_course import Marking
from seatwork.record.marking_course import mark as mark_and_keep
from seatwork.record.marking_told import told
from seatwork.record.papers_again import MarkedAgain, marked_again


def mark(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet.")],
    answers: Annotated[
        list[Path],
        typer.Argument(help="Folders of answer files, or single ones; CSVs typed from paper."),
    ],
    named: Course = None,
    day: Annotated[str, typer.Option(help="Day of marking; today if not given.")] = "",
    handed_in: Annotated[
        str, typer.Option(help="Day it was handed in, if that is not the day of marking.")
    ] = "",
    feedback: Annotated[bool, typer.Option("--feedback", help="Write feedback.")] = False,
    language: Annotated[str, typer.Option(help="Language of verdicts: en or es.")] = "en",
    questions: Questions = None,
    by_rooms: Annotated[
        bool, typer.Option("--rooms", help="Folders of rooms, each with course and handed_in.")
    ] = False,
    workers: Workers = 1,
    scheduler: Scheduler = "",
) -> None:
    """Mark what was handed in; what was marked before stays. Nothing in it is run.

    Example: seatwork mark cones handed_in typed.csv --course course --feedback
    """
    if by_rooms:
        if named or feedback:
            fault, remedy = "each room has a course of its own", "leave --course and --feedback out"
            raise SeatworkError("--rooms", fault, remedy)
        refuse_own_types(questions, workers, scheduler)
        plan = sheet_of(sheet, None, questions)
        mark_by_rooms(plan, answers, day, handed_in, workers, scheduler)
        return
    if workers > 1 or scheduler:
        raise SeatworkError("--workers", "they mark many rooms", "add --rooms, or leave it out")
    course_folder, when = folder_of(named), day_of(day)
    plan = sheet_of(sheet, named, questions)
    with _bar() as progress:
        done = mark_and_keep(
            course_folder, plan, answers, day=when, handed_in=handed_in, progress=progress
        )
    for line in told(plan, done, course_folder):
        typer.echo(line)
    if feedback:
        places = {(one.file.learner, one.file.form) for one in done.marked if one.file}
        feedback_of(plan, places, course_folder, language, when)
        typer.echo(f"Feedback: {course_folder / 'feedback'}, a page and a PDF for each paper.")
    else:
        _report_old_feedback(done, plan.name, course_folder)


@contextmanager
def _bar() -> Iterator[Any]:
    """Show how many hand-ins are done, on a terminal."""
    from rich.progress import Progress

    with Progress(transient=True) as progress:
        bar = progress.add_task("marking", total=None)
        yield lambda done: progress.update(bar, completed=done)


def _report_old_feedback(done: Marking, sheet: str, folder: Path) -> None:
    """Say whose feedback tells of points that changed."""
    changed = {one[0] for one in done.changes}
    places = {(one.file.learner, one.file.form) for one in done.marked if one.file}
    old = [
        learner
        for learner, form in sorted(places)
        if f"{learner}, form {form}" in changed
        and feedback_place(folder, learner, sheet, form).is_file()
    ]
    if old:
        typer.echo(f"  feedback of before, add --feedback to write it anew: {', '.join(old)}.")


def feedback_of(
    plan: sheets.Sheet, places: set[tuple[str, int]], folder: Path, language: str, day: str
) -> int:
    """Write the feedback of papers as they stand in the record; return how many there are.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    places : set of (str, int)
        Learners and the numbers of their forms.
    folder : Path
        The instructor's folder.
    language, day : str
        Of the verdicts; year-month-day.
    """
    record = open_record(folder)
    try:
        again = list(marked_again(record, plan, places, day))
    finally:
        record.close()
    for one in again:
        _write_feedback(one, folder, language)
    return len(again)


def _write_feedback(one: MarkedAgain, folder: Path, language: str) -> None:
    """Write the feedback of a paper, as a page and on paper, for its owner's eyes only."""
    from seatwork.cards.feedback import feedback_page
    from seatwork.marking.languages import words_in
    from seatwork.marking.learner_words import feedback, page

    written = feedback(one.sheet, one.form, one.marked, words_in(language), language)
    assert one.marked.file is not None
    place = feedback_place(folder, one.marked.file.learner, one.sheet.name, one.form.form)
    files.write(place, page(written), mode=files.PRIVATE)
    feedback_page(place.with_suffix(".pdf"), written)


def feedback_place(folder: Path, learner: str, sheet: str, form: int) -> Path:
    """Return where the feedback of a paper is written."""
    return folder / "feedback" / f"{learner}-{sheet}-{form}.html"
