"""The ``seatwork`` command as typed in a terminal."""

import json
import subprocess
import sys

import pytest
from seatwork import __version__
from seatwork.cli import commands, program
from seatwork.errors import SeatworkError
from typer.testing import CliRunner

RUNNER = CliRunner()
HEAVY = {"pandas", "matplotlib", "pint", "ipywidgets", "scipy", "numpy", "jupyter_server"}


def run(*arguments: str) -> subprocess.CompletedProcess[str]:
    """Type a command in a process of its own, with no standard input."""
    return subprocess.run(
        [sys.executable, "-m", "seatwork.cli", *arguments],
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        timeout=60,
    )


@pytest.mark.slow
def test_help_lists_every_command_with_its_line() -> None:
    """``seatwork --help`` names each command of the table."""
    shown = RUNNER.invoke(program.app, ["--help"], terminal_width=200, color=False)
    assert shown.exit_code == 0
    for name in commands.COMMANDS:
        assert f" {name} " in shown.output


@pytest.mark.slow
def test_help_loads_no_command_and_nothing_heavy() -> None:
    """The help page loads none of the command modules and no heavy library."""
    script = (
        "import json, sys\nfrom seatwork.cli.program import app\n"
        "app(['--help'], standalone_mode=False)\n"
        "print(json.dumps(list(sys.modules)), file=sys.stderr)"
    )
    done = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=True
    )
    loaded = set(json.loads(done.stderr.splitlines()[-1]))
    assert not loaded & HEAVY
    assert not loaded & {home.partition(":")[0] for home, _ in commands.COMMANDS.values()}


@pytest.mark.parametrize("name", commands.COMMANDS)
def test_every_command_of_the_table_is_there(name: str) -> None:
    """Each command loads, and its own help page works."""
    shown = RUNNER.invoke(program.app, [name, "--help"])
    assert shown.exit_code == 0, shown.output
    assert "Usage" in shown.output


@pytest.mark.parametrize("name", commands.COMMANDS)
def test_every_help_line_is_a_sentence(name: str) -> None:
    """A help line starts with a capital, ends with a full stop and fits one line."""
    line = commands.COMMANDS[name][1]
    assert line[0].isupper()
    assert line.endswith(".")
    assert len(line) < 70


def test_the_version_is_told() -> None:
    """``seatwork --version`` tells the version of the package."""
    assert RUNNER.invoke(program.app, ["--version"]).output == f"seatwork {__version__}\n"


@pytest.mark.slow
def test_an_unknown_command_is_refused_and_the_near_one_named() -> None:
    """A misspelled command ends with exit code 2 and a hint."""
    done = run("opne")
    assert done.returncode == 2
    assert "opne" in done.stderr
    assert "open" in done.stderr
    assert "Traceback" not in done.stderr


def test_a_fault_is_one_sentence_and_no_traceback(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """A SeatworkError ends the command with its sentence on the error stream, exit code 1."""

    def fail() -> None:
        raise SeatworkError("L7", "that is no learner's code", "write a letter and 2 to 6 digits")

    monkeypatch.setattr(program, "app", fail)
    with pytest.raises(SystemExit) as stopped:
        program.main()
    assert stopped.value.code == 1
    shown = capsys.readouterr()
    assert shown.err == "L7: that is no learner's code; write a letter and 2 to 6 digits.\n"
    assert shown.out == ""
