"""What a person decides: states, signatures, and taking something back."""

import json
from collections.abc import Sequence
from typing import Any

from sqlalchemy import Connection, select

from seatwork.errors import SeatworkError
from seatwork.marking.names import form_number, learner_code, sheet_name
from seatwork.marking.roster import Learner
from seatwork.record.class_now import Class
from seatwork.record.facts import Fact, as_kept, text_of
from seatwork.record.keeping import Batch, Record
from seatwork.record.reasons import LONGEST, in_print, reason_of
from seatwork.record.standing import Standing
from seatwork.record.tables import KINDS, fact, state

LONGEST_NAME = 60
SHORT = 6
"""Signs of an id that are shown; a command takes four or more."""
LEAST_SIGNS = 4


def stated(batch: Batch, kind: str, subject: str, body: dict[str, Any], day: str,
           learner: str | None = None) -> str:  # fmt: skip
    """Add a decision behind what was said of its subject before, and return its id.

    What stands already adds nothing. Where two instructors had said different things, the other
    is taken back: this decides.
    """
    batch.flush()
    heads = sorted(Standing(batch.connection, [subject]).heads(kind, subject))
    if len(heads) == 1 and _says(batch, kind, heads[0]) == as_kept(KINDS[kind], body):
        return heads[0]
    found = batch.add(Fact(kind, subject, body, day, learner, heads[0] if heads else None))
    for other in heads[1:]:
        undone = {"target": other, "reason": f"decided anew in {found[:SHORT]}"}
        batch.add(Fact("undo", other, undone, day, learner))
    return found


def _says(batch: Batch, kind: str, found: str) -> dict[str, Any]:
    """Return what a fact says, column by column."""
    table = KINDS[kind]
    row = batch.connection.execute(select(table).where(table.c.fact == found)).one()
    return {name: value for name, value in row._mapping.items() if name != "fact"}


def enroll(record: Record, learners: Sequence[Learner], day: str) -> int:
    """Let learners of a roster join the course, with group and extra tries; return how many.

    Who is in the course as the roster says stays as they are; who left stays out.
    """
    with record.writing() as batch:
        heads = Standing(batch.connection, kind="state")
        said = {row.fact: row for row in batch.connection.execute(select(state))}
        count = 0
        for one in learners:
            subject = f"course/{one.code}"
            before = heads.head("state", subject)
            value = text_of({"group": one.group, "extra_tries": one.extra_tries}).decode()
            known = said[before] if before else None
            if known is not None and (known.word != "joined" or known.value == value):
                continue
            body = {"word": "joined", "value": value, "reason": "on the roster"}
            batch.add(Fact("state", subject, body, day, one.code, before))
            count += 1
    return count


def extra_tries(connection: Connection) -> dict[str, int]:
    """Return the tries that learners have beyond those of a sheet, by code."""
    heads, found = Standing(connection, kind="state"), {}
    for row in connection.execute(select(state).where(state.c.word == "joined")):
        head = heads.all[row.fact]
        if heads.head("state", head.subject) == row.fact and head.learner and row.value:
            found[head.learner] = int(json.loads(row.value).get("extra_tries", 0))
    return found


def withdrawn(connection: Connection) -> set[str]:
    """Return the codes of learners who left the course."""
    heads = Standing(connection, kind="state")
    rows = connection.execute(select(state.c.fact).where(state.c.word == "withdrawn")).scalars()
    found = (heads.all[one] for one in rows)
    return {
        row.learner for row in found if row.learner and heads.head("state", row.subject) == row.id
    }


def excuse(record: Record, name: str, learner: str, reason: str, day: str, sitting: int = 1) -> str:
    """Excuse a learner from one sitting of a sheet: it is no zero. Return the id."""
    return _of_sitting(record, name, learner, "excused", reason, day, sitting)


def lose(record: Record, name: str, learner: str, reason: str, day: str, sitting: int = 1) -> str:
    """Say that a learner's paper was lost, through no fault of theirs. Return the id."""
    return _of_sitting(record, name, learner, "lost", reason, day, sitting)


def _of_sitting(
    record: Record, name: str, learner: str, word: str, reason: str, day: str, sitting: int
) -> str:
    subject = f"{learner_code(learner)}/{sheet_name(name)}/{form_number(sitting)}"
    body = {"word": word, "value": None, "reason": reason_of(reason)}
    with record.writing() as batch:
        _refuse_senseless(batch, name, learner, word, sitting)
        _refuse_same(batch, subject, word, f"{learner}, {name}")
        return stated(batch, "state", subject, body, day, learner)


def _refuse_senseless(batch: Batch, name: str, learner: str, word: str, sitting: int) -> None:
    """Refuse a word for a sitting that was not handed out, or that its papers speak against."""
    now, place = Class(batch.connection, "", name), f"{name}, sitting {sitting},"
    forms = [
        row.id
        for row in now.forms()
        if row.learner == learner and now.rows.forms[row.id].sitting == sitting
    ]
    if not forms:
        fault = f"{place} was not handed out to this learner"
        raise SeatworkError(learner, fault, "check the code, the sheet and --sitting")
    is_in = any(now.rows.papers_of.get(one) for one in forms)
    if word == "lost" and is_in:
        remedy = f"seatwork history {learner} shows it; seatwork void takes its mark away"
        raise SeatworkError(learner, f"a paper of {place} is in, so none is lost", remedy)
    if word == "void" and not is_in:
        fault = f"no paper of {place} is in, so there is nothing to void"
        raise SeatworkError(learner, fault, "mark it first; or say excuse, or lost")


def void(record: Record, name: str, learner: str, reason: str, day: str, sitting: int = 1) -> str:
    """Say that a sitting of a learner is void: it gives no mark, and is no zero. Return the id."""
    return _of_sitting(record, name, learner, "void", reason, day, sitting)


def leave(record: Record, learner: str, reason: str, day: str) -> str:
    """Say that a learner left the course: marks stay, nothing is missing. Return the id."""
    body = {"word": "withdrawn", "value": None, "reason": reason_of(reason)}
    subject = f"course/{learner_code(learner)}"
    with record.writing() as batch:
        _refuse_stranger(batch, learner)
        _refuse_same(batch, subject, "withdrawn", learner)
        return stated(batch, "state", subject, body, day, learner)


def _refuse_same(batch: Batch, subject: str, word: str, who: str) -> None:
    head = Standing(batch.connection, [subject]).head("state", subject)
    query = select(state.c.word).where(state.c.fact == head)
    if head and batch.connection.execute(query).scalar() == word:
        fault = "that was said before and stands"
        raise SeatworkError(who, fault, "nothing is to change; seatwork history shows it")


def _refuse_stranger(batch: Batch, learner: str) -> None:
    query = select(fact.c.id).where(fact.c.learner == learner)
    if batch.connection.execute(query).first() is None:
        raise SeatworkError(learner, "nobody of that code is in the record", "check the code")


def set_due(record: Record, name: str, sitting: int, due: str, day: str, learner: str = "") -> str:
    """Say when a sitting of a sheet is due, for all or for one learner. Return the id.

    Parameters
    ----------
    record : Record
        The term record.
    name : str
        Name of the sheet.
    sitting : int
        Which sitting.
    due, day : str
        The day it is due, and the day of saying so; year-month-day.
    learner : str
        For this learner alone.
    """
    subject = f"{sheet_name(name)}/{form_number(sitting)}/due"
    subject = f"{learner_code(learner)}/{subject}" if learner else subject
    body = {"word": "due", "value": due, "reason": "set at the hand-out"}
    with record.writing() as batch:
        standing = Standing(batch.connection, [subject])
        head = standing.head("state", subject)
        query = select(state.c.value).where(state.c.fact == head)
        if head and batch.connection.execute(query).scalar() == due:
            return head
        return stated(batch, "state", subject, body, day, learner or None)


def sign(
    record: Record, learner: str, machine: str, paper_at: str, day: str, *, withdrawn: bool = False
) -> str:
    """Keep that somebody signed on paper for a learner at a machine, and where the paper lies.

    It clears nobody: the signature on paper does, and whoever gave it.

    Parameters
    ----------
    record : Record
        The term record.
    learner, machine : str
        Who, and at what.
    paper_at : str
        Where the paper lies, such as "binder 2026, sheet 4".
    day : str
        Year-month-day.
    withdrawn : bool
        The signature was withdrawn.

    Returns
    -------
    str
        Id of the fact.

    Raises
    ------
    SeatworkError
        If it is not said where the paper lies, or the learner is not in the record.
    """
    machine, place = in_print(machine), in_print(paper_at)
    if not 3 <= len(machine) <= LONGEST_NAME:
        raise SeatworkError(machine[:40], "that names no machine", "write one such as drill press")
    if not 3 <= len(place) <= LONGEST:
        remedy = 'add --paper-at, such as --paper-at "binder 2026, sheet 4"'
        raise SeatworkError(place[:40] or "paper", "that does not say where it lies", remedy)
    word = "withdrawn" if withdrawn else "signed"
    body = {"machine": machine, "word": word, "paper_at": place}
    with record.writing() as batch:
        _refuse_stranger(batch, learner_code(learner))
        return stated(batch, "sign_off", f"{learner}/{machine}", body, day, learner)


def undo(record: Record, target: str, reason: str, day: str) -> tuple[str, str]:
    """Take a fact back; it stays written down. An undo can be taken back, too.

    Parameters
    ----------
    record : Record
        The term record.
    target : str
        First signs of the fact's id, four or more.
    reason : str
        Why.
    day : str
        Year-month-day.

    Returns
    -------
    tuple of str
        Id of the undo, and of what was taken back.

    Raises
    ------
    SeatworkError
        If no fact begins so, or several do, or it is taken back already.
    """
    said = reason_of(reason)
    with record.writing() as batch:
        row = one_fact(batch, target)
        _refuse_worked_out(row, target)
        if not Standing(batch.connection, [row.subject]).stands(row.id):
            remedy = f"seatwork history {row.learner or ''} shows it".replace("  ", " ")
            raise SeatworkError(target, "that is taken back already", remedy)
        body = {"target": row.id, "reason": said}
        behind = Standing(batch.connection, [row.id]).last("undo", row.id)
        return batch.add(Fact("undo", row.id, body, day, row.learner, behind)), row.id


def one_fact(batch: Batch, target: str) -> Any:
    """Return the fact whose id begins so."""
    text = target.strip().casefold()
    if len(text) < LEAST_SIGNS or not set(text) <= set("0123456789abcdef"):
        remedy = "write four or more of its signs, as seatwork history shows them"
        raise SeatworkError(target[:40], "that is no fact's id", remedy)
    query = select(fact).where(fact.c.id.startswith(text)).limit(3)
    found = batch.connection.execute(query).all()
    if len(found) != 1:
        fault = "no fact begins so" if not found else "several facts begin so"
        raise SeatworkError(target, fault, "seatwork history shows their ids; write more of it")
    return found[0]


def _refuse_worked_out(row: Any, target: str) -> None:
    if row.kind in ("sheet", "form", "mark"):
        fault = f"a {row.kind} is worked out, nobody decided it"
        raise SeatworkError(target, fault, "take back a paper or a decision")
