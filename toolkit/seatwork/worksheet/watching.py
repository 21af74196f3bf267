"""Who looks on while a page runs: what it opens, asks and stops at.

Under the referee a page works on a copy of the saved answers, so a check changes nothing.
"""

import shutil
from pathlib import Path
from typing import Any, Protocol

from seatwork.marking import Sheet
from seatwork.marking.given import Given
from seatwork.questions import Question, Verdict

LONGEST = 200


class Watched(Protocol):
    """What a witness sees of a worksheet that a page opened."""

    plan: Sheet
    mine: Given
    asked: set[str]
    finished: bool

    @property
    def is_practice(self) -> bool:
        """Whether feedback is given at once."""
        ...

    def question(self, name: str) -> Question:
        """Return a question with the learner's numbers."""
        ...

    def verdicts(self, name: str) -> tuple[Verdict, ...]:
        """Return what is to be said of each part of an answer."""
        ...


class Witness:
    """What one page did under the referee.

    Parameters
    ----------
    folder : Path
        The page's own folder.
    scratch : Path
        A folder of the referee's own; copies of answer files go there.
    named : str
        The sheet that the page's file name promises; may be none of the sheets.
    """

    def __init__(self, folder: Path, scratch: Path, named: str) -> None:
        self.folder, self.scratch, self.named = folder, scratch, named
        self.desks: list[Watched] = []
        self.stopped: list[tuple[str, BaseException]] = []

    def sees(self, desk: Watched, folder: Path | None, file: str) -> Path | None:
        """Note a sheet that is opened; return a folder with a copy of its saved answers."""
        self.desks.append(desk)
        if folder is None:
            return None
        copies = self.scratch / "answers"
        copies.mkdir(exist_ok=True)
        for name in (file, file + ".bak"):
            if (folder / name).is_file() and not (copies / name).exists():
                shutil.copyfile(folder / name, copies / name)
        return copies

    def look(self, result: Any) -> None:
        """Note a cell that stopped with an error (an IPython hook)."""
        error = result.error_before_exec or result.error_in_exec
        if error is not None:
            self.stopped.append((str(result.info.raw_cell), error))

    def tried(self, *words: str) -> bool:
        """Say whether a cell that stopped holds one of these words."""
        return any(word in source for source, _ in self.stopped for word in words)


sitting: Witness | None = None
"""Who looks on; None but in the referee's own kernel."""


def plain(text: str, longest: int = LONGEST) -> str:
    """Return text as one printable line of bounded length."""
    line = " ".join(text.split())
    shown = "".join(mark if mark.isprintable() else "?" for mark in line)
    return shown if len(shown) <= longest else shown[: longest - 1] + "…"


def begins(source: str) -> str:
    """Name a cell by its first line that says something."""
    lines = [line for line in source.splitlines() if line.strip()]
    return plain(lines[0] if lines else "", 60)
