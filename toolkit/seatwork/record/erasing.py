"""Erasing a learner: out of the record, its lines, its copies and the tables of marks, for good."""

import re
import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

from sqlalchemy import delete, select, text, update

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import roster
from seatwork.marking.names import learner_code
from seatwork.record import lines
from seatwork.record.copying import FOLDER
from seatwork.record.engine import told, transaction
from seatwork.record.facts import who
from seatwork.record.keeping import Record
from seatwork.record.server import refuse_on_server
from seatwork.record.tables import KINDS, erased, fact, mark, sheet
from seatwork.record.tables_out import write_marks

PACKED = (".pdf", ".xlsx", ".ods", ".zip", ".gz")
"""Ends of names of files whose text is packed."""
CODE = re.compile(r"(?<![A-Za-z])[A-Z]\d{2,6}(?!\d)", re.ASCII)
LARGEST = 50_000_000
"""A file of the course folder that is looked through [bytes]."""


KIND_WORDS = {
    "sheet": ("sheet", "sheets"),
    "form": ("form handed out", "forms handed out"),
    "paper": ("paper", "papers"),
    "mark": ("mark", "marks"),
    "override": ("decision on points", "decisions on points"),
    "choice": ("decision which paper counts", "decisions which paper counts"),
    "pile": ("file that could not be marked", "files that could not be marked"),
    "state": ("thing said of the learner", "things said of the learner"),
    "part": ("inspected part", "inspected parts"),
    "sign_off": ("signature on paper", "signatures on paper"),
    "undo": ("thing taken back", "things taken back"),
}
"""What one fact of a kind is called, and what several are."""


def counted(kind: str, count: int) -> str:
    """Say how many facts of a kind there are.

    Examples
    --------
    >>> counted("paper", 1), counted("mark", 2)
    ('1 paper', '2 marks')
    """
    return f"{count} {KIND_WORDS[kind][count != 1]}"


def facts_about(record: Record, learner: str) -> dict[str, int]:
    """Return how many facts of each kind are about a learner.

    Raises
    ------
    SeatworkError
        If there are none.
    """
    query = select(fact.c.kind).where(fact.c.learner == learner_code(learner))
    with record.reading() as connection:
        kinds = list(connection.execute(query).scalars())
    if not kinds:
        raise SeatworkError(learner, "nobody of that code is in the record", "check the code")
    return {kind: kinds.count(kind) for kind in KINDS if kind in kinds}


def erase(record: Record, folder: Path, learner: str, day: str) -> list[str]:
    """Take a learner out of a course, for good; a keyed hash of the code stays.

    The hash tells nobody the code; by it an old copy that is merged brings nobody back.

    Parameters
    ----------
    record : Record
        The term record.
    folder : Path
        The instructor's folder.
    learner : str
        The code.
    day : str
        Year-month-day.

    Returns
    -------
    list of str
        Files of the folder that still hold the code, to be looked at by hand.
    """
    learner_code(learner)
    refuse_on_server(record.server, "erasing a learner")
    with files.lock(folder, wait=20):
        names = _names(record)
        _erase_in(record, learner, day)
        kept = [one for one in lines.read(record.place) if one["head"]["learner"] != learner]
        if lines.place_of(record.place).exists():
            lines.rewrite(record.place, kept)
        for copy in sorted((folder / FOLDER).glob("*.db")):
            other = Record(copy, record.key, record.author)
            _erase_in(other, learner, day)
            other.close()
        _off_the_roster(folder, learner)
        _erase_files(folder, learner)
        for name in names:
            if (folder / f"{name}-marks.csv").exists():
                write_marks(record, folder, name, day)
                (folder / f"{name}-marks.csv.bak").unlink(missing_ok=True)
    return still_naming(folder, learner)


def _names(record: Record) -> list[str]:
    with record.reading() as connection:
        return sorted(set(connection.execute(select(sheet.c.name)).scalars()))


def _erase_in(record: Record, learner: str, day: str) -> None:
    theirs = select(fact.c.id).where(fact.c.learner == learner)
    with transaction(record.engine, record.place, writing=True) as connection:
        connection.execute(text("PRAGMA defer_foreign_keys=ON"))
        for table in reversed(KINDS.values()):
            connection.execute(delete(table).where(table.c.fact.in_(theirs)))
        connection.execute(delete(fact).where(fact.c.learner == learner))
        connection.execute(update(mark).where(mark.c.ask.contains(learner)).values(ask=""))
        hashed = who(record.key, learner)
        if connection.execute(select(erased).where(erased.c.who == hashed)).first() is None:
            connection.execute(erased.insert(), [{"who": hashed, "day": day}])
    record.close()
    with told(record.place), closing(sqlite3.connect(record.place, isolation_level=None)) as raw:
        raw.execute("PRAGMA secure_delete=ON")
        raw.execute("VACUUM")


def _off_the_roster(folder: Path, learner: str) -> None:
    if (folder / roster.ROSTER_FILE).is_file():
        rows = [one for one in roster.read(folder) if one.code != learner]
        cells = ((one.code, one.group, one.extra_tries) for one in rows)
        files.write_table(folder / roster.ROSTER_FILE, roster.HEADS, cells)


def _erase_files(folder: Path, learner: str) -> None:
    """Take away what was written for a learner below the course folder."""
    for place in ("feedback", "from_paper", "reports"):
        for path in (folder / place).glob(f"{learner}-*"):
            path.unlink()
    shutil.rmtree(folder / "given" / learner, ignore_errors=True)


def may_show(folder: Path, learner: str) -> list[str]:
    """Return the files below a folder that may show a code and cannot be searched for it.

    What was printed for a class, and spreadsheets, are packed. Those that another learner's
    code names are that learner's, and tables of marks are written anew.
    """
    found = []
    for path in sorted(folder.rglob("*")):
        parts = path.relative_to(folder).parts
        named = {code for part in parts for code in CODE.findall(part)}
        others = bool(named) and learner not in named
        is_packed = path.suffix.lower() in PACKED and not path.name.endswith("-marks.xlsx")
        if path.is_file() and is_packed and not others:
            found.append("/".join(parts))
    return found


def still_naming(folder: Path, text_found: str) -> list[str]:
    """Return the files below a folder that hold a text in any byte or in their name."""
    raw, found = text_found.encode(), []
    for path in sorted(folder.rglob("*")):
        if path.is_file() and path.stat().st_size <= LARGEST:
            name = path.relative_to(folder).as_posix()
            if raw in path.read_bytes() or text_found in name:
                found.append(name)
    return found
