"""Taking a course over that was kept in files, as before there was a record.

Marks are not copied: they are worked out again from the papers, and compared. The old files
stay where they are. Doing it again adds nothing.
"""

import hashlib
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import roster, sheets
from seatwork.marking.answers import Answer, AnswerFile
from seatwork.marking.handed import Forms, HandedOut
from seatwork.marking.submissions import Submission
from seatwork.record.deciding import enroll
from seatwork.record.facts import Fact
from seatwork.record.formed import add_form, pin
from seatwork.record.keeping import TAKEN_OVER, Record
from seatwork.record.paper_results import results
from seatwork.record.points_by_hand import Override, override
from seatwork.record.taking_in import take_in

HANDED_OUT, OVERRIDES = "handed_out.json", "overrides.csv"
FORMAT = 2
OVERRIDE_HEADS = ("date", "learner", "sheet", "form", "question", "points", "reason")
MOST_ROWS = 200_000
ALSO = "as it was marked before there was a record"


def take_over(record: Record, folder: Path, day: str) -> list[str]:
    """Bring a course that was kept in files into its record.

    Parameters
    ----------
    record : Record
        The term record.
    folder : Path
        The instructor's folder.
    day : str
        The day of doing so; year-month-day.

    Returns
    -------
    list of str
        What differs from the old marks, and what a person must look at, a sentence each.

    Raises
    ------
    SeatworkError
        If a file is damaged; then nothing is taken over and the files are as they were.
    """
    given, decided = read_handed_out(folder), read_overrides(folder)
    old = {name: _old_results(folder, name) for name in sorted(_names(folder, given))}
    if (folder / roster.ROSTER_FILE).is_file():
        enroll(record, roster.read(folder), day)
    told: list[str] = []
    for name, marks in old.items():
        plan = _plan(name)
        if plan is None:
            told.append(f"{name}: there is no such sheet any more, so its papers wait")
            _all_wait(record, name, marks, day)
            continue
        _add_forms(record, plan, given, day)
        pile = list(_papers(marks, name))
        take_in(record, plan, pile, day=str(marks.get("day", day)) if marks else day)
    told += list(_decide(record, decided))
    for name, marks in old.items():
        if marks:
            told += _differences(record, name, marks, day)
    record.set_note(TAKEN_OVER, json.dumps({"day": day, "told": told}, ensure_ascii=False))
    return told


def _names(folder: Path, given: Forms) -> set[str]:
    found = folder.glob("*-results.json")
    return {*given.sheets, *(path.name.removesuffix("-results.json") for path in found)}


def _plan(name: str) -> sheets.Sheet | None:
    try:
        return sheets.load(name)
    except SeatworkError:
        return None


def read_handed_out(folder: Path) -> Forms:
    """Return what an old file says was handed out; nothing if there is none.

    Raises
    ------
    SeatworkError
        If it is damaged or of a newer format.
    """
    path = folder / HANDED_OUT
    if not path.exists():
        return Forms()
    try:
        found = json.loads(path.read_bytes())
        newer = found["format"] > FORMAT
        rows = {} if newer else {sheet: _forms(rows) for sheet, rows in found["sheets"].items()}
    except (OSError, ValueError, TypeError, KeyError, AttributeError, RecursionError) as error:
        remedy = f"copy {HANDED_OUT}.bak over it, or take your safe copy"
        raise SeatworkError(str(path), "the file is damaged", remedy) from error
    if newer:
        raise SeatworkError(str(path), "a newer version wrote it", "install that version")
    return Forms(sheets=rows)


def _forms(rows: dict[str, list[dict[str, Any]]]) -> dict[str, list[HandedOut]]:
    """Read forms; those of format 1 also held the answers, which follow from the sizes."""
    return {
        learner: [HandedOut(**{k: v for k, v in form.items() if k != "key"}) for form in forms]
        for learner, forms in rows.items()
    }


def read_overrides(folder: Path) -> list[tuple[str, Override]]:
    """Return the points given by hand that an old file holds, each with its day, in order."""
    path = folder / OVERRIDES
    if not path.is_file():
        return []
    faults: list[SeatworkError] = []
    heads = OVERRIDE_HEADS
    rows = files.read_table(path, columns=heads, needed=heads, most=MOST_ROWS, faults=faults)
    return files.build_each(rows, _override, faults)


def _override(row: files.Row) -> tuple[str, Override]:
    try:
        given = Override(
            learner=row.text("learner"),
            sheet=row.text("sheet"),
            form=int(row.text("form")),
            question=row.text("question"),
            points=float(row.text("points")),
            reason=row.text("reason"),
        )
    except ValueError as error:
        raise row.refuse("form or points", "that is no number", "mend it") from error
    return row.text("date"), given


def _old_results(folder: Path, name: str) -> dict[str, Any]:
    path = folder / f"{name}-results.json"
    if not path.is_file():
        return {}
    try:
        found = json.loads(path.read_bytes())
        if isinstance(found["files"], list):
            return dict(found)
    except (OSError, ValueError, TypeError, KeyError, RecursionError) as error:
        remedy = f"copy {path.name}.bak over it, or move it away and mark all papers again"
        raise SeatworkError(str(path), "these results cannot be read", remedy) from error
    return {}


def _add_forms(record: Record, plan: sheets.Sheet, given: Forms, day: str) -> None:
    with record.writing() as batch:
        pinned = pin(batch, plan, day)
        for learner, forms in sorted(given.sheets.get(plan.name, {}).items()):
            for one in forms:
                add_form(batch, pinned, plan.name, learner, one, day)


def _papers(marks: dict[str, Any], name: str) -> Iterator[Submission]:
    """Yield the papers as far as the old results say what was typed."""
    for one in marks.get("files", ()):
        if not one.get("questions"):
            yield Submission(str(one["file"]), None, str(one.get("doubt") or one["note"]))
            continue
        answers = {
            q["id"]: Answer(parts=tuple(map(str, q["typed"])), sure=bool(q.get("sure")))
            for q in one["questions"]
        }
        file = AnswerFile(learner=one["learner"], sheet=name, form=one["form"], answers=answers)
        doubts = {q["id"]: q["doubt"] for q in one["questions"] if q.get("doubt")}
        yield Submission(str(one["file"]), file, doubts=doubts, came="results")


def _all_wait(record: Record, name: str, marks: dict[str, Any], day: str) -> None:
    """Keep what was marked to a sheet that is not there: it waits for a person."""
    with record.writing() as batch:
        for one in marks.get("files", ()):
            doubt = f"{one.get('points')} of {one.get('of')} points {ALSO}; its sheet is gone"
            digest = hashlib.sha256(json.dumps(one, sort_keys=True).encode()).hexdigest()
            form = f"{one['learner']}-{name}-{one['form']}.json"
            body = {"sheet": name, "name": form if one["learner"] else f"file {digest[:8]}",
                    "digest": digest, "content": None, "doubt": doubt}  # fmt: skip
            batch.add(Fact("pile", f"pile/{name}/{digest[:12]}", body, day, one["learner"]))


def _decide(record: Record, decided: list[tuple[str, Override]]) -> Iterator[str]:
    """Enter points given by hand in their order; yield those that cannot stand."""
    for day, given in decided:
        try:
            override(record, given, day)
        except SeatworkError as error:
            if "has them already" not in error.fault:
                yield f"{OVERRIDES}, {given.learner} {given.sheet} {given.question}: {error}"


def _differences(record: Record, name: str, marks: dict[str, Any], day: str) -> list[str]:
    """Say where the old results and the record give other points."""
    now = {
        (one["learner"], one["form"]): one["points"]
        for one in results(record, name, day)["files"]
        if one["learner"]
    }
    told = []
    for one in marks["files"]:
        if one["learner"] and one["questions"]:
            new = now.get((one["learner"], one["form"]))
            if new != one["points"]:
                before = "a person" if one["points"] is None else f"{one['points']:g}"
                after = "a person" if new is None else f"{new:g}"
                place = f"{one['learner']}, {name}, form {one['form']}"
                told.append(f"{place}: {before} in the old marks, {after} in the record")
    return told
