"""``seatwork question new``, ``check``, ``allow``: question types, own ones and the package's."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from seatwork.cli.course_folder import Course, folder_of
from seatwork.errors import SeatworkError
from seatwork.questions.checking.places import stem
from seatwork.shop import find

if TYPE_CHECKING:
    from seatwork.questions import Question

app = typer.Typer(help="Question types of your own.", no_args_is_help=True)


@app.command()
def new(
    name: Annotated[str, typer.Argument(help="Such as chamfer-mouth.")],
    here: Annotated[
        bool, typer.Option("--here", help="Into this folder, not into the workbook's questions.")
    ] = False,
    drawing: Annotated[bool, typer.Option("--drawing", help="Begin a drawing, too.")] = False,
) -> None:
    """Write a question type to begin with; it passes the check as it stands.

    In a workbook it goes into the folder questions; in the project it is one of the package,
    with a drawing and a proof.

    Example: seatwork question new chamfer-mouth
    """
    from seatwork.questions.checking.beginning import begin

    files = begin(name, here=here, drawing=drawing)
    for file in files:
        typer.echo(f"Written: {_near(file)}")
    mine = " --mine" if find() else ""
    name = files[0].stem.replace("_", "-") if here or not name.endswith(".py") else name
    typer.echo(f"Change it, then run seatwork question check {name}{mine}.")


@app.command()
def check(
    name: Annotated[str, typer.Argument(help="A question type, or its file; its code is run.")],
    draws: Annotated[
        int, typer.Option("--draws", min=1, help="How many questions are drawn and looked at.")
    ] = 300,
    mine: Annotated[
        bool, typer.Option("--mine", help="I wrote this file, or trust who did.")
    ] = False,
    pin: Annotated[
        bool, typer.Option("--pin", help="Keep three draws in a file, to see later what changed.")
    ] = False,
) -> None:
    """Say in one list what a question type still lacks, and on which sheets it stands.

    Checking runs its file. In a workbook say that it is yours: it may be one handed in.

    Example: seatwork question check chamfer-mouth --mine
    """
    from seatwork.marking.outline import asked_on
    from seatwork.questions import lacks
    from seatwork.questions.checking import pinning

    kind = _kind(name, mine=mine)
    found = lacks(kind, draws)
    if pin and found == tuple(pinning.faults(kind)):
        typer.echo(f"Pinned: {_near(pinning.pin(kind))}")
        found = ()
    for line in found:
        typer.echo(f"  {line}")
    typer.echo(f"{kind.id}: " + ("keeps the contract." if not found else f"{len(found)} to mend."))
    sheets = asked_on(find()).get(kind.id, ())
    typer.echo(f"It stands on these sheets: {', '.join(sheets) or 'none yet'}.")
    if not pinning.is_pinned(kind):
        typer.echo(f"Its draws are not pinned yet: seatwork question check {kind.id} --pin.")
    raise typer.Exit(min(len(found), 1))


@app.command()
def allow(
    names: Annotated[list[Path], typer.Argument(help="Files of question types, or a folder.")],
    named: Course = None,
) -> None:
    """Let a course run question files of yours, as they are now; none is run here.

    A file that is changed later must be allowed again. Look each through: it can do whatever
    you can do on this computer.

    Example: seatwork question allow questions/chamfer_mouth.py --course course
    """
    from seatwork.marking.allowed import LIST, allow

    folder = folder_of(named)
    found = allow(folder, names)
    typer.echo(f"Allowed for {folder}, as they are now: {', '.join(found)}.")
    typer.echo(f"The list is {folder / LIST}. Name the course when you hand out and mark.")


def _kind(name: str, *, mine: bool) -> "type[Question]":
    """Find a type by its file, in the package, or in the workbook."""
    from seatwork.questions.registry import all_types, load

    plain = name.replace("_", "-").casefold()
    if plain in all_types():
        return all_types()[plain]
    is_file = name.endswith(".py")
    files = [Path(name)] if is_file else [place / f"{stem(plain)}.py" for place in _own_folders()]
    file = next((file for file in files if file.is_file()), files[0])
    if not is_file and not file.is_file():
        raise SeatworkError(
            name,
            "the package has no question type of that name, and there is no "
            + " and no ".join(str(_near(file)) for file in files),
            "check its spelling, or name its file",
        )
    if file.is_file() and find() and not (mine or (is_file and file.is_absolute())):
        fault = "checking it runs it, and a workbook may be one that was handed in"
        raise SeatworkError(str(_near(file)), fault, "add --mine if you wrote it")
    return load(file)


def _own_folders() -> list[Path]:
    """List the folders where a type of one's own may lie: this one, and the workbook's."""
    workbook = find()
    return [Path.cwd(), *([workbook / "questions"] if workbook else [])]


def _near(file: Path) -> Path:
    """Return a path as seen from here, where it lies below."""
    here = Path.cwd()
    return file.relative_to(here) if file.is_absolute() and file.is_relative_to(here) else file
