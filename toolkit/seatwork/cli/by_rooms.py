"""``seatwork mark --rooms``: many rooms marked at once, and what each came to."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import typer

from seatwork.marking.sheets import Sheet
from seatwork.school import RoomMarked, mark_rooms, rooms
from seatwork.school.workers import WITHOUT, has_workers


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
    found = [room for folder in folders for room in rooms(folder)]
    if (workers > 1 or scheduler) and not has_workers():
        typer.echo(WITHOUT)
    with _bar(len(found)) as progress:
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
    refused = sum(one.marking is None for one in said)
    typer.echo(f"{plan.title}: {len(said) - refused} of {len(said)} rooms marked.")
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
    return (
        f"{one.room.name}: {done.new} new, {done.known} known already,"
        f" {done.changed} changed{person}{ask}"
    )


@contextmanager
def _bar(rooms: int) -> Iterator[Any]:
    """Show how many rooms are done, on a terminal."""
    from rich.progress import Progress

    with Progress(transient=True) as progress:
        bar = progress.add_task("rooms", total=rooms)
        yield lambda done: progress.update(bar, completed=done)
