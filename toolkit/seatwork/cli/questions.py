"""``seatwork question new`` and ``check``: an instructor's own question types."""

from pathlib import Path
from typing import Annotated

import typer

from seatwork.errors import SeatworkError
from seatwork.shop import find

app = typer.Typer(help="Question types of your own.", no_args_is_help=True)


@app.command()
def new(
    file: Annotated[Path, typer.Argument(help="Such as questions/chamfer_mouth.py.")],
) -> None:
    """Write a question type to begin with.

    Example: seatwork question new questions/chamfer_mouth.py
    """
    from seatwork.questions.template import TEMPLATE

    if file.suffix != ".py":
        raise SeatworkError(str(file), "a question type is a Python file", "end its name with .py")
    if file.exists():
        raise SeatworkError(str(file), "that file is there already", "choose another name")
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text(TEMPLATE, encoding="utf-8")
    typer.echo(f"{file}: change it, then run seatwork question check {file} --mine")


@app.command()
def check(
    file: Annotated[Path, typer.Argument(help="The file of your question type; it is run.")],
    mine: Annotated[
        bool, typer.Option("--mine", help="I wrote this file, or trust who did.")
    ] = False,
) -> None:
    """Say what a question type still lacks.

    Checking runs the file. In a workbook say that it is yours: it may be one handed in.

    Example: seatwork question check questions/chamfer_mouth.py --mine
    """
    from seatwork.questions.checking.contract import lacks
    from seatwork.questions.registry import load

    if file.is_file() and not (mine or file.is_absolute() or find() is None):
        fault = "checking it runs it, and a workbook may be one that was handed in"
        raise SeatworkError(str(file), fault, "add --mine if you wrote it")
    kind = load(file)
    found = lacks(kind)
    for line in found:
        typer.echo(f"  {line}")
    typer.echo(f"{kind.id}: " + ("keeps the contract." if not found else f"{len(found)} to mend."))
    raise typer.Exit(min(len(found), 1))
