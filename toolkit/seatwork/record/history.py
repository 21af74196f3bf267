"""What the record says of a learner, fact by fact, in the order in which facts follow."""

from collections.abc import Callable
from typing import Any, NamedTuple

from sqlalchemy import Connection, select

from seatwork.errors import SeatworkError
from seatwork.marking.names import learner_code
from seatwork.record.class_now import Class
from seatwork.record.keeping import Record
from seatwork.record.reading import Contents
from seatwork.record.tables import KINDS, undo

CAME = {
    "screen": "as an answer file",
    "paper": "typed back from paper",
    "results": "from marks kept before there was a record",
}
WORDS: dict[str, Callable[[Contents, Any], str]] = {
    "form": lambda rows, one: _form(rows, one),
    "paper": lambda rows, one: f"paper came in, {CAME[rows.papers[one.id].came]}",
    "mark": lambda rows, one: _mark(rows, one),
    "override": lambda rows, one: _override(rows, one),
    "choice": lambda rows, one: f"this paper counts: {rows.choices[one.id].reason}",
    "pile": lambda rows, one: f"cannot be marked: {rows.piles[one.id].doubt}",
    "state": lambda rows, one: _state(rows, one),
    "part": lambda rows, one: f"{rows.parts[one.id].feature}: {rows.parts[one.id].verdict}",
    "sign_off": lambda rows, one: _signed(rows, one),
}


class Line(NamedTuple):
    """A line of a learner's history.

    Parameters
    ----------
    id, day, author : str
        Of the fact.
    about, text : str
        What it is about, and what it says.
    stands : bool
        Whether it was not taken back.
    counts : bool
        Whether it stands, and nothing that stands follows it; of papers, whether it is the one
        of its form that counts, and of marks, whether it is the mark of that paper.
    """

    id: str
    day: str
    author: str
    about: str
    text: str
    stands: bool
    counts: bool


def history(record: Record, learner: str, sheet: str = "") -> list[Line]:
    """Return what the record holds of a learner: everything, or what is about one sheet.

    Parameters
    ----------
    record : Record
        The term record.
    learner : str
        The code.
    sheet : str
        Name of a sheet; with it come the undos of what is about it.

    Raises
    ------
    SeatworkError
        If nobody of that code is in the record.
    """
    learner_code(learner)
    with record.reading() as connection:
        now = Class(connection, "")
        reasons = _reasons(connection)
    rows = now.rows
    found = rows.standing.about(learner)
    if not found:
        raise SeatworkError(learner, "nobody of that code is in the record", "check the code")
    place, kinds = f"{learner}/{sheet}/" if sheet else "", [*KINDS]
    about = [one for one in found if f"{_place(rows, one)}/".startswith(place)]
    about.sort(key=lambda one: (one.day, _place(rows, one), kinds.index(one.kind)))
    counting = now.counting_papers(learner)
    return [_line(rows, one, reasons, counting) for one in about]


def _place(rows: Contents, one: Any) -> str:
    """Return what a fact is about, such as L07/cones/1; an undo is about what it takes back."""
    while one.subject in rows.standing.all:
        one = rows.standing.all[one.subject]
    return str(one.subject)


def _reasons(connection: Connection) -> dict[str, str]:
    rows = connection.execute(select(undo))
    return {row.fact: f"takes {row.target[:6]} back: {row.reason}" for row in rows}


def _line(rows: Contents, one: Any, reasons: dict[str, str], counting: set[str]) -> Line:
    heads = rows.standing
    said = reasons[one.id] if one.kind == "undo" else WORDS[one.kind](rows, one)
    about = "undo" if one.kind == "undo" else _place(rows, one)
    stands = heads.stands(one.id)
    counts = stands and one.id in heads.heads(one.kind, one.subject)
    if one.kind == "paper":
        counts = one.id in counting
    if one.kind == "mark":
        counts = counts and one.subject in counting
    return Line(one.id, one.day, one.author, about, said, stands, counts)


def _form(rows: Contents, one: Any) -> str:
    row = rows.forms[one.id]
    return f"handed out, sitting {row.sitting}, form {row.number}, {row.mode}"


def _mark(rows: Contents, one: Any) -> str:
    row = rows.marks[one.id]
    paper = one.subject[:6]
    if row.points is None:
        return f"needs a person: {row.doubt or 'a question waits'} (paper {paper})"
    return f"marked {row.points:g} of {row.of:g} (paper {paper})"


def _override(rows: Contents, one: Any) -> str:
    row = rows.overrides[one.id]
    return f"{row.question}: {row.points:g} of {row.of:g} given: {row.reason}"


def _state(rows: Contents, one: Any) -> str:
    row = rows.states[one.id]
    word = {"lost": "paper lost", "withdrawn": "left"}.get(row.word, row.word)
    return f"{word} {row.value}" if row.word == "due" else f"{word}: {row.reason}"


def _signed(rows: Contents, one: Any) -> str:
    row = rows.sign_offs[one.id]
    return f"{row.machine}: {row.word} on paper, which lies at {row.paper_at}"
