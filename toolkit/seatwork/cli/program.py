"""The ``seatwork`` command: mounts each command when it is given and tells errors plainly."""

import sys
from importlib import import_module
from io import TextIOWrapper
from typing import Any

import typer
from typer.core import TyperCommand, TyperGroup
from typer.main import get_command

from seatwork import __version__
from seatwork.arguments import place_refused
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
        single = typer.Typer(add_completion=False, pretty_exceptions_enable=False)
        single.command(name, help=COMMANDS[name][1])(found)
        found = single
    return get_command(found)


# typer's own way to show an error prints the values of variables, keys and answers among them
app = typer.Typer(
    cls=Commands, add_completion=False, no_args_is_help=True, pretty_exceptions_enable=False
)


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
    """Run the command given on the command line; whatever fails is told in one sentence."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):  # a letter that cannot be shown stops nothing
            stream.reconfigure(errors="backslashreplace")
    try:
        app()
    except Exception as error:
        typer.secho(sentence(error, _command()), err=True, fg=typer.colors.RED)
        sys.exit(1)


def sentence(error: Exception, command: str) -> str:
    """Tell what ended a command: a fault a person can mend, or one of seatwork itself."""
    if isinstance(error, SeatworkError):
        return str(error)
    if isinstance(error, OSError):
        return str(place_refused(error))
    from seatwork.cli.faults import own_fault

    return own_fault(error, command)


def _command() -> str:
    """Name the command given, and nothing else that was typed."""
    return next((word for word in sys.argv[1:] if word in COMMANDS), "")
