"""Facts: what one says, and the id and the seal that follow from it."""

import hashlib
import hmac
import json
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, NamedTuple

from sqlalchemy import Float, Table

from seatwork.record.tables import KINDS, WORKED_OUT

Values = dict[str, Any]
UNSAID = frozenset({"ask", "program"})
"""Columns of a mark that are no part of its id: what to ask, which names another learner, and
the version that marked, so that two versions which agree keep one fact."""


class Fact(NamedTuple):
    """A fact before it is kept.

    Parameters
    ----------
    kind : str
        The table it goes into.
    subject : str
        What a chain of facts is about, such as ``L07/cones/1``.
    body : dict
        The columns of its kind.
    day : str
        Year-month-day.
    learner : str or None
        Whom it is about; None if no single learner.
    follows : str or None
        Id of the fact it stands in place of.
    rows : tuple of dict
        Questions of a sheet, answers of a mark.
    """

    kind: str
    subject: str
    body: Values
    day: str
    learner: str | None = None
    follows: str | None = None
    rows: tuple[Values, ...] = ()


def text_of(value: object) -> bytes:
    """Return a value as JSON, the same for the same value; bytes stand as their hash.

    Examples
    --------
    >>> text_of({"b": 1, "a": [2.5, None]})
    b'{"a":[2.5,null],"b":1}'
    """
    return json.dumps(
        value,
        ensure_ascii=False,
        sort_keys=True,
        separators=(",", ":"),
        default=lambda raw: hashlib.sha256(raw).hexdigest(),
    ).encode("utf-8", "backslashreplace")


def as_kept(table: Table, row: Mapping[str, Any]) -> Values:
    """Return a row as the database gives it back: a number is a float where the column is one."""
    return {
        name: float(value) if value is not None and isinstance(table.c[name].type, Float) else value
        for name, value in row.items()
    }


def content_id(one: Fact, author: str) -> str:
    """Return the id of a fact: 128 bits of SHA-256 over what it says.

    The same thing twice is one fact. Of what a person decides, the day and the author are a
    part; of what the program works out they are not, so that two instructors who mark the same
    paper on two days keep one fact.

    Parameters
    ----------
    one : Fact
        As `as_kept` leaves its numbers.
    author : str
        The instructor's code.
    """
    who = [] if one.kind in WORKED_OUT else [one.day, author]
    rows = sorted(one.rows, key=lambda row: str(row.get("question") or row["id"]))
    body = {name: value for name, value in one.body.items() if name not in UNSAID}
    said = [one.kind, one.subject, body, rows, one.follows, *who]
    return hashlib.sha256(text_of(said)).hexdigest()[:32]


def kept(one: Fact, row_table: Table | None = None) -> Fact:
    """Return a fact with its numbers as the database gives them back."""
    rows = tuple(as_kept(row_table, row) for row in one.rows) if row_table is not None else ()
    return one._replace(body=as_kept(KINDS[one.kind], one.body), rows=rows)


def seal(key: bytes, fact_id: str) -> str:
    """Return the seal of a fact: a hash of its id, keyed with the course key."""
    return hmac.new(key, fact_id.encode(), hashlib.sha256).hexdigest()[:32]


def is_sealed(key: bytes, fact_id: str, found: object) -> bool:
    """Whether a seal is the one that the course key gives."""
    return isinstance(found, str) and hmac.compare_digest(seal(key, fact_id), found)


def who(key: bytes, learner: str) -> str:
    """Return what stays of a learner who was erased; without the key it tells nobody the code."""
    return hmac.new(key, b"erased " + learner.encode(), hashlib.sha256).hexdigest()


def in_pieces(values: Iterable[Any], size: int = 400) -> Iterable[Sequence[Any]]:
    """Yield values in pieces that one question to the database takes."""
    listed = list(values)
    for start in range(0, len(listed), size):
        yield listed[start : start + size]
