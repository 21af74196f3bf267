"""A fault of the package itself: one sentence, a report without a single value, no traceback."""

import re
import subprocess
import sys
from pathlib import Path

import pytest
from seatwork.cli import faults

SECRET = "5eed-of-the-course-key"
BROKEN = f"""
import sys
from seatwork.cli import commands, program

def sources():
    key = {SECRET!r}
    try:
        {{}}[key]
    except KeyError as error:
        raise RuntimeError(f"made up, with {{key}}") from error

sys.modules["made_up"] = type(sys)("made_up")
sys.modules["made_up"].sources = sources
commands.COMMANDS["sources"] = ("made_up:sources", "A command that fails.")
sys.argv = ["seatwork", "sources"]
program.main()
"""


def failed(folder: Path) -> "subprocess.CompletedProcess[str]":
    """Let a command fail in a real process that keeps its reports in a folder."""
    script = folder / "broken.py"
    script.write_text(BROKEN, encoding="utf-8")
    return subprocess.run(
        [sys.executable, str(script)],
        capture_output=True,
        text=True,
        env={"TMPDIR": str(folder), "PATH": "", "PYTHONDONTWRITEBYTECODE": "1"},
        timeout=60,
        check=False,
    )


def test_a_fault_of_ours_is_one_sentence(tmp_path: Path) -> None:
    """The exit code says failure; what is shown is one line, with what to send."""
    done = failed(tmp_path)
    assert done.returncode == 1
    assert len(done.stderr.strip().splitlines()) == 1
    assert "this is a fault of seatwork, not yours" in done.stderr
    assert "Traceback" not in done.stdout + done.stderr


def test_neither_sentence_nor_report_holds_a_value(tmp_path: Path) -> None:
    """No local, no message of an error and no path of the person's own is shown or kept."""
    done = failed(tmp_path)
    (report,) = tmp_path.glob("seatwork-fault-*.txt")
    told = report.read_text(encoding="utf-8")
    assert str(report) in done.stderr
    assert SECRET not in done.stdout + done.stderr + told
    assert str(tmp_path) not in told
    assert "made up" not in told


def test_the_report_says_where_it_went_wrong(tmp_path: Path) -> None:
    """Kinds of the errors and the places they went through are in it; it is the owner's alone."""
    failed(tmp_path)
    (report,) = tmp_path.glob("seatwork-fault-*.txt")
    told = report.read_text(encoding="utf-8")
    assert re.search(r"^builtins\.RuntimeError$", told, re.MULTILINE)
    assert re.search(r"^builtins\.KeyError$", told, re.MULTILINE)
    assert re.search(r"seatwork/cli/program\.py:\d+ main", told)
    assert report.stat().st_mode & 0o077 == 0


def test_a_report_that_cannot_be_kept_stops_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    """Without a place for the report the sentence itself is what to send."""

    def full(*given: object, **named: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("tempfile.mkstemp", full)
    said = faults.own_fault(ZeroDivisionError("1/0"), "plan")
    assert "send this sentence to" in said
    assert "1/0" not in said
