"""The marks of a sheet as plain data and as tables, worked out from the record."""

from collections.abc import Iterator

from sqlalchemy import Connection

from seatwork.marking.answers import AnswerFile, parse
from seatwork.marking.results import Data, slips, unknown
from seatwork.record.cells import Cell, Counting
from seatwork.record.class_now import Class
from seatwork.record.keeping import Record
from seatwork.record.piling import waiting
from seatwork.record.reading import Kept
from seatwork.record.standing import Head

NO_MARK = ("excused", "void")
"""Words by which a paper that is in gives no mark, and nobody need look."""
HEADS = ("file", "learner", "sheet", "form", "points", "of", "percent", "state", "note")


def results(record: Record, name: str, day: str, *, counting: Counting | None = None) -> Data:
    """Return what stands of a sheet: each paper that counts, question by question.

    Parameters
    ----------
    record : Record
        The term record.
    name : str
        Name of the sheet.
    day : str
        Year-month-day: what is due before it and has no paper is not here.
    counting : Counting, optional
        The house rules; those in force if not given.

    Returns
    -------
    dict
        ``sheet``, ``files``: a paper each; ``slips`` by code, ``unknown``, and ``missing``:
        learners who were given the sheet and have no paper of their last form.
    """
    with record.reading() as connection:
        return results_in(connection, name, day, counting=counting)


def results_in(
    connection: Connection, name: str, day: str, *, counting: Counting | None = None
) -> Data:
    """Return what stands of a sheet, as `results`, within a transaction."""
    now = Class(connection, day, name, counting=counting, contents=True)
    heads = [row for row in now.forms() if now.rows.papers_of.get(row.id)]
    rows = [one for row in sorted(heads, key=_place) for one in _paper(now, row)]
    rows += [_waiting(head, one) for head, one in waiting(now.rows, name)]
    return {
        "sheet": name,
        "files": rows,
        "slips": slips(rows),
        "unknown": unknown(rows),
        "missing": _missing(now),
    }


def _place(row: Head) -> tuple[str, str]:
    return str(row.learner), row.subject


def _paper(now: Class, head: Head) -> Iterator[Data]:
    """Yield the paper of a form that counts; all of them where a person must choose."""
    form = now.rows.forms[head.id]
    name = now.rows.sheets[form.sheet].name
    counts, _ = now.paper(head.id, now.due(str(head.learner), name, form.sitting))
    cell = now.cell(head)
    for row in [counts] if counts is not None else now.rows.papers_of[head.id]:
        yield _file(now, head, row, cell, is_chosen=counts is not None)


def _file(now: Class, form: Head, paper: Head, cell: Cell, *, is_chosen: bool) -> Data:
    row = now.rows.papers[paper.id]
    file = parse(row.content, "a paper in the record")
    mark, _ = now.mark(paper)
    given = now.given(form.id)
    questions = [
        _question(one, file, given) for one in _answers(now, mark)
    ] if is_chosen else []  # fmt: skip
    scored = cell.points is not None and is_chosen
    return {
        "file": ("paper " if row.came == "paper" else "") + file.name,
        "id": paper.id,
        "learner": file.learner,
        "form": file.form,
        "day": paper.day,
        "points": cell.points if is_chosen else None,
        "of": cell.of if cell.of is not None else (mark.of if mark is not None else 0.0),
        "late": cell.late,
        "doubt": mark.doubt if mark is not None and cell.word == "needs a person" else "",
        "asks": mark.ask if mark is not None else "",
        "questions": questions,
        "typed": {} if questions else {q: list(a.parts) for q, a in file.answers.items()},
        "state": "marked" if scored else cell.word if cell.word in NO_MARK else "needs a person",
        "note": _note(now, form, cell, mark, questions, given),
    }


def _answers(now: Class, mark: Kept | None) -> list[Kept]:
    """Return the answers of a mark in the order of the sheet."""
    if mark is None:
        return []
    sheet = now.rows.forms[now.rows.papers[mark.paper].form].sheet
    order = [name for one, name in now.rows.codes if one == sheet]
    rows = now.rows.answers[mark.fact]
    return [rows[name] for name in order if name in rows]


def _question(one: Kept, file: AnswerFile, given: dict[str, float | None]) -> Data:
    answer = file.of(one.question)
    return {
        "id": one.question,
        "points": given.get(one.question, one.points),
        "computed": one.points,
        "of": one.of,
        "typed": list(answer.parts),
        "verdicts": one.verdicts.split("; ") if one.verdicts else [],
        "slips": one.slips.split(),
        "sure": answer.sure,
        "doubt": one.doubt,
    }


def _note(
    now: Class,
    form: Head,
    cell: Cell,
    mark: Kept | None,
    questions: list[Data],
    given: dict[str, float | None],
) -> str:
    """Say what a person should know of a paper, in the order doubt, question, decision."""
    doubts = [f"{q['id']}: {q['doubt']}" for q in questions if q["doubt"] and q["id"] not in given]
    lines = [
        f"{one.question}: {one.points:g} given, {one.reason}"
        for row in now.rows.overrides_of.get(form.id, ())
        if row.id in now.heads.heads("override", row.subject)
        for one in [now.rows.overrides[row.id]]
    ]
    sure = " ".join(q["id"] for q in questions if q["sure"])
    notes = [
        mark.doubt if mark is not None and cell.points is None else "",
        *doubts,
        mark.ask if mark is not None else "",
        *lines,
        f"the learner is sure of {sure}" if sure else "",
        "after the day" if cell.late else "",
        cell.why if cell.why and not doubts and (mark is None or cell.why != mark.doubt) else "",
    ]
    return "; ".join(note for note in notes if note)


def _waiting(head: Head, one: Kept) -> Data:
    """Return what came and could not be marked."""
    return {
        "file": one.name,
        "id": head.id,
        "learner": head.learner,
        "form": None,
        "day": head.day,
        "points": None,
        "of": 0.0,
        "late": False,
        "doubt": one.doubt,
        "asks": "",
        "questions": [],
        "typed": {},
        "state": "needs a person",
        "note": one.doubt,
    }


def _missing(now: Class) -> list[str]:
    """Return who has no paper of the last form, with the form where it is not the first."""
    last: dict[str, Head] = {}
    for row in sorted(now.forms(), key=lambda one: now.rows.forms[one.id].sitting):
        last[str(row.learner)] = row
    found = []
    for learner, row in sorted(last.items()):
        if now.cell(row).word in ("handed out", "not here"):
            number = now.rows.forms[row.id].number
            found.append(learner if number == 1 else f"{learner} (form {number})")
    return found


def mark_rows(data: Data) -> list[tuple[object, ...]]:
    """Return the results of a sheet as rows of the table of marks, under `HEADS`."""
    return [_row(one, data["sheet"]) for one in data["files"]]


def _row(one: Data, sheet: str) -> tuple[object, ...]:
    points, of = one["points"], one["of"]
    percent = None if points is None or not of else round(100 * points / of, 1)
    shown = None if points is None else round(points, 2)
    return (
        *(one["file"], one["learner"], sheet, one["form"], shown, round(of, 2), percent),
        *(one["state"], one["note"]),
    )
