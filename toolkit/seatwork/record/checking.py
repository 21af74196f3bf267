"""Looking a record over: its file, what refers to what, and every id and seal."""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from typing import Any

from sqlalchemy import Connection, Table, or_, select, text

from seatwork.record.facts import Fact, content_id, is_sealed
from seatwork.record.keeping import Record
from seatwork.record.tables import KINDS, ROWS, fact

BY_HAND = "was changed by hand"
FEW = 100
"""Learners whose facts are looked up one by one; for more all facts are read."""


def check(record: Record) -> list[str]:
    """Look a record over; nothing is changed.

    Parameters
    ----------
    record : Record
        What is looked over.

    Returns
    -------
    list of str
        What is wrong, a sentence each; empty if all is well. A last fact that somebody took
        out is not seen here; it is seen against the day's copy and the decision lines.
    """
    with record.reading() as connection:
        if record.server:  # which looks after its own files
            return list(changed(connection, record.key))
        whole = connection.execute(text("PRAGMA integrity_check")).scalars()
        told = [f"the file is damaged: {said}" for said in whole if said != "ok"]
        loose = connection.execute(text("PRAGMA foreign_key_check"))
        told += [f"{row[0]}: a row refers to a fact that is missing" for row in loose]
        return told + list(changed(connection, record.key))


def changed(
    connection: Connection, key: bytes, learners: Sequence[str] | None = None
) -> Iterator[str]:
    """Yield what was changed by hand: facts whose id or seal is not what they say.

    Parameters
    ----------
    connection : Connection
        To the record.
    key : bytes
        The course key.
    learners : sequence of str, optional
        Look at facts about these alone; at all if not given, or if they are many.
    """
    few = learners is not None and len(learners) <= FEW
    query = select(fact)
    if few:  # the sheets with them, which say what a question is worth
        query = query.where(or_(fact.c.learner.in_(learners or ()), fact.c.kind == "sheet"))
    heads = {row.id: row for row in connection.execute(query)}
    ids = list(heads) if few else None
    for kind, table in KINDS.items():
        yield from _of_kind(connection, kind, table, heads, ids, key)
    for row in heads.values() if not few else ():
        if row.follows and row.follows not in heads:
            yield f"{row.kind} {row.id[:8]}: what it follows is missing"


def _of_kind(
    connection: Connection,
    kind: str,
    table: Table,
    heads: dict[str, Any],
    ids: list[str] | None,
    key: bytes,
) -> Iterator[str]:
    """Yield the facts of one kind that are not what they say, or say nothing."""
    own, column = ROWS.get(kind, (None, ""))
    rows: defaultdict[str, list[dict[str, Any]]] = defaultdict(list)
    if own is not None:
        few = select(own) if ids is None else select(own).where(own.c[column].in_(ids))
        for row in connection.execute(few):
            body = dict(row._mapping)
            rows[body.pop(column)].append(body)
    seen = set()
    few = select(table) if ids is None else select(table).where(table.c.fact.in_(ids))
    for row in connection.execute(few):
        body = dict(row._mapping)
        found = body.pop("fact")
        seen.add(found)
        if not _is_what_it_says(heads.get(found), found, kind, body, rows[found]):
            yield f"{kind} {found[:8]}: it {BY_HAND}"
        elif not is_sealed(key, found, heads[found].seal):
            yield f"{kind} {found[:8]}: it was sealed with another key"
    for head in heads.values():
        if head.kind == kind and head.id not in seen:
            yield f"{kind} {head.id[:8]}: it says nothing"


def _is_what_it_says(
    head: Any, found: str, kind: str, body: dict[str, Any], rows: list[dict[str, Any]]
) -> bool:
    if head is None or head.kind != kind:
        return False
    said = Fact(kind, head.subject, body, head.day, head.learner, head.follows, tuple(rows))
    return content_id(said, head.author) == found
