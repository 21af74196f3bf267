"""Bringing two records together: what one holds and the other does not is added, once."""

import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import closing, suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, select

from seatwork.errors import SeatworkError
from seatwork.record import lines
from seatwork.record.facts import Fact, Values, content_id, is_sealed, who
from seatwork.record.keeping import Batch, Record
from seatwork.record.standing import Standing
from seatwork.record.tables import KINDS, ROWS, erased, fact, override, state

NEEDS = {
    "form": ("sheet",),
    "paper": ("form",),
    "mark": ("paper",),
    "override": ("form", "sheet"),
    "choice": ("paper",),
}
"""Columns that name facts which must be there first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Brought:
    """What came of bringing facts into a record.

    Parameters
    ----------
    added, known : int
        Facts that are new here; facts that were here before.
    erased : int
        Facts about learners who were erased here; they stay out.
    changed : int
        Facts that are not what they say, or refer to one that is missing.
    foreign : int
        Facts sealed with another course key.
    """

    added: int = 0
    known: int = 0
    erased: int = 0
    changed: int = 0
    foreign: int = 0

    def __repr__(self) -> str:
        return f"<Brought: {self.added} added, {self.known} known>"

    def __str__(self) -> str:
        left = [
            (self.erased, "about learners who were erased here"),
            (self.changed, "changed by hand or damaged"),
            (self.foreign, "sealed with another course key"),
        ]
        told = "".join(f", {count} left out: {why}" for count, why in left if count)
        return f"{self.added} facts added, {self.known} known already{told}"


def combine(record: Record, other: Path) -> Brought:
    """Add what another instructor's record holds; doing it again adds nothing.

    Parameters
    ----------
    record : Record
        The record that is added to.
    other : Path
        The file of the other one; it is only read.

    Raises
    ------
    SeatworkError
        If there is no such record, it cannot be read, or it is of another course.
    """
    if not other.is_file():
        raise SeatworkError(str(other), "there is no such record", "name the file record.db")
    if other.resolve() == record.place.resolve():
        raise SeatworkError(str(other), "that is this record itself", "name the other one")
    found = bring_facts(record, other)
    if found.foreign and not found.added + found.known:
        remedy = "both instructors need the same course.key; copy it first, then begin anew"
        raise SeatworkError(str(other), "that record is of another course", remedy)
    return found


def bring_facts(record: Record, other: Path) -> Brought:
    """Add the facts of another file, as far as it can be read and they are what they say."""
    try:
        with closing(sqlite3.connect(f"{other.resolve().as_uri()}?mode=ro", uri=True)) as source:
            source.row_factory = sqlite3.Row
            source.text_factory = lambda raw: raw.decode(errors="replace")  # then no fact any more
            source.execute("PRAGMA writable_schema=ON")  # reads a file shorter than it says
            found = list(_facts_of(source))
    except (sqlite3.DatabaseError, UnicodeDecodeError) as error:
        remedy = "take another copy"
        raise SeatworkError(str(other), "nothing in it can be read", remedy) from error
    with record.writing() as batch:
        return _add_all(batch, found)


def bring_lines(record: Record) -> Brought:
    """Add the decisions that stand in the lines beside a record and not in it."""
    found = [(one["head"], one["body"], ()) for one in lines.read(record.place)]
    with record.writing() as batch:
        brought = _add_all(batch, found)
        batch.decisions.clear()  # they came from the lines
    return brought


Whole = tuple[Values, Values, Sequence[Values]]
"""A fact as it stands in a file: head, body, rows."""


def _facts_of(source: sqlite3.Connection) -> Iterator[Whole]:
    """Yield the whole facts of a file, those before that others refer to."""
    heads = {row["id"]: dict(row) for row in _readable(source, "fact")}
    for kind in KINDS:
        table, column = ROWS.get(kind, (None, ""))
        rows: dict[str, list[Values]] = {}
        for row in _readable(source, table.name) if table is not None else ():
            rows.setdefault(row[column], []).append(dict(row))
        for row in _readable(source, kind):
            head = heads.get(row["fact"])
            if head is not None and head["kind"] == kind:
                yield head, dict(row), rows.get(row["fact"], [])


def _readable(source: sqlite3.Connection, table: str) -> list[sqlite3.Row]:
    """Return rows from the first on and from the last back, up to where a file is damaged."""
    found: dict[tuple[Any, ...], sqlite3.Row] = {}
    for way in ("", " ORDER BY rowid DESC"):
        with suppress(sqlite3.DatabaseError, UnicodeDecodeError):
            for row in source.execute(f'SELECT * FROM "{table}"{way}'):
                found[tuple(row)] = row
            break
    return list(found.values())


def _add_all(batch: Batch, found: Sequence[Whole]) -> Brought:
    connection, key = batch.connection, batch.record.key
    known = set(connection.execute(select(fact.c.id)).scalars())
    gone = set(connection.execute(select(erased.c.who)).scalars())
    count = dict.fromkeys(("added", "known", "erased", "changed", "foreign"), 0)
    for head, body, rows in found:
        word = _word(head, body, rows, known, gone, key)
        count[word] += 1
        if word == "added":
            known.add(head["id"])
            batch.put(head, body, rows)
    return Brought(**count)


def _word(
    head: Values, body: Values, rows: Sequence[Values], known: set[str], gone: set[str], key: bytes
) -> str:
    """Say what is to be done with a fact of another file."""
    if head["id"] in known:
        return "known"
    if head["learner"] and who(key, head["learner"]) in gone:
        return "erased"
    if not is_sealed(key, head["id"], head["seal"]):
        return "foreign"
    needed = [body[column] for column in NEEDS.get(head["kind"], ()) if column in body]
    whole = known.issuperset(needed) and _is_whole(head, body, rows)
    return "added" if whole else "changed"


def _is_whole(head: Values, body: Values, rows: Sequence[Values]) -> bool:
    """Whether a fact is what it says: its id follows from its content."""
    bare = {name: value for name, value in body.items() if name != "fact"}
    column = ROWS.get(head["kind"], (None, ""))[1]
    own = tuple({name: value for name, value in row.items() if name != column} for row in rows)
    one = Fact(
        head["kind"], head["subject"], bare, head["day"], head["learner"], head["follows"], own
    )
    try:
        return content_id(one, str(head["author"])) == str(head["id"])
    except (TypeError, KeyError):
        return False


def disagreements(connection: Connection) -> list[str]:
    """Say where two instructors decided differently: both stand until a person decides."""
    heads = Standing(connection)
    told = []
    for kind, table, value in (
        ("override", override, "points"), ("state", state, "word")
    ):  # fmt: skip
        rows = {row.fact: row for row in connection.execute(select(table))}
        for subject in sorted({row.subject for row in heads.of(kind)}):
            found = sorted(heads.heads(kind, subject), key=lambda one: heads.all[one].author)
            said = [getattr(rows[one], value) for one in found]
            if len(set(said)) > 1:
                each = ", ".join(
                    f"{heads.all[one].author} said {text:g}"
                    if isinstance(text, float)
                    else f"{heads.all[one].author} said {text}"
                    for one, text in zip(found, said, strict=True)
                )
                told.append(f"{subject.replace('/', ' ')}: {each}: decide anew")
    return told
