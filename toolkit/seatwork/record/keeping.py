"""The term record: facts that are added and never changed, in one file."""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import date
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Table, func, inspect, select

from seatwork.errors import SeatworkError
from seatwork.files import PRIVATE
from seatwork.record import lines
from seatwork.record.engine import open_engine, transaction
from seatwork.record.facts import Fact, content_id, kept, seal
from seatwork.record.server import open_server
from seatwork.record.tables import (
    FORMAT,
    KINDS,
    ORDER,
    ROWS,
    WORKED_OUT,
    about,
    fact,
    meta,
)

NAME = "record.db"
TAKEN_OVER = "old files"
"""What a record notes when it has taken over the files of a course."""


class Record:
    """A term record, open for one author.

    Parameters
    ----------
    place : Path
        Its file; made if it is not there.
    key : bytes
        The course key, which seals facts.
    author : str
        Code of the instructor who decides, such as I1.
    server : str, optional
        Address of the PostgreSQL server that keeps it instead; lines and tables of marks still
        lie beside `place`.

    Raises
    ------
    SeatworkError
        If the file is damaged, or a newer version wrote it.
    """

    def __init__(self, place: Path, key: bytes, author: str = "I1", server: str = "") -> None:
        self.place, self.key, self.author, self.server = place, key, author, server
        self.engine = open_server(server) if server else open_engine(place)
        with self.reading() as connection:
            begun = inspect(connection).has_table(about.name)
        if not begun:
            self._begin()
        found = int(self.note("format") or 0)
        if found > FORMAT:
            remedy = "install that version"
            raise SeatworkError(str(place), "a newer version wrote this record", remedy)

    def __repr__(self) -> str:
        return f"<Record {self.place.name}, {self.author}>"

    def _begin(self) -> None:
        """Make the tables; a kill leaves an empty file, in which this begins anew."""
        if not self.server:
            self.place.chmod(PRIVATE)
        with transaction(self.engine, self.place, writing=True) as connection:
            meta.create_all(connection)
            if connection.execute(select(about)).first() is None:
                connection.execute(about.insert(), [{"name": "format", "value": str(FORMAT)}])

    def note(self, name: str) -> str | None:
        """Return what the record says of itself under a name; None if nothing."""
        with self.reading() as connection:
            query = select(about.c.value).where(about.c.name == name)
            return connection.execute(query).scalar()

    def set_note(self, name: str, value: str) -> None:
        """Let the record say something of itself."""
        with transaction(self.engine, self.place, writing=True) as connection:
            connection.execute(about.delete().where(about.c.name == name))
            connection.execute(about.insert(), [{"name": name, "value": value}])

    @contextmanager
    def writing(self) -> Iterator["Batch"]:
        """Give a batch: all of its facts are kept, or none.

        Decisions are written as lines as soon as they are kept.

        Raises
        ------
        SeatworkError
            If another command writes for longer than 20 s, or the disk refuses.
        """
        with transaction(self.engine, self.place, writing=True) as connection:
            batch = Batch(self, connection)
            yield batch
            batch.flush()
        lines.add(self.place, batch.decisions)

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """Give a connection that sees the record as it is now, and nothing that comes later."""
        with transaction(self.engine, self.place) as connection:
            yield connection

    def count(self) -> int:
        """Return how many facts the record holds."""
        with self.reading() as connection:
            return connection.execute(select(func.count()).select_from(fact)).scalar() or 0

    def complete_lines(self) -> int:
        """Write decisions as lines that a kill left out; return how many."""
        known = lines.known(self.place)
        with self.reading() as connection:
            decided = fact.c.kind.not_in(WORKED_OUT)
            ids = set(connection.execute(select(fact.c.id).where(decided)).scalars())
            missing = list(decisions(connection, sorted(ids - known)))
        lines.add(self.place, missing)
        return len(missing)

    def close(self) -> None:
        """Let go of the file."""
        self.engine.dispose()


def decisions(connection: Connection, ids: Sequence[str]) -> Iterator[lines.Line]:
    """Yield decisions of a record as lines, by their ids."""
    for one in ids:
        head = dict(connection.execute(select(fact).where(fact.c.id == one)).one()._mapping)
        table = KINDS[head["kind"]]
        body = connection.execute(select(table).where(table.c.fact == one)).first()
        if body is not None:
            yield {"head": head, "body": dict(body._mapping)}


class Batch:
    """Facts of one transaction; they go in table by table, those before that others refer to.

    Parameters
    ----------
    record : Record
        Where they go.
    connection : Connection
        Within the transaction.
    """

    def __init__(self, record: Record, connection: Connection) -> None:
        self.record, self.connection = record, connection
        self.new: set[str] = set()
        self.decisions: list[lines.Line] = []
        self._rows: defaultdict[Table, list[dict[str, Any]]] = defaultdict(list)

    def __repr__(self) -> str:
        return f"<Batch: {len(self.new)} new facts>"

    def add(self, one: Fact) -> str:
        """Add a fact; the same fact again adds nothing.

        Returns
        -------
        str
            Its id.
        """
        _check_day(one.day)
        row_table, column = ROWS.get(one.kind, (None, ""))
        one = kept(one, row_table)
        found = content_id(one, self.record.author)
        if found in self.new or self._is_there(found):
            return found
        self.new.add(found)
        head = {
            "id": found,
            "kind": one.kind,
            "subject": one.subject,
            "learner": one.learner,
            "day": one.day,
            "author": self.record.author,
            "follows": one.follows,
            "seal": seal(self.record.key, found),
        }
        self.put(head, {"fact": found, **one.body}, [{column: found, **row} for row in one.rows])
        return found

    def put(
        self, head: dict[str, Any], body: dict[str, Any], rows: Sequence[dict[str, Any]] = ()
    ) -> None:
        """Add the rows of a fact that has its id already, as another record gives it."""
        kind = head["kind"]
        self._rows[fact].append(head)
        self._rows[KINDS[kind]].append(body)
        if kind in ROWS:
            self._rows[ROWS[kind][0]] += rows
        if kind not in WORKED_OUT:
            self.decisions.append({"head": head, "body": body})

    def _is_there(self, found: str) -> bool:
        query = select(fact.c.id).where(fact.c.id == found)
        return self.connection.execute(query).first() is not None

    def flush(self) -> None:
        """Write what was added; the transaction sees it from here on."""
        for table in ORDER:
            if self._rows[table]:
                self.connection.execute(table.insert(), self._rows[table])
        self._rows.clear()


def _check_day(day: str) -> None:
    try:
        date.fromisoformat(day)
    except ValueError as error:
        raise SeatworkError(day, "that is no day", "write one such as 2026-03-02") from error
