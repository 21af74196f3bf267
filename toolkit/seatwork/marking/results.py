"""Results: marks.csv for the grade book, results.json sealed against later edits."""

import hashlib
import hmac
import json
from collections import Counter
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import Any

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import overriding
from seatwork.marking.answers import Answer, AnswerFile
from seatwork.marking.handed import HandedOut, Record
from seatwork.marking.marker import Marked
from seatwork.marking.merging import Kept, Tally, merged, renewed
from seatwork.marking.scoring import Scored
from seatwork.marking.sheets import Sheet
from seatwork.questions import Verdict, judge_all
from seatwork.questions.left_out import LeftOut

FORMAT = 1
HEADS = ("file", "learner", "sheet", "form", "points", "of", "percent", "state", "note")


def place_of(folder: Path, sheet: str) -> Path:
    """Return where the results of a sheet are kept."""
    return folder / f"{sheet}-results.json"


def write(folder: Path, sheet: Sheet, marked: Sequence[Marked], key: bytes, day: str) -> Tally:
    """Add what was marked to ``results.json`` and ``marks.csv`` of one sheet.

    What was marked before stays; a paper marked again replaces only itself. Both files keep
    what stood there before as their backups, and are their owner's alone.

    Parameters
    ----------
    folder : Path
        Where they are.
    sheet : Sheet
        The worksheet.
    marked : sequence of Marked
        What was marked.
    key : bytes
        The course key, which seals the results.
    day : str
        Day of marking, written into the results.

    Returns
    -------
    Tally
        How many papers are new, known already, changed.

    Raises
    ------
    SeatworkError
        If the results there were changed by hand, or another command is writing there.
    """
    place = place_of(folder, sheet.name)
    with files.lock(folder):
        before = read(place, key)["files"] if place.is_file() else []
        content = as_data(sheet, marked, day)
        rows, tally = merged(before, content["files"])
        _keep(folder, {**content, "files": rows}, key)
    return tally


def renew(folder: Path, sheet: str, key: bytes) -> dict[str, Any]:
    """Count the overrides in what was marked before, and return the results.

    Raises
    ------
    SeatworkError
        If the sheet is not marked, its results were changed by hand, or another command is
        writing there.
    """
    with files.lock(folder):
        return _keep(folder, marked_before(folder, sheet, key), key)


def marked_before(folder: Path, sheet: str, key: bytes) -> dict[str, Any]:
    """Return the results of a sheet.

    Raises
    ------
    SeatworkError
        If it is not marked yet, or as `read` does.
    """
    place = place_of(folder, sheet)
    if not place.is_file():
        raise SeatworkError(str(place), "that sheet is not marked yet", "run: seatwork mark")
    return read(place, key)


def _keep(folder: Path, content: dict[str, Any], key: bytes) -> dict[str, Any]:
    """Write results with their seal, then the marks that follow from them."""
    name, given = content["sheet"], overriding.read(folder)
    rows = [renewed(one, given, name) for one in content["files"]]
    whole = {**content, "files": rows, "slips": _slips(rows), "unknown": _unknown(rows)}
    whole["seal"] = seal(whole, key)
    text = json.dumps(whole, ensure_ascii=False, indent=1) + "\n"
    files.write(place_of(folder, name), text, mode=files.PRIVATE, backup=True)
    marks = (_row(one, name) for one in rows)
    place = folder / f"{name}-marks.csv"
    files.write_table(place, HEADS, marks, mode=files.PRIVATE, backup=True)
    return whole


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
    remedy = f"copy {path.name}.bak over it, or move it away and mark all papers again"
    try:
        content = json.loads(path.read_bytes())
        sealed = content["seal"]
    except (OSError, ValueError, TypeError, KeyError, RecursionError) as error:
        raise SeatworkError(str(path), "these results cannot be read", remedy) from error
    if not isinstance(sealed, str) or not hmac.compare_digest(sealed, seal(content, key)):
        raise SeatworkError(str(path), "these results were changed by hand", remedy)
    assert isinstance(content, dict)
    return content


def as_data(sheet: Sheet, marked: Sequence[Marked], day: str) -> dict[str, Any]:
    """Return results as plain data."""
    rows = [_file(one, sheet, day) for one in marked if not one.same_as]
    return {
        "format": FORMAT,
        "sheet": sheet.name,
        "day": day,
        "versions": {item.id: item.kind.version for item in sheet.items},
        "files": rows,
        "slips": _slips(rows),
        "unknown": _unknown(rows),
    }


def _file(one: Marked, sheet: Sheet, day: str) -> Kept:
    file = one.file
    typed = {name: list(answer.parts) for name, answer in file.answers.items()} if file else {}
    bare = {
        "file": one.name,
        "learner": file.learner if file else None,
        "form": file.form if file else None,
        "day": day,
        "of": sheet.points,
        "doubt": one.doubt,
        "asks": one.question,
        "questions": [_question(item) for item in one.scored],
        "typed": {} if one.scored else typed,
    }
    return renewed(bare, one.overrides, sheet.name)


def _question(item: Scored) -> Kept:
    return {
        "id": item.id,
        "points": item.points,
        "computed": item.computed,
        "of": item.of,
        "typed": list(item.typed),
        "verdicts": [verdict.kind for verdict in item.verdicts],
        "slips": [slip.code for verdict in item.verdicts for slip in verdict.slips],
        "sure": item.sure,
        "doubt": item.doubt,
    }


def marked_again(one: Kept, sheet: Sheet, form: HandedOut) -> Marked:
    """Return a paper as it was marked, from the results: for feedback that agrees with them.

    Parameters
    ----------
    one : dict
        A paper as the results keep it.
    sheet : Sheet
        The worksheet.
    form : HandedOut
        The form the learner was given.
    """
    answers = {q["id"]: Answer(parts=tuple(q["typed"]), sure=q["sure"]) for q in one["questions"]}
    scored = tuple(
        Scored(
            id=q["id"],
            points=q["points"],
            of=q["of"],
            verdicts=_verdicts(q, sheet, form),
            typed=tuple(q["typed"]),
            sure=q["sure"],
            doubt=q["doubt"],
            computed=q.get("computed", q["points"]),
        )
        for q in one["questions"]
    )
    file = AnswerFile(learner=one["learner"], sheet=sheet.name, form=form.form, answers=answers)
    return Marked(name=one["file"], file=file, scored=scored)


def _verdicts(question: Kept, sheet: Sheet, form: HandedOut) -> tuple[Verdict, ...]:
    """Judge an answer again; nothing where its question type was left out, then or now."""
    item = sheet.item(question["id"])
    if not question["verdicts"] or issubclass(item.kind, LeftOut):
        return ()
    return judge_all(form.question(item), question["typed"])


def _row(one: Kept, sheet: str) -> tuple[object, ...]:
    points, of = one["points"], one["of"]
    percent = None if points is None else round(100 * points / of, 1)
    shown = None if points is None else round(points, 2)
    return (
        *(one["file"], one["learner"], sheet, one["form"], shown, round(of, 2), percent),
        *(one["state"], one["note"]),
    )


def _slips(rows: Iterable[Kept]) -> dict[str, int]:
    """Count the questions whose answers match a slip, by its code."""
    found = Counter(
        code for one in rows for question in one["questions"] for code in set(question["slips"])
    )
    return dict(sorted(found.items()))


def unknown(marked: Iterable[Marked]) -> list[dict[str, Any]]:
    """Return the wrong answers that no known slip explains, question by question."""
    return [
        {"learner": one.file.learner, "question": item.id, "typed": list(item.typed)}
        for one in marked
        if one.file
        for item in one.scored
        if any(verdict.kind == "wrong" for verdict in item.verdicts)
    ]


def _unknown(rows: Iterable[Kept]) -> list[dict[str, Any]]:
    return [
        {"learner": one["learner"], "question": question["id"], "typed": question["typed"]}
        for one in rows
        for question in one["questions"]
        if "wrong" in question["verdicts"]
    ]


def missing(content: dict[str, Any], record: Record) -> list[str]:
    """Return who was given a sheet and has no paper of the last form in its results.

    Parameters
    ----------
    content : dict
        The results.
    record : Record
        What was handed out.

    Returns
    -------
    list of str
        Learner codes, with the form where it is not the first.
    """
    there = {(one["learner"], one["form"]) for one in content["files"] if one["questions"]}
    given = record.sheets.get(content["sheet"], {})
    last = [(learner, forms[-1].form) for learner, forms in sorted(given.items()) if forms]
    return [
        learner if form == 1 else f"{learner} (form {form})"
        for learner, form in last
        if (learner, form) not in there
    ]


def compare(old: dict[str, Any], new: dict[str, Any]) -> list[tuple[str, str, Any, Any]]:
    """Return where two markings differ: learner and form, question, old and new points."""
    before = _points(old)
    after = _points(new)
    return [
        (*place, before[place], after[place])
        for place in sorted(before.keys() & after.keys())
        if before[place] != after[place]
    ]


def _points(content: dict[str, Any]) -> dict[tuple[str, str], Any]:
    return {
        (f"{file['learner']}, form {file['form']}", question["id"]): question["points"]
        for file in content["files"]
        for question in file["questions"]
    }
