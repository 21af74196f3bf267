"""The instructor's folder as commands take it, and the sheet that goes with it."""

from datetime import date
from pathlib import Path
from typing import Annotated

import typer

from seatwork.errors import SeatworkError
from seatwork.marking import sheets
from seatwork.marking.allowed import allowed
from seatwork.shop import find

HERE = Path("course")
Course = Annotated[
    Path | None,
    typer.Option(
        "--course",
        help="Your own folder; question files of its workbook are run only if you name it.",
        show_default=str(HERE),
    ),
]
Questions = Annotated[
    Path | None,
    typer.Option("--questions", help="Folder of your own question types; its files are run."),
]


def folder_of(course: Path | None) -> Path:
    """Return the instructor's folder: the one named, else ``course`` in the working folder."""
    return HERE if course is None else course


def day_of(text: str) -> str:
    """Return the day that is named as year-month-day, or today."""
    try:
        return (date.fromisoformat(text) if text else date.today()).isoformat()
    except ValueError as error:
        raise SeatworkError(text, "that is no day", "write one such as 2026-03-02") from error


def sheet_of(name: str, course: Path | None, questions: Path | None = None) -> sheets.Sheet:
    """Return a sheet with the question types that may be run for it, and tell what is left out.

    Files of questions are run from a folder that was named: `questions`, or the one in the
    workbook that holds the named `course`; and of that folder only those that the course allows
    by their fingerprint. The working folder alone is never a reason to run one, since it may be
    a workbook that somebody handed in.

    Parameters
    ----------
    name : str
        Name of the sheet.
    course, questions : Path or None
        What was named on the command line.
    """
    if questions is not None and not questions.is_dir():
        raise SeatworkError(str(questions), "there is no such folder", "name one that is there")
    home = find(course) if course else None
    place = home / "exercises" / "sheets" if home else None
    own = questions or (sheets.own_folder(course) if course else None)
    there = place if place and place.is_dir() else None
    plan = sheets.load(name, there, own=own, allowed=allowed(folder_of(course)))
    for fault in plan.faults:
        typer.echo(f"Question file left out: {fault}.", err=True)
    return plan
