"""``hand-out`` and ``mark`` with ``--rooms``: many rooms at once, and what each came to."""

from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Annotated, Any

import typer

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.handing_out import Handout
from seatwork.marking.sheets import Sheet
from seatwork.marking.speaking import voice_at
from seatwork.record.giving import other_mode
from seatwork.school import Room, RoomGiven, RoomMarked, hand_out_rooms, mark_rooms, rooms
from seatwork.school.layout import passed_over
from seatwork.school.workers import WITHOUT, has_workers

Workers = Annotated[
    int, typer.Option(min=1, max=64, help="Processes for many rooms; wants the extra school.")
]
Scheduler = Annotated[
    str, typer.Option(help="Address of a Dask scheduler for them, on a network you trust.")
]


def refuse_own_types(questions: Path | None, workers: int, scheduler: str) -> None:
    """Refuse question types of one's own where other processes would have to know them."""
    if questions and (workers > 1 or scheduler):
        fault = "workers do not know question types of your own"
        raise SeatworkError("--questions", fault, "leave --workers and --scheduler out")


def hand_out_by_rooms(
    plan: Sheet,
    folders: Sequence[Path],
    how: Mapping[str, Any],
    workers: int,
    scheduler: str,
    paper: str | None,
) -> None:
    """Hand a sheet out in every room of some folders, and say a line for each.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    folders : sequence of Path
        Folders of rooms.
    how : mapping
        Sitting, mode, due and day, as for `seatwork.school.hand_out_rooms`.
    workers, scheduler : int, str
        As the command has them.
    paper : str or None
        Size of the pages to print; None to print none.

    Raises
    ------
    typer.Exit
        With 1 if it could not be handed out in a room.
    """
    found = _rooms(folders, workers, scheduler)
    refused, lines = 0, []
    with bar("rooms", len(found)) as progress:
        for one in hand_out_rooms(
            found, plan, **how, workers=workers, scheduler=scheduler, progress=progress
        ):
            said, went_well = _given(plan, one, how, paper)
            lines.append((one.room.name, said))
            refused += not went_well
    for _, said in sorted(lines):
        typer.echo(f"  {said}")
    count = f"{len(found) - refused} of {len(found)} rooms"
    typer.echo(f"{plan.title}: handed out in {count}.{_others(folders)}")
    if refused:
        raise typer.Exit(1)


def _others(folders: Sequence[Path]) -> str:
    """Name the folders that are no rooms, and return how many there are as a sentence."""
    others = [line for folder in folders for line in passed_over(folder)]
    for line in others:
        typer.echo(f"  {line}")
    return f" Passed over: {len(others)}." if others else ""


def _given(
    plan: Sheet, one: RoomGiven, how: Mapping[str, Any], paper: str | None
) -> tuple[str, bool]:
    """Return the line of a room, and whether all went well there."""
    room = one.room
    if one.refused:
        return f"{room.name}: not handed out: {one.refused}", False
    line = f"{room.name}: {len(one.given)} forms in {room.given}"
    stay = other_mode(one.given, how["mode"])
    line += f" ({stay})" if stay else ""
    if paper is None:
        return line, True
    try:
        papers, _ = printed(plan, one.given, room.given, room.course, how["sitting"], [], paper)
    except SeatworkError as error:
        return f"{line}, not printed: {error}", False
    return f"{line}, to print {papers}", True


def printed(
    plan: Sheet,
    given: Sequence[Handout],
    to: Path,
    course: Path,
    sitting: int,
    only: Sequence[str],
    size: str,
    language: str = "",
) -> tuple[Path, Path]:
    """Print the forms of a class as one PDF, and their key; return where both lie.

    Parameters
    ----------
    plan, given : Sheet, sequence of Handout
        The worksheet, and the forms.
    to, course : Path
        Folder of the learners' folders, and the instructor's.
    sitting, only, size, language : int, sequence of str, str, str
        As the command has them; no language takes that of the workbook that holds the course.
    """
    from seatwork.cards.paper import print_class, which_papers

    which = which_papers(sitting, only)
    with files.lock(course):
        return print_class(
            plan,
            given,
            to=to,
            keep=course,
            which=which,
            paper=size,
            language=language or voice_at(course).language,
        )


def _rooms(folders: Sequence[Path], workers: int, scheduler: str) -> list[Room]:
    """Return the rooms of some folders, and say so where there are no workers for them."""
    found = [room for folder in folders for room in rooms(folder)]
    if (workers > 1 or scheduler) and not has_workers():
        typer.echo(WITHOUT)
    return found


def mark_by_rooms(
    plan: Sheet,
    folders: Sequence[Path],
    day: str,
    handed_in: str,
    workers: int,
    scheduler: str,
) -> None:
    """Mark a sheet in every room of some folders, and say a line for each.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    folders : sequence of Path
        Folders of rooms.
    day, handed_in, scheduler : str
        As the command has them; empty for none.
    workers : int
        Processes.

    Raises
    ------
    typer.Exit
        With 1 if a room could not be marked.
    """
    found = _rooms(folders, workers, scheduler)
    with bar("rooms", len(found)) as progress:
        done = mark_rooms(
            found,
            plan,
            day=day,
            handed_in=handed_in,
            workers=workers,
            scheduler=scheduler,
            progress=progress,
        )
        said = sorted(done, key=lambda one: one.room.name)
    for one in said:
        typer.echo(f"  {_line(one)}")
    beside = _others(folders)
    refused = sum(one.marking is None for one in said)
    typer.echo(f"{plan.title}: {len(said) - refused} of {len(said)} rooms marked.{beside}")
    if refused:
        raise typer.Exit(1)


def _line(one: RoomMarked) -> str:
    if one.marking is None:
        return f"{one.room.name}: not marked: {one.refused}"
    done = one.marking
    waits = sum(paper.needs_a_person for paper in done.marked)
    person = f", {waits} need a person: seatwork class --course {one.room.course}" if waits else ""
    asked = [f"{paper.name}: {paper.question}" for paper in done.marked if paper.question]
    ask = "".join(f"\n    to ask: {said}" for said in asked)
    ask += "".join(f"\n    {said}" for said in done.notes)
    return (
        f"{one.room.name}: {done.new} new, {done.known} known already,"
        f" {done.changed} changed{person}{ask}"
    )


@contextmanager
def bar(what: str, total: int) -> Iterator[Any]:
    """Show how many rooms, or learners, are done, on a terminal."""
    from rich.progress import Progress

    with Progress(transient=True) as progress:
        shown = progress.add_task(what, total=total)
        yield lambda done: progress.update(shown, completed=done)
