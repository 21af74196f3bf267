"""Every command with odd words and odd places: done, or one sentence; never a fault of ours."""

import signal
from collections.abc import Iterator
from pathlib import Path
from random import Random

import pytest
from hostile_commands import PLACES, RIGHT, WORDS, ground
from seatwork.cli import faults, program
from seatwork.opening import lab

pytestmark = pytest.mark.slow

SLOW = {"doctor", "demo", "check", "card of a part", "open", "export"}
GROUPS = {"roster", "question", "record"}
PATIENCE = 60
"""Seconds until a command counts as hanging, on a machine however busy."""


class Hanging(BaseException):
    """A command that does not come back."""


def give_up(*_: object) -> None:
    """End a command that hangs, such as one that waits for a pipe."""
    raise Hanging


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Lay the ground out, stand in it, and let no server start."""
    ground(tmp_path)
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(lab, "prepare", lambda *given, **named: None)
    monkeypatch.setattr(lab, "serve", lambda *given, **named: None)
    monkeypatch.setattr(faults, "keep", lambda text: "")
    return tmp_path


def typed(words: tuple[str, ...], monkeypatch: pytest.MonkeyPatch) -> int | str:
    """Type a command; return its exit code, or what it did in place of ending."""
    monkeypatch.setattr("sys.argv", ["seatwork", *words])
    signal.signal(signal.SIGALRM, give_up)
    signal.alarm(PATIENCE)
    try:
        program.main()
    except SystemExit as stopped:
        return stopped.code or 0
    except Hanging:
        return "hangs"
    finally:
        signal.alarm(0)
    return 0


def spoiled(words: tuple[str, ...], odd: tuple[str, ...]) -> Iterator[tuple[str, ...]]:
    """Yield a command with each of its words in turn replaced by odd ones."""
    for place, word in enumerate(words):
        fixed = place == 0 or word.startswith("--") or (place == 1 and words[0] in GROUPS)
        if not fixed:
            yield from ((*words[:place], one, *words[place + 1 :]) for one in odd)


def leaks(
    command: str,
    odd: tuple[str, ...],
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> list[str]:
    """Run a command with odd words; return what did not end as it should."""
    found = []
    for words in spoiled(RIGHT[command], odd):
        code = typed(words, monkeypatch)
        out, told = capsys.readouterr()
        ours = "fault of seatwork" in told or "Traceback" in out + told
        if ours or code not in (0, 1, 2) or (code and not (out + told).strip()):
            found.append(f"{words!a}: {code}: {told[:200]}")
    return found


@pytest.mark.parametrize("command", [name for name in RIGHT if name not in SLOW])
def test_odd_words_end_in_a_sentence(
    command: str,
    folder: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    """A folder for a file, a pipe, a loop, no such place, nan, nothing, thousands of letters."""
    odd = tuple(Random(command).sample((*WORDS, *PLACES), 3))
    assert leaks(command, odd, monkeypatch, capsys) == []


@pytest.mark.long
@pytest.mark.parametrize("command", RIGHT)
def test_all_odd_words_end_in_a_sentence(
    command: str,
    folder: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Every command with every odd word in every place."""
    assert leaks(command, (*WORDS, *PLACES), monkeypatch, capsys) == []
