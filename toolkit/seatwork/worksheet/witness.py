"""The referee's witness in the kernel: it sees what a page asks and says what came of it.

Under the referee a page works on a copy of the saved answers, so a check changes nothing.
"""

import json
import os
import shutil
from dataclasses import asdict
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from seatwork.worksheet.desk import Desk

PASSED, NOT_PASSED = "all right", "not yet"
LONGEST = 200


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
        self.desks: list[Desk] = []
        self.stopped: list[tuple[str, BaseException]] = []

    def sees(self, desk: "Desk", folder: Path | None, file: str) -> Path | None:
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
"""Who looks on; None but for the referee's own kernel."""


def sit(page_folder: str, scratch: str, named: str) -> None:
    """Go to the page's own folder and look on from now (the first cell of a checked copy)."""
    global sitting
    from IPython.core.getipython import get_ipython

    os.chdir(page_folder)
    sitting = Witness(Path(page_folder), Path(scratch), named)
    shell: Any = get_ipython()
    shell.events.register("post_run_cell", sitting.look)


def tell(path: str) -> str:
    """Write down what came of the page, and say it in two words (the last cell of a copy)."""
    from seatwork.worksheet.findings import findings

    assert sitting is not None
    os.chdir(sitting.folder)  # a cell may have gone elsewhere
    found = findings(sitting)
    Path(path).write_text(json.dumps(asdict(found)), encoding="utf-8")
    return PASSED if found.passed else NOT_PASSED


def plain(text: str, longest: int = LONGEST) -> str:
    """Return text as one printable line of bounded length."""
    line = " ".join(text.split())
    shown = "".join(mark if mark.isprintable() else "?" for mark in line)
    return shown if len(shown) <= longest else shown[: longest - 1] + "…"


def begins(source: str) -> str:
    """Name a cell by its first line that says something."""
    lines = [line for line in source.splitlines() if line.strip()]
    return plain(lines[0] if lines else "", 60)
