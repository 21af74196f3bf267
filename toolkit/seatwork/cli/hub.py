"""``seatwork hub``: a room of learners on one server."""

from pathlib import Path
from typing import Annotated

import typer

from seatwork.marking import roster
from seatwork.school.hub_recipe import write_recipe

app = typer.Typer(help="A room of learners on one server.", no_args_is_help=True)


@app.callback()
def hub() -> None:
    """Serve a room of learners from one machine, with JupyterHub."""


@app.command("recipe")
def recipe(
    folder: Annotated[Path, typer.Argument(help="Where the files go.")],
    course: Annotated[
        Path | None, typer.Option("--course", help="Your own folder, whose roster is the class.")
    ] = None,
    instructor: Annotated[str, typer.Option(help="Your name on the hub.")] = "i1",
    replace: Annotated[bool, typer.Option("--replace", help="Over files that are there.")] = False,
) -> None:
    """Write configuration, service file and one page of instructions for JupyterHub.

    Example: seatwork hub recipe hub --course course
    """
    codes = [one.code for one in roster.read(course)] if course else []
    for path in write_recipe(folder, codes, instructor=instructor, replace=replace):
        typer.echo(f"Written: {path}")
    if not codes:
        typer.echo("Nobody may come in yet: write the codes into learners.txt, one a line.")
    typer.echo("Read README.md there first. Seatwork starts no hub by itself.")
