"""The file of a record: one SQLite file without set-up, and what its errors say to a person."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.exc import DatabaseError, IntegrityError, OperationalError

from seatwork.errors import SeatworkError
from seatwork.files import refusal
from seatwork.record.server import UNANSWERED, isolation

WAIT = 20
"""How long a second writer waits [s]."""
SETTINGS = (
    "journal_mode=DELETE",  # the file at rest is whole: copying it alone is a true copy
    "synchronous=EXTRA",  # the folder's entry is forced to the disk too
    "foreign_keys=ON",
    "secure_delete=ON",
    "trusted_schema=OFF",
)
DAMAGED = (
    "the record is damaged",
    "run: seatwork record bring-back, then mark again all that was handed in",
)


def open_engine(place: Path) -> Engine:
    """Return the way to a record's file; nothing is opened yet.

    Parameters
    ----------
    place : Path
        The file; made at the first transaction if it is not there.
    """
    engine = create_engine(f"sqlite:///{place}", connect_args={"timeout": WAIT})
    event.listen(engine, "connect", _set_up)
    event.listen(engine, "begin", _begin)
    return engine


def _set_up(raw: Any, _: object) -> None:
    raw.isolation_level = None  # transactions begin where we say so
    for line in SETTINGS:
        raw.execute(f"PRAGMA {line}").fetchall()


def _begin(connection: Connection) -> None:
    writing = connection.get_execution_options().get("writing")
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writing else "BEGIN")


@contextmanager
def transaction(engine: Engine, place: Path, *, writing: bool = False) -> Iterator[Connection]:
    """Give a connection within one transaction: kept whole at the end, or not at all.

    Raises
    ------
    SeatworkError
        If another program writes for longer than 20 s, the disk is full, or the file is damaged.
    """
    with told(place), engine.connect() as plain:
        options = isolation(engine, writing=writing)
        connection = plain.execution_options(writing=writing, **options)
        with connection.begin():
            yield connection


@contextmanager
def told(place: Path) -> Iterator[None]:
    """Tell what SQLite says of a file, or a server of itself, in one sentence."""
    try:
        yield
    except IntegrityError as error:  # a rule of the tables: a fault of ours, never a person's
        raise error
    except OperationalError as error:
        raise _sentence(place, error) from error
    except (DatabaseError, UnicodeDecodeError) as error:
        raise SeatworkError(str(place), *DAMAGED) from error
    except OSError as error:
        raise refusal(place, error) from error


def _sentence(place: Path, error: OperationalError) -> SeatworkError:
    said = str(error.orig)
    if "psycopg" in type(error.orig).__module__ and "lock timeout" not in said:
        return SeatworkError("record", *UNANSWERED)
    if "lock timeout" in said or "locked" in said or "busy" in said:
        fault, remedy = "another command is writing there", "wait, then give the command again"
    elif "full" in said:
        fault = "the disk is full; what was kept before is whole"
        remedy = "free some space, then give the command again"
    elif "readonly" in said or "unable to open" in said or "disk I/O" in said:
        fault = "it cannot be written here"
        remedy = "look whose folder it is, and whether its disk is full"
    else:
        fault, remedy = DAMAGED
    return SeatworkError(str(place), fault, remedy)
