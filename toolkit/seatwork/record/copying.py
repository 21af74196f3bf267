"""Copies of the record, made while it is in use and looked over before they get their name."""

import os
import sqlite3
from contextlib import closing, suppress
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.course import KEY_FILE, read_key
from seatwork.record.keeping import NAME, Record
from seatwork.record.server import refuse_on_server

FOLDER = "copies"
KEEP = 30
"""Copies of days that are kept."""


def copy(record: Record, target: Path) -> Path:
    """Copy a record to a file.

    Parameters
    ----------
    record : Record
        What is copied, as it is at one moment.
    target : Path
        The file; one that is there is replaced, whole.

    Raises
    ------
    SeatworkError
        If the disk refuses, or the copy is not whole.
    """
    refuse_on_server(record.server, "copying it (pg_dump)")
    beside = target.with_name(f".{target.name}.part")
    try:
        files.make_folder(target.parent, private=True)
        with suppress(FileNotFoundError):
            beside.unlink()
        found = _back_up(record.place, beside)
        if found != "ok":
            remedy = "run: seatwork record check"
            raise SeatworkError(str(target), f"the copy is not whole: {found}", remedy)
        beside.chmod(files.PRIVATE)
        with beside.open("rb+") as file:
            os.fsync(file.fileno())
        beside.replace(target)
    except OSError as error:
        raise files.refusal(target, error) from error
    finally:
        with suppress(OSError):
            beside.unlink(missing_ok=True)
    return target


def _back_up(source: Path, target: Path) -> str:
    try:
        with (
            closing(sqlite3.connect(source, timeout=20)) as one,
            closing(sqlite3.connect(target)) as other,
        ):
            one.backup(other)
            other.execute("PRAGMA journal_mode=DELETE")
            return str(other.execute("PRAGMA integrity_check").fetchone()[0])
    except sqlite3.DatabaseError as error:
        return str(error)


def copy_for_day(record: Record, day: str, *, again: bool = False) -> Path | None:
    """Make the copy before the first write of a day, and keep no more than 30.

    Parameters
    ----------
    record : Record
        What is copied.
    day : str
        The day, part of the copy's name beside how many facts it holds.
    again : bool
        Make another copy if one of that day is there: after a hand-out.

    Returns
    -------
    Path or None
        The copy; None if none was needed, or the record is on a server.
    """
    if record.server:
        return None
    folder, count = record.place.parent / FOLDER, record.count()
    there = any(folder.glob(f"record-{day}-*.db")) if folder.is_dir() else False
    if not count or (there and not again):
        return None
    made = copy(record, folder / f"record-{day}-{count:06d}.db")
    for old in by_size(folder)[:-KEEP]:
        if old != made:
            old.unlink(missing_ok=True)
    return made


def by_size(folder: Path) -> list[Path]:
    """Return the copies in a folder, those with the fewest facts first.

    The clock of a computer may be wrong; how much is in a copy is not.
    """
    return sorted(folder.glob("record-*-*.db"), key=_facts_in)


def _facts_in(copy_file: Path) -> tuple[int, str]:
    count = copy_file.stem.rpartition("-")[2]
    return int(count) if count.isascii() and count.isdigit() else 0, copy_file.name


def copy_to(record: Record, place: Path) -> Path:
    """Copy a record to a file or into a folder, such as a stick.

    Raises
    ------
    SeatworkError
        If it would lie on the record itself, or `copy` refuses.
    """
    target = place / NAME if place.is_dir() or not place.suffix else place
    if target.resolve() == record.place.resolve():
        raise SeatworkError(str(target), "that is the record itself", "name another folder")
    return copy(record, target)


def copy_key(folder: Path, copied: Path) -> Path:
    """Copy the course key of a folder beside a copy of its record, for its owner alone.

    Parameters
    ----------
    folder : Path
        The instructor's folder.
    copied : Path
        The copy of the record.

    Raises
    ------
    SeatworkError
        If there is no course key, or another course's key lies there.
    """
    target, key = copied.with_name(KEY_FILE), read_key(folder).hex()
    if target.exists() and target.read_text(encoding="ascii", errors="replace").strip() != key:
        fault = "the key of another course lies there already"
        raise SeatworkError(str(target), fault, "name another folder")
    files.write(target, f"{key}\n", mode=files.PRIVATE)
    return target
