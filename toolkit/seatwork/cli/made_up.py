"""``seatwork slips --made-up``: a made-up class makes a sheet's slips, and which are named."""

import typer

from seatwork.cli.by_rooms import bar
from seatwork.marking.sheets import Sheet
from seatwork.school import slip_figures
from seatwork.school.workers import WITHOUT, has_workers


def try_slips(plan: Sheet, learners: int, workers: int, scheduler: str) -> None:
    """Say of each slip of a sheet how often it was made, and how often named.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    learners : int
        How many made-up learners answer it.
    workers, scheduler : int, str
        As the command has them.
    """
    if (workers > 1 or scheduler) and not has_workers():
        typer.echo(WITHOUT)
    with bar("learners", learners) as progress:
        found = slip_figures(
            plan, learners, workers=workers, scheduler=scheduler, progress=progress
        )
    for one in found:
        typer.echo(f"  {one}")
    made = sum(one.made for one in found)
    named, among = sum(one.named for one in found), sum(one.among for one in found)
    typer.echo(
        f"{plan.title}, {learners} made-up learners, a slip in each question: {made} made, "
        f"{named} named, {among} named with others or asked about, {made - named - among} not."
    )
