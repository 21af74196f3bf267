"""The ``seatwork`` command: mounts each command when it is given and tells errors plainly."""

import sys
from importlib import import_module
from typing import Any

import typer
from typer.core import TyperCommand, TyperGroup
from typer.main import get_command

from seatwork import __version__
from seatwork.cli.commands import COMMANDS
from seatwork.errors import SeatworkError


class Deferred(TyperCommand):
    """A command known by name and help line; its module is loaded when it is given."""

    def make_context(self, *args: Any, **kwargs: Any) -> Any:
        """Load the real command and let it take the arguments."""
        return load(str(self.name)).make_context(*args, **kwargs)


class Commands(TyperGroup):
    """The commands of the table, in its order."""

    def __init__(self, **settings: Any) -> None:
        super().__init__(**settings)
        for name, (_, line) in COMMANDS.items():
            self.commands[name] = Deferred(name=name, help=line)


def load(name: str) -> Any:
    """Import a command: a Typer app stays as it is, a function becomes one command."""
    module, _, attribute = COMMANDS[name][0].partition(":")
    found = getattr(import_module(module), attribute)
    if not isinstance(found, typer.Typer):
        single = typer.Typer(add_completion=False)
        single.command(name, help=COMMANDS[name][1])(found)
        found = single
    return get_command(found)


app = typer.Typer(cls=Commands, add_completion=False, no_args_is_help=True)


def show_version(wanted: bool) -> None:
    """Print the version and stop."""
    if wanted:
        typer.echo(f"seatwork {__version__}")
        raise typer.Exit


@app.callback()
def root(
    version: bool = typer.Option(
        False, "--version", is_eager=True, callback=show_version, help="Print the version and stop."
    ),
) -> None:
    """Lessons, worksheets and a planner for cutting seats for fasteners."""


def main() -> None:
    """Run the command given on the command line; a fault a person can mend is one sentence."""
    try:
        app()
    except SeatworkError as error:
        typer.secho(str(error), err=True, fg=typer.colors.RED)
        sys.exit(1)
