"""A record on a PostgreSQL server, for a school that has one: the same tables, other locks.

Copies, bringing back and erasing are for files; on a server its keeper does them.
"""

from sqlalchemy import Connection, Engine, create_engine, event, make_url
from sqlalchemy.exc import ArgumentError

from seatwork.errors import SeatworkError

DRIVER = "postgresql+psycopg"
WAIT = 20
"""How long an answer of the server is waited for [s]."""
ONE_WRITER = 7_328
"""The server's lock that one writer holds at a time."""
UNANSWERED = (
    "the server of the record does not answer",
    "ask who keeps it; what was kept before is there",
)


def open_server(address: str) -> Engine:
    """Return the way to a record on a server; nothing is asked yet.

    Parameters
    ----------
    address : str
        Such as ``postgresql+psycopg://seatwork@records/term``.

    Raises
    ------
    SeatworkError
        If that is no such address, or what speaks to the server is not installed.
    """
    remedy = f"write one such as {DRIVER}://seatwork@records/term"
    try:
        url = make_url(address)
    except ArgumentError as error:
        raise SeatworkError("server", "that is no address of a server", remedy) from error
    if url.drivername != DRIVER:
        raise SeatworkError(url.drivername, "records are kept on PostgreSQL alone", remedy)
    try:
        engine = create_engine(url, connect_args={"connect_timeout": WAIT})
    except ModuleNotFoundError as error:
        fault = "what speaks to that server is not installed"
        raise SeatworkError(DRIVER, fault, 'run: pip install "seatwork[school]"') from error
    event.listen(engine, "begin", _begin)
    return engine


def _begin(connection: Connection) -> None:
    if connection.get_execution_options().get("writing"):
        connection.exec_driver_sql(f"SET LOCAL lock_timeout = '{WAIT}s'")
        connection.exec_driver_sql(f"SELECT pg_advisory_xact_lock({ONE_WRITER})")


def isolation(engine: Engine, *, writing: bool) -> dict[str, str]:
    """Return how a transaction sees what others do, for an engine on a server; else nothing.

    A reader sees one moment; a writer holds the lock and sees all that was kept before.
    """
    if engine.dialect.name != "postgresql":
        return {}
    return {"isolation_level": "READ COMMITTED" if writing else "REPEATABLE READ"}


def refuse_on_server(server: str, what: str) -> None:
    """Refuse what is for files alone.

    Raises
    ------
    SeatworkError
        If the record is on a server.
    """
    if server:
        fault = f"the record is on a server: {what} is done there"
        raise SeatworkError("record", fault, "ask who keeps the server")
