"""``seatwork hand-out`` and ``roster``."""

from pathlib import Path
from random import SystemRandom
from typing import Annotated

import typer

from seatwork.cli.by_rooms import (
    Scheduler,
    Workers,
    hand_out_by_rooms,
    printed,
    refuse_own_types,
)
from seatwork.cli.course_folder import Course, Questions, day_of, folder_of, sheet_of
from seatwork.errors import SeatworkError
from seatwork.marking import roster
from seatwork.marking.languages import translator
from seatwork.record import giving

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
    language: Annotated[
        str, typer.Option(help="Of the paper, en or es; the workbook's if not given.")
    ] = "",
    questions: Questions = None,
    by_rooms: Annotated[
        list[Path] | None,
        typer.Option("--rooms", help="A folder of rooms, each with a course and its roster."),
    ] = None,
    workers: Workers = 1,
    scheduler: Scheduler = "",
) -> None:
    """Give every learner on the roster an own form of a sheet.

    Example: seatwork hand-out cones --course course --to given --due 2026-09-21 --paper
    """
    when, due = day_of(day), day_of(due) if due else ""
    if paper:
        from seatwork.cards.papers import page_size

        page_size(size)  # refused before anything is handed out
        if language:
            translator(language)
    if by_rooms:
        if named or target or only:
            fault, remedy = "each room has a course of its own", "leave --course, --to, --only out"
            raise SeatworkError("--rooms", fault, remedy)
        refuse_own_types(questions, workers, scheduler)
        how = {"sitting": sitting, "mode": mode, "due": due, "day": when}
        plan = sheet_of(sheet, None, questions)
        hand_out_by_rooms(plan, by_rooms, how, workers, scheduler, size if paper else None)
        return
    if workers > 1 or scheduler:
        raise SeatworkError("--workers", "they serve many rooms", "add --rooms, or leave it out")
    plan, course_folder = sheet_of(sheet, named, questions), folder_of(named)
    learners = _among(giving.class_of(course_folder, when), only or [])
    place = target or course_folder / "given"
    given = giving.hand_out(
        course_folder, plan, learners, sitting=sitting, mode=mode, target=place, due=due, day=when
    )
    until = f", due {due}" if due else ""
    typer.echo(
        f"{plan.title}: {len(given)} forms in {place}{until}. Keep {course_folder} to yourself."
    )
    for line in filter(None, [giving.other_mode(given, mode)]):
        typer.echo(f"  {line}.")
    if paper:
        which = learners if only else []
        papers, key = printed(plan, given, place, course_folder, sitting, which, size, language)
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
