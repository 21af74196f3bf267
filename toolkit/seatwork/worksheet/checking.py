"""Checking a worked sheet: the referee runs a learner's own copy on the learner's machine."""

import json
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from seatwork.errors import SeatworkError

SANITIZE = "[picture]\nregex: data:image/png;base64,[A-Za-z0-9+/=]+\nreplace: data:image/png\n"
FINISH = "sheet.finish()"
LONGEST_RUN = 300  # seconds


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """What the referee found.

    Parameters
    ----------
    passed : bool
        Whether every cell ran and gave what the original gives.
    lines : tuple of str
        What it said, worth reading if it did not pass.
    """

    passed: bool
    lines: tuple[str, ...]


def check(notebook: Path, original: Path) -> Outcome:
    """Run nbval on a learner's copy, with the last cell taken from the original.

    Parameters
    ----------
    notebook : Path
        The learner's copy; it is not changed.
    original : Path
        The sheet as it was delivered.

    Raises
    ------
    SeatworkError
        If a file is no notebook, or the run takes too long.
    """
    notebook = notebook.resolve()  # the referee works in its folder
    mine, delivered = _read(notebook), _read(original)
    copy = notebook.with_name(f".checked-{notebook.name}")
    sanitize = notebook.with_name(f".checked-{notebook.stem}.cfg")
    try:
        copy.write_text(json.dumps(_with_finish(mine, delivered)), encoding="utf-8")
        sanitize.write_text(SANITIZE, encoding="utf-8")
        return _referee(copy, sanitize)
    finally:
        copy.unlink(missing_ok=True)
        sanitize.unlink(missing_ok=True)


def _referee(copy: Path, sanitize: Path) -> Outcome:
    command = [
        *(sys.executable, "-m", "pytest", "--nbval", "--nbval-current-env", "-q"),
        *("-p", "no:cacheprovider", "-c", str(sanitize), "--rootdir", str(copy.parent)),
        *("--nbval-sanitize-with", str(sanitize), str(copy)),
    ]
    try:
        done = subprocess.run(
            command, capture_output=True, text=True, timeout=LONGEST_RUN, check=False,
            cwd=copy.parent,
        )  # fmt: skip
    except subprocess.TimeoutExpired as error:
        fault = f"it ran longer than {LONGEST_RUN} seconds"
        raise SeatworkError(copy.name, fault, "look for a cell that never ends") from error
    said = done.stdout if done.stdout.strip() else done.stderr
    lines = tuple(line for line in said.splitlines() if line.strip())
    return Outcome(passed=done.returncode == 0, lines=lines)


def _read(path: Path) -> dict[str, Any]:
    try:
        found = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError) as error:
        raise SeatworkError(str(path), "that is no notebook", "name one of the sheets") from error
    if not isinstance(found, dict) or not isinstance(found.get("cells"), list):
        raise SeatworkError(str(path), "that is no notebook", "name one of the sheets")
    return found


def _with_finish(mine: dict[str, Any], delivered: dict[str, Any]) -> dict[str, Any]:
    """Return the copy with every finish cell replaced by the original's, put last."""
    kept = [cell for cell in mine["cells"] if not _is_finish(cell)]
    finish = [dict(cell) for cell in delivered["cells"] if _is_finish(cell)]
    if not finish:
        raise SeatworkError("the original", "it has no finish cell", "take a delivered sheet")
    for cell in finish:
        cell.update(outputs=[], execution_count=None)
    return {**mine, "cells": [*kept, *finish]}


def _is_finish(cell: dict[str, Any]) -> bool:
    return cell.get("cell_type") == "code" and FINISH in "".join(cell.get("source", ()))
