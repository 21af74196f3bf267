"""Looking over the term records beside a workbook: whole, copied, and closed to others."""

import os
import shlex
import sqlite3
import stat
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.opening.checked import Check

MOST_TOLD = 3
SIGNS = ("record.db", "record.decisions.jsonl", "copies/record-*.db")
"""What shows that a folder holds a record, or held one that is gone."""
CHECK = "seatwork record check --course"


def records(folder: Path) -> Iterator[Check]:
    """Look at the record of every course in a workbook, and of the one in the working folder.

    Parameters
    ----------
    folder : Path
        The workbook.
    """
    places = sorted(path for path in folder.glob("*") if path.is_dir())
    here = Path("course").absolute()
    if here not in [one.absolute() for one in places]:
        places.append(here)
    for place in places:
        if any(any(place.glob(sign)) for sign in SIGNS):
            yield from record(place)


def record(course: Path) -> Iterator[Check]:
    """Look at one record: what it holds, its copies, and who may read it."""
    yield whole(course)
    yield copies(course)
    yield modes(course)


def whole(course: Path) -> Check:
    """Work every fact of a record out again, and hold it against its copies and lines."""
    from seatwork.record.course_record import open_record
    from seatwork.record.looking_over import look_over

    name, ours = f"record {course.name}", shlex.quote(str(course))
    try:
        found = open_record(course)
        try:
            faults = look_over(found, course)
        finally:
            found.close()
    except SeatworkError as error:
        faults = [f"{error.value}: {error.fault}"]
    if not faults:
        return Check(name=name, found="every fact is as it was kept")
    told = "; ".join(faults[:MOST_TOLD]) + (
        f" and {len(faults) - MOST_TOLD} more" if len(faults) > MOST_TOLD else ""
    )
    return Check(name=name, found=told, fix=f"run: {CHECK} {ours}, it says what to do")


def copies(course: Path) -> Check:
    """Look whether there is a copy of a record to go back to, and how far it is behind.

    A copy is made before a day's first write, so it may lack what was written on one day.
    """
    found = sorted((course / "copies").glob("record-*.db"))
    name = f"copies of {course.name}"
    fix = f"run: seatwork record copy STICK --course {shlex.quote(str(course))}"
    if not found:
        return Check(name=name, found="none", fix=fix)
    told, days = f"{len(found)} here; a copy elsewhere outlives this disk", _days_behind(course)
    if len(days) > 1:
        told = f"the fullest lacks what was written on {', '.join(days[-MOST_TOLD:])}"
        return Check(name=name, found=told, fix=fix)
    return Check(name=name, found=told)


def _days_behind(course: Path) -> list[str]:
    """Return the days of facts that no copy has; none where record or copy cannot be read."""
    from seatwork.record.copying import FOLDER, by_size

    try:
        *_, fullest = (course / "record.db", *by_size(course / FOLDER))
        there, kept = _facts(course / "record.db"), _facts(fullest)
    except sqlite3.DatabaseError:
        return []  # told by the check of the record itself
    return sorted({day for one, day in there.items() if one not in kept})


def _facts(place: Path) -> dict[str, str]:
    """Return the day of each fact of a record or a copy."""
    with closing(sqlite3.connect(f"{place.resolve().as_uri()}?mode=ro", uri=True)) as source:
        return dict(source.execute("SELECT id, day FROM fact"))


def modes(course: Path) -> Check:
    """Look whether other accounts can read a record, its copies, its key or its marks."""
    from seatwork.record.looking_over import PRIVATE

    name = f"rights of {course.name}"
    if os.name != "posix":
        return Check(name=name, found="this system says nothing; use an account of your own")
    private = [course, *(path for one in PRIVATE for path in sorted(course.glob(one)))]
    open_ones = [path.name for path in private if stat.S_IMODE(path.stat().st_mode) & 0o077]
    if not open_ones:
        return Check(name=name, found="for this account alone")
    fix = f"run: {CHECK} {shlex.quote(str(course))}, it closes them"
    return Check(name=name, found=f"others can read {', '.join(open_ones[:MOST_TOLD])}", fix=fix)
