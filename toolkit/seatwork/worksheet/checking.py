"""Checking worked sheets: the referee runs learners' own copies on the learner's machine.

nbval runs a copy of each page in a folder of the referee's own, and compares what its last
cell says with "all right". Nothing of the learner's is changed, and none of a learner's code
runs in this process.
"""

import json
import os
import re
import subprocess
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any
from xml.etree import ElementTree

from seatwork.errors import SeatworkError
from seatwork.files import refusal
from seatwork.rows import short
from seatwork.worksheet.findings import Findings
from seatwork.worksheet.watching import begins
from seatwork.worksheet.witness import PASSED

MOST_BYTES = 50_000_000
LONGEST_CELL = 60  # seconds
LONGEST_RUN = 300  # seconds for a page
WITNESS = "__import__('seatwork.worksheet.witness', fromlist=['witness'])"
MARKS = re.compile(r"^(\s*#+)(?=\s*(?:NBVAL|PYTEST)_)", re.MULTILINE)
"""Comments by which nbval would skip a cell or take its error for meant."""
FRESH = (
    "Put this page aside and run seatwork open: it lays a fresh one, and answers typed into "
    "its boxes are kept."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """What the referee found.

    Parameters
    ----------
    passed : bool
        Whether the page is whole, every cell ran, and everything asked is right.
    lines : tuple of str
        One line for each question, before them what is wrong with the page.
    """

    passed: bool
    lines: tuple[str, ...]

    def __repr__(self) -> str:
        state = "passed" if self.passed else "not yet"
        return f"<Outcome {state}: {short(' '.join(self.lines), 90)}>"

    def __str__(self) -> str:
        return "\n".join(("Passed." if self.passed else "Not yet.", *self.lines))


def check(pages: Sequence[str | Path]) -> list[Outcome]:
    """Let nbval run learners' copies of sheets, all in one run.

    Parameters
    ----------
    pages : sequence of str or Path
        The learners' notebooks; they are not changed.

    Returns
    -------
    list of Outcome
        One for each page; a page that is no notebook is told and stops no other.

    Raises
    ------
    SeatworkError
        If the run takes too long, or the disk has no room for it.
    """
    try:
        with TemporaryDirectory(prefix="seatwork-", ignore_cleanup_errors=True) as folder:
            return _check([Path(page) for page in pages], Path(folder))
    except OSError as error:
        raise refusal(error.filename or "the folder for temporary files", error) from error


def _check(pages: list[Path], folder: Path) -> list[Outcome]:
    copies = [_Copy(page, folder / str(number)) for number, page in enumerate(pages)]
    cells = _run(folder, sum(not copy.fault for copy in copies))
    return [copy.outcome(cells.get(copy.scratch.name, [])) for copy in copies]


class _Copy:
    """A learner's page, laid out for the referee."""

    def __init__(self, page: Path, scratch: Path) -> None:
        self.page, self.scratch = page, scratch
        self.kept = scratch / "findings.json"
        self.sources: list[str] = []
        self.fault = ""
        try:
            self.sources = _sources(page)
        except SeatworkError as error:
            self.fault = str(error)
            return
        scratch.mkdir()
        content = json.dumps(_notebook(self._cells()))
        (scratch / "page.ipynb").write_text(content, encoding="utf-8")

    def _cells(self) -> list[dict[str, Any]]:
        """Return the page's code between the witness's first cell and its last."""
        place = str(self.page.resolve().parent)
        sit = f"{WITNESS}.sit({place!r}, {str(self.scratch)!r}, {self.page.stem!r})"
        save = f"{WITNESS}.save({str(self.kept)!r})"
        return [*map(_cell, (sit, *self.sources)), _cell(save, expected=repr(PASSED))]

    def outcome(self, ran: list[bool]) -> Outcome:
        """Say what came of the page; `ran` holds for each cell whether nbval passes it."""
        if self.fault:
            return Outcome(passed=False, lines=(self.fault,))
        try:
            content: dict[str, Any] = json.loads(self.kept.read_text(encoding="utf-8"))
        except (OSError, ValueError):
            return Outcome(passed=False, lines=(self._ended(ran),))
        found = Findings(**content)
        passed = found.passed and bool(ran) and all(ran)
        if found.passed and not passed:
            found.faults.append(self._ended(ran))
        fresh = () if found.whole else (FRESH,)
        return Outcome(passed=passed, lines=(*found.faults, *fresh, *found.lines))

    def _ended(self, ran: list[bool]) -> str:
        """Say at which cell a page ends that does not come to its end."""
        failed = ran.index(False) if False in ran else 0
        if not 0 < failed <= len(self.sources):
            return "The page could not be run; seatwork doctor looks for the reason."
        cell = begins(self.sources[failed - 1])
        return f"The page ends at the cell that begins with {cell!r}; mend it, or take it out."


def _run(folder: Path, count: int) -> dict[str, list[bool]]:
    """Run nbval on every copy; return for each, cell by cell, whether it passes."""
    if not count:
        return {}
    report = folder / "report.xml"
    (folder / "referee.ini").write_text("[pytest]\n", encoding="utf-8")
    command = [
        *(sys.executable, "-m", "pytest", "-q", "--assert=plain", "-p", "no:cacheprovider"),
        *("-p", "seatwork.deferred", "-p", "nbval.plugin", "--nbval-lax", "--nbval-current-env"),
        *(f"--nbval-cell-timeout={LONGEST_CELL}", f"--junitxml={report}"),
        *("-c", "referee.ini", "--rootdir", ".", "."),
    ]
    alone = {"PYTEST_DISABLE_PLUGIN_AUTOLOAD": "1", "PYTEST_ADDOPTS": "", "PYTEST_PLUGINS": ""}
    try:
        subprocess.run(
            command, capture_output=True, timeout=LONGEST_RUN * count, check=False, cwd=folder,
            env=os.environ | alone, stdin=subprocess.DEVNULL,
        )  # fmt: skip
    except subprocess.TimeoutExpired as error:
        fault = f"it ran longer than {LONGEST_RUN} seconds"
        raise SeatworkError("the check", fault, "look for a cell that never ends") from error
    return _read_report(report)


def _read_report(report: Path) -> dict[str, list[bool]]:
    """Return by folder which cells pass, in the order they ran."""
    cells: dict[str, list[bool]] = {}
    try:
        cases = list(ElementTree.parse(report).getroot().iter("testcase"))
    except (OSError, ElementTree.ParseError):
        return cells
    for case in cases:
        passed = not any(case.find(kind) is not None for kind in ("failure", "error", "skipped"))
        cells.setdefault(str(case.get("classname")).split(".")[0], []).append(passed)
    return cells


def _sources(page: Path) -> list[str]:
    """Return the code of a notebook's cells, whatever else stands in it."""
    remedy = "name one of your sheets, such as exercises/cones.ipynb"
    try:
        if page.is_dir():
            raise SeatworkError(str(page), "that is no notebook, but a folder", remedy)
        if not page.is_file():
            raise SeatworkError(str(page), "there is no such notebook", remedy)
        if page.stat().st_size > MOST_BYTES:
            raise SeatworkError(str(page), "the notebook is over 50 MB", "clear its outputs")
        found = json.loads(page.read_text(encoding="utf-8-sig"))
        cells = found["cells"]
        code = [cell["source"] for cell in cells if cell["cell_type"] == "code"]
        return [_text(source) for source in code]
    except SeatworkError:
        raise
    except (OSError, ValueError, TypeError, KeyError, RecursionError) as error:
        raise SeatworkError(str(page), "that is no notebook", remedy) from error


def _text(source: Any) -> str:
    """Return a cell as it is run: no half characters, which cannot be sent, and no marks."""
    return MARKS.sub(r"\1.", "".join(source).encode("utf-8", "replace").decode("utf-8"))


def _notebook(cells: list[dict[str, Any]]) -> dict[str, Any]:
    return {"nbformat": 4, "nbformat_minor": 4, "metadata": {}, "cells": cells}


def _cell(source: str, expected: str = "") -> dict[str, Any]:
    """Return a code cell; nbval compares what it shows only where something is expected."""
    shown = {"output_type": "execute_result", "execution_count": 1, "metadata": {}}
    outputs = [{**shown, "data": {"text/plain": expected}}] if expected else []
    return {
        "cell_type": "code",
        "source": source,
        "metadata": {"tags": ["nbval-check-output"]} if expected else {},
        "execution_count": 1 if expected else None,
        "outputs": outputs,
    }
