"""Commands run inside the test's own process, in a folder of its own."""

import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import pytest
from seatwork.cli import program


@dataclass(frozen=True)
class Done:
    """What a command came to."""

    code: int
    out: str


Run = Callable[..., Done]


@pytest.fixture
def run(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Run:
    """Give a function that gives a command in an empty folder, or in another one."""

    def give(*words: str, here: Path = tmp_path) -> Done:
        monkeypatch.chdir(here)
        monkeypatch.setattr(sys, "argv", ["seatwork", *map(str, words)])
        with pytest.raises(SystemExit) as left:
            program.main()
        told = capsys.readouterr()
        assert "Traceback" not in told.err
        return Done(int(left.value.code or 0), " ".join((told.out + told.err).split()))

    return give
