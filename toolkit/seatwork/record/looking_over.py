"""Looking a course folder over: the record, its lines and copies, names, and who may read it."""

import os
import sqlite3
import stat
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

from sqlalchemy import select

from seatwork import files
from seatwork.record import lines
from seatwork.record.checking import check
from seatwork.record.copying import FOLDER, by_size
from seatwork.record.erasing import still_naming
from seatwork.record.facts import who
from seatwork.record.keeping import Record
from seatwork.record.tables import erased, fact

LEAST_NAME = 3
"""Letters of a name that is looked for."""

PRIVATE = (
    "*.db",
    "*.jsonl",
    "*.key",
    "*-marks.*",
    "*-key*.pdf",
    "*-papers*.pdf",
    f"{FOLDER}/*.db",
)
"""Files of a course folder that hold marks, answers or the course key."""


def look_over(record: Record, folder: Path) -> list[str]:
    """Return what is wrong with a record, its lines and its copies, a sentence each.

    Parameters
    ----------
    record : Record
        The term record.
    folder : Path
        The instructor's folder.
    """
    return [*check(record), *_taken_out(record, folder)]


def _taken_out(record: Record, folder: Path) -> Iterator[str]:
    """Yield which facts of the fullest copy, and which decisions, are missing in the record."""
    with record.reading() as connection:
        there = set(connection.execute(select(fact.c.id)).scalars())
        gone = set(connection.execute(select(erased.c.who)).scalars())
    for copy in by_size(folder / FOLDER)[-1:]:
        theirs = _ids(copy)
        if theirs is None:
            yield f"{copy.name}: this copy is damaged"
            continue
        lost = [
            one for one, who_ in theirs if one not in there and not _is_gone(record, who_, gone)
        ]
        if lost:
            yield f"{len(lost)} facts of {copy.name} are not in the record"
    decided = [one["head"] for one in lines.read(record.place)]
    lost = [one["id"] for one in decided if one["id"] not in there
            and not _is_gone(record, one["learner"], gone)]  # fmt: skip
    if lost:
        yield f"{len(set(lost))} decisions of the lines are not in the record"


def _is_gone(record: Record, learner: str | None, gone: set[str]) -> bool:
    return learner is not None and who(record.key, learner) in gone


def _ids(copy: Path) -> list[tuple[str, str | None]] | None:
    try:
        with closing(sqlite3.connect(f"{copy.resolve().as_uri()}?mode=ro", uri=True)) as source:
            return list(source.execute("SELECT id, learner FROM fact"))
    except sqlite3.DatabaseError:
        return None


def mend_modes(folder: Path) -> list[str]:
    """Give what others on the computer could read to its owner alone; return which files.

    On a system without such rights nothing is done.
    """
    if os.name != "posix":
        return []
    mended = []
    if stat.S_IMODE(folder.stat().st_mode) & 0o077:
        folder.chmod(files.PRIVATE_FOLDER)
        mended.append(folder.name)
    for pattern in PRIVATE:
        for path in sorted(folder.glob(pattern)):
            if stat.S_IMODE(path.stat().st_mode) & 0o077:
                path.chmod(files.PRIVATE)
                mended.append(path.name)
    return mended


def names_found(folder: Path, names: dict[str, str]) -> list[str]:
    """Return the files of a course folder that hold one of the names, each with the code.

    Parameters
    ----------
    folder : Path
        The instructor's folder.
    names : dict of str to str
        Names by learner code, as `read_names` gives them.
    """
    return [
        f"{place} holds the name of {code}"
        for code, name in sorted(names.items())
        if len(name) >= LEAST_NAME
        for place in still_naming(folder, name)
    ]
