"""The referee in the kernel: the first and the last cell of a page that is checked."""

import json
import os
from dataclasses import asdict
from pathlib import Path
from typing import Any

from seatwork.worksheet import watching
from seatwork.worksheet.findings import findings
from seatwork.worksheet.watching import Witness

PASSED, NOT_PASSED = "all right", "not yet"


def sit(page_folder: str, scratch: str, named: str) -> None:
    """Go to the page's own folder and look on from now (the first cell of a checked copy)."""
    from IPython.core.getipython import get_ipython

    os.chdir(page_folder)
    watching.sitting = Witness(Path(page_folder), Path(scratch), named)
    shell: Any = get_ipython()
    shell.events.register("post_run_cell", watching.sitting.look)


def save(path: str) -> str:
    """Write down what came of the page, and say it in two words (the last cell of a copy)."""
    seen = watching.sitting
    assert seen is not None
    os.chdir(seen.folder)  # a cell may have gone elsewhere
    found = findings(seen)
    Path(path).write_text(json.dumps(asdict(found)), encoding="utf-8")
    return PASSED if found.passed else NOT_PASSED
