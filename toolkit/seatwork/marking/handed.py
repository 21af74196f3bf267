"""The record of what was handed out: each learner's forms with the sizes drawn for them."""

import json
from dataclasses import asdict, dataclass, field
from pathlib import Path
from typing import Any

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.sheets import Item, Sheet
from seatwork.questions import Question

FILE = "handed_out.json"
FORMAT = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class HandedOut:
    """One form that a learner was given.

    Parameters
    ----------
    sitting : int
        1 for the first test, 2 for the first re-test.
    form : int
        Number of the form, part of its seed.
    mode : {"practice", "graded"}
        How it was given.
    sizes : dict
        Drawn sizes by question.
    versions : dict
        Version of each question's type at that time.
    """

    sitting: int
    form: int
    mode: str
    sizes: dict[str, dict[str, Any]]
    versions: dict[str, int]

    def questions(self, sheet: Sheet) -> dict[str, Question]:
        """Return the questions as they were drawn, by their id."""
        return {item.id: self.question(item) for item in sheet.items if item.id in self.sizes}

    def question(self, item: Item) -> Question:
        """Return one question as it was drawn, of the version that was handed out."""
        kind = item.kind.earlier.get(self.versions.get(item.id, 0), item.kind)
        return kind(**self.sizes[item.id])


@dataclass(slots=True)
class Record:
    """Everything handed out in a course: sheet, then learner, then forms."""

    sheets: dict[str, dict[str, list[HandedOut]]] = field(default_factory=dict)

    def forms(self, sheet: str, learner: str) -> list[HandedOut]:
        """Return the forms of a sheet that a learner was given, in order."""
        return self.sheets.setdefault(sheet, {}).setdefault(learner, [])

    def form(self, sheet: str, learner: str, form: int) -> HandedOut | None:
        """Return one form that a learner was given, None if there is none."""
        for given in self.sheets.get(sheet, {}).get(learner, ()):
            if given.form == form:
                return given
        return None

    def save(self, folder: Path) -> None:
        """Write the record, for its owner alone, and the one before as its backup."""
        sheets = {
            sheet: {
                learner: [asdict(form) for form in forms]
                for learner, forms in sorted(learners.items())
                if forms
            }
            for sheet, learners in sorted(self.sheets.items())
        }
        text = json.dumps({"format": FORMAT, "sheets": sheets}, separators=(",", ":"))
        files.write(folder / FILE, text + "\n", mode=files.PRIVATE, backup=True)


def read(folder: Path) -> Record:
    """Return the record of a course; an empty one if nothing was handed out.

    Raises
    ------
    SeatworkError
        If the record is damaged or of a newer format.
    """
    path = folder / FILE
    if not path.exists():
        return Record()
    try:
        found = json.loads(path.read_bytes())
        newer = found["format"] > FORMAT
        sheets = {} if newer else {sheet: _forms(rows) for sheet, rows in found["sheets"].items()}
    except (OSError, ValueError, TypeError, KeyError, AttributeError, RecursionError) as error:
        remedy = f"copy {FILE}.bak over it, or take your safe copy"
        raise SeatworkError(str(path), "the record is damaged", remedy) from error
    if newer:
        raise SeatworkError(str(path), "a newer version wrote it", "install that version")
    return Record(sheets=sheets)


def _forms(rows: dict[str, list[dict[str, Any]]]) -> dict[str, list[HandedOut]]:
    """Read forms; those of format 1 also held the answers, which follow from the sizes."""
    return {
        learner: [HandedOut(**{k: v for k, v in form.items() if k != "key"}) for form in forms]
        for learner, forms in rows.items()
    }
