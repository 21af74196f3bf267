"""Results: marks.csv for the grade book, results.json sealed against later edits."""

import hashlib
import hmac
import json
from collections import Counter
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking import atomic, spreadsheet
from seatwork.marking.marker import Marked
from seatwork.marking.scoring import Scored
from seatwork.marking.sheets import Sheet

FORMAT = 1
HEADS = ("file", "learner", "sheet", "form", "points", "of", "percent", "state", "note")


def write(folder: Path, sheet: Sheet, marked: Sequence[Marked], key: bytes, day: str) -> None:
    """Write ``marks.csv`` and ``results.json`` of one sheet.

    Parameters
    ----------
    folder : Path
        Where they go.
    sheet : Sheet
        The worksheet.
    marked : sequence of Marked
        What was marked.
    key : bytes
        The course key, which seals the results.
    day : str
        Day of marking, written into the results.
    """
    rows = (_row(one, sheet) for one in marked)
    spreadsheet.write(folder / f"{sheet.name}-marks.csv", HEADS, rows)
    content = as_data(sheet, marked, day)
    content["seal"] = seal(content, key)
    text = json.dumps(content, ensure_ascii=False, indent=1)
    atomic.write_with_backup(folder / f"{sheet.name}-results.json", (text + "\n").encode())


def seal(content: dict[str, Any], key: bytes) -> str:
    """Return the seal of results: a keyed hash over everything but the seal itself."""
    bare = {name: value for name, value in content.items() if name != "seal"}
    text = json.dumps(bare, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
    return hmac.new(key, text.encode(), hashlib.sha256).hexdigest()


def read(path: Path, key: bytes) -> dict[str, Any]:
    """Return results written before.

    Raises
    ------
    SeatworkError
        If they are damaged, or were changed after they were written.
    """
    try:
        content = json.loads(path.read_bytes())
        said = content["seal"]
    except (OSError, ValueError, TypeError, KeyError) as error:
        raise SeatworkError(str(path), "these results cannot be read", "mark again") from error
    if not isinstance(said, str) or not hmac.compare_digest(said, seal(content, key)):
        raise SeatworkError(str(path), "these results were changed by hand", "mark again")
    assert isinstance(content, dict)
    return content


def as_data(sheet: Sheet, marked: Sequence[Marked], day: str) -> dict[str, Any]:
    """Return results as plain data."""
    return {
        "format": FORMAT,
        "sheet": sheet.name,
        "day": day,
        "versions": {item.id: item.kind.version for item in sheet.items},
        "files": [_file(one, sheet) for one in marked],
        "slips": dict(sorted(_slips(marked).items())),
        "unknown": unknown(marked),
    }


def _file(one: Marked, sheet: Sheet) -> dict[str, Any]:
    return {
        "file": one.name,
        "learner": one.file.learner if one.file else None,
        "form": one.file.form if one.file else None,
        "points": one.points,
        "of": sheet.points,
        "state": _state(one),
        "note": _note(one),
        "questions": [_question(item) for item in one.scored],
    }


def _question(item: Scored) -> dict[str, Any]:
    return {
        "id": item.id,
        "points": item.points,
        "of": item.of,
        "typed": list(item.typed),
        "verdicts": [verdict.kind for verdict in item.verdicts],
        "slips": [slip.code for verdict in item.verdicts for slip in verdict.slips],
        "sure": item.sure,
        "doubt": item.doubt,
    }


def _row(one: Marked, sheet: Sheet) -> tuple[object, ...]:
    points = one.points
    percent = None if points is None else round(100 * points / sheet.points, 1)
    learner = one.file.learner if one.file else None
    form = one.file.form if one.file else None
    shown = None if points is None else round(points, 2)
    return (
        *(one.name, learner, sheet.name, form, shown, round(sheet.points, 2), percent),
        *(_state(one), _note(one)),
    )


def _state(one: Marked) -> str:
    return "needs a person" if one.needs_a_person else "marked"


def _note(one: Marked) -> str:
    doubts = [f"{item.id}: {item.doubt}" for item in one.scored if item.doubt]
    sure = [item.id for item in one.scored if item.sure]
    given = [f"{row.question}: {row.points:g} given, {row.reason}" for row in one.overrides]
    notes = [one.doubt, *doubts, one.question, *given]
    if sure:
        notes.append(f"the learner is sure of {' '.join(sure)}")
    return "; ".join(note for note in notes if note)


def _slips(marked: Iterable[Marked]) -> Counter[str]:
    return Counter(
        slip.code
        for one in marked
        for item in one.scored
        for verdict in item.verdicts
        for slip in verdict.slips[:1]
    )


def unknown(marked: Iterable[Marked]) -> list[dict[str, Any]]:
    """Return the wrong answers that no known slip explains, question by question."""
    return [
        {"learner": one.file.learner, "question": item.id, "typed": list(item.typed)}
        for one in marked
        if one.file
        for item in one.scored
        if any(verdict.kind == "wrong" for verdict in item.verdicts)
    ]


def compare(old: dict[str, Any], new: dict[str, Any]) -> list[tuple[str, str, Any, Any]]:
    """Return where two markings differ: learner and form, question, old and new points."""
    before = _points(old)
    after = _points(new)
    return [
        (*place, before.get(place), after.get(place))
        for place in sorted(before.keys() | after.keys())
        if before.get(place) != after.get(place)
    ]


def _points(content: dict[str, Any]) -> dict[tuple[str, str], Any]:
    return {
        (f"{file['learner']}, form {file['form']}", question["id"]): question["points"]
        for file in content["files"]
        for question in file["questions"]
    }
