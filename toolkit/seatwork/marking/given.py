"""What a learner is given: whose sheet it is, which form, and the seed of its numbers."""

import json
from collections.abc import Iterator
from dataclasses import dataclass
from os.path import realpath
from pathlib import Path
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.names import PRACTICE_LEARNER, form_number, learner_code, sheet_name
from seatwork.marking.seeds import PRACTICE_KEY, sheet_seed
from seatwork.marking.sheets import MODES

FORMAT = 2
BEFORE_APART = 1
"""Format of forms whose questions were drawn without regard to one another."""
FORMATS = (BEFORE_APART, FORMAT)
KEYS = {"format", "learner", "sheet", "form", "mode", "sheet_seed", "version"}
LONGEST = 4096


@dataclass(frozen=True, slots=True, kw_only=True)
class Given:
    """Whose sheet it is, which form, the seed of its numbers, and whether they are kept apart."""

    learner: str
    sheet: str
    form: int
    mode: str
    seed: bytes
    version: str = ""
    apart: bool = True

    def text(self) -> str:
        """Return the file's content."""
        content = {
            "format": FORMAT if self.apart else BEFORE_APART,
            "learner": self.learner,
            "sheet": self.sheet,
            "form": self.form,
            "mode": self.mode,
            "sheet_seed": self.seed.hex(),
            "version": self.version,
        }
        return json.dumps(content, indent=1) + "\n"


def practice(sheet: str) -> Given:
    """Return what holds without a hand-out: learner L00 with the numbers everyone gets."""
    seed = sheet_seed(PRACTICE_KEY, PRACTICE_LEARNER, sheet, 1)
    return Given(learner=PRACTICE_LEARNER, sheet=sheet, form=1, mode="practice", seed=seed)


def look_for(sheet: str, start: Path, workbook: Path | None) -> Given:
    """Return what was given for `sheet`, from the working folder up to the workbook.

    ``given.json`` or ``SHEET.given.json`` is read; without one, practice numbers hold.
    """
    for place in _upward(start, workbook):
        for name in (f"{sheet}.given.json", "given.json"):
            if (place / name).is_file():
                found = read(place / name)
                if found.sheet == sheet:
                    return found
    return practice(sheet)


def whose(start: Path, workbook: Path | None) -> str:
    """Return the learner whom anything given from `start` up to the workbook names; else L00."""
    for place in _upward(start, workbook):
        for path in sorted(place.glob("*given.json")):
            try:
                return read(path).learner
            except SeatworkError:
                continue  # the sheet that needs it says what is wrong with it
    return PRACTICE_LEARNER


def _upward(start: Path, workbook: Path | None) -> Iterator[Path]:
    """Yield the folder itself and those above it, up to the workbook; alone without one."""
    here = Path(realpath(start))  # a link that leads back to itself ends nothing
    for place in (here, *here.parents):
        yield place
        if workbook is None or place == workbook:
            return


def read(path: Path) -> Given:
    """Return the content of a ``given.json``.

    Raises
    ------
    SeatworkError
        If it is damaged or of a newer format.
    """
    try:
        raw = path.read_bytes()
        found = json.loads(raw.decode("utf-8")) if len(raw) <= LONGEST else None
    except (OSError, ValueError, RecursionError) as error:
        raise _damaged(path) from error
    written = found.get("format") if isinstance(found, dict) else None
    if isinstance(written, int) and written > FORMAT:
        raise SeatworkError(path.name, "a newer version wrote it", "install that version")
    if not isinstance(found, dict) or set(found) != KEYS or found["format"] not in FORMATS:
        raise _damaged(path)
    return _given(path, found)


def _given(path: Path, found: dict[str, Any]) -> Given:
    try:
        seed = bytes.fromhex(found["sheet_seed"])
    except (TypeError, ValueError) as error:
        raise _damaged(path) from error
    if len(seed) != 32 or found["mode"] not in MODES or not isinstance(found["version"], str):
        raise _damaged(path)
    return Given(
        learner=learner_code(found["learner"]),
        sheet=sheet_name(found["sheet"]),
        form=form_number(found["form"]),
        mode=found["mode"],
        seed=seed,
        version=found["version"],
        apart=found["format"] != BEFORE_APART,
    )


def _damaged(path: Path) -> SeatworkError:
    return SeatworkError(path.name, "it is not as it was handed out", "ask for it again")
