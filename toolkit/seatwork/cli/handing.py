"""``seatwork hand-out`` and ``roster``."""

from pathlib import Path
from random import SystemRandom
from typing import Annotated

import typer

from seatwork import files
from seatwork.cli.course_folder import Course, Questions, day_of, folder_of, sheet_of
from seatwork.errors import SeatworkError
from seatwork.marking import roster

roster_app = typer.Typer(help="The roster: learner codes, no names.", no_args_is_help=True)


def hand_out(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet, such as cones.")],
    named: Course = None,
    target: Annotated[
        Path | None, typer.Option("--to", help="Where each learner's folder goes.")
    ] = None,
    sitting: Annotated[int, typer.Option(min=1, max=20, help="2 for the first re-test.")] = 1,
    only: Annotated[
        list[str] | None, typer.Option(help="This learner alone; give it once for each.")
    ] = None,
    due: Annotated[str, typer.Option(help="The day it is due, such as 2026-09-21.")] = "",
    day: Annotated[str, typer.Option(help="Day of handing out; today if not given.")] = "",
    mode: Annotated[str | None, typer.Option(help="practice or graded.")] = None,
    paper: Annotated[
        bool, typer.Option("--paper", help="Print all forms as one PDF, and a key.")
    ] = False,
    size: Annotated[
        str, typer.Option(help="letter or a4; by house rule display.paper if not given.")
    ] = "",
    questions: Questions = None,
) -> None:
    """Give every learner on the roster an own form of a sheet.

    Example: seatwork hand-out cones --course course --to given --due 2026-09-21 --paper
    """
    from seatwork.record import giving

    plan, course_folder = sheet_of(sheet, named, questions), folder_of(named)
    when, due = day_of(day), day_of(due) if due else ""
    if paper:
        from seatwork.cards.papers import page_size

        page_size(size)  # refused before anything is handed out
    learners = _among(giving.class_of(course_folder, when), only or [])
    place = target or course_folder / "given"
    given = giving.hand_out(
        course_folder, plan, learners, sitting=sitting, mode=mode, target=place, due=due, day=when
    )
    if paper:
        from seatwork.cards.paper import print_class, which_papers

        which = which_papers(sitting, learners if only else [])
        with files.lock(course_folder):
            papers, key = print_class(
                plan, given, to=place, keep=course_folder, which=which, paper=size
            )
    until = f", due {due}" if due else ""
    typer.echo(
        f"{plan.title}: {len(given)} forms in {place}{until}. Keep {course_folder} to yourself."
    )
    if paper:
        typer.echo(f"To print: {papers}, in the order of the roster. The key: {key}.")


def _among(learners: list[str], only: list[str]) -> list[str]:
    """Return the learners named, or all of them."""
    wanted = [code.upper() for code in only]
    for code in wanted:
        if code not in learners:
            fault = "nobody of that code is on the roster, or they left the course"
            raise SeatworkError(code, fault, "check the code")
    return wanted or learners


@roster_app.command("new")
def roster_new(
    count: Annotated[int, typer.Argument(help="How many learners.")],
    named: Course = None,
) -> None:
    """Draw learner codes for a class.

    Example: seatwork roster new 12 --course course
    """
    course_folder = folder_of(named)
    learners = roster.new(course_folder, count, SystemRandom())
    typer.echo(f"{course_folder / roster.ROSTER_FILE}: " + " ".join(one.code for one in learners))


@roster_app.command("show")
def roster_show(
    named: Course = None,
) -> None:
    """Show the roster.

    Example: seatwork roster show
    """
    for learner in roster.read(folder_of(named)):
        typer.echo(f"{learner.code}  {learner.group}")
