"""Bringing a record back from a copy: what was damaged is set aside, never thrown away."""

import sqlite3
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import course
from seatwork.record.checking import check
from seatwork.record.copying import FOLDER, by_size
from seatwork.record.course_record import author_of, server_of
from seatwork.record.keeping import NAME, Record
from seatwork.record.looking_over import look_over
from seatwork.record.merging import Brought, bring_facts, bring_lines
from seatwork.record.server import refuse_on_server


@dataclass(frozen=True, slots=True, kw_only=True)
class BroughtBack:
    """What bringing a record back came to.

    Parameters
    ----------
    copy : Path
        The copy it was brought back from.
    aside : Path or None
        Where the damaged record lies now.
    facts, decisions : Brought
        What was saved of the damaged record, and of the decision lines.
    """

    copy: Path
    aside: Path | None
    facts: Brought
    decisions: Brought

    def __repr__(self) -> str:
        return f"<BroughtBack from {self.copy.name}>"


def bring_back(folder: Path, copy: Path | None = None) -> BroughtBack:
    """Put a copy in the place of the record, and add what can be saved.

    Papers that are in neither come back with `seatwork mark` on the folder handed in.

    Parameters
    ----------
    folder : Path
        The instructor's folder.
    copy : Path, optional
        The copy, or a folder of copies such as a stick; the fullest sound one of the course
        folder if not given.

    Raises
    ------
    SeatworkError
        If the record is sound and whole, or there is no sound copy; then nothing is changed.
    """
    refuse_on_server(server_of(folder), "bringing it back")
    key = course.read_key(folder)
    with files.lock(folder, wait=20):
        _refuse_sound(folder, key)
        good = _sound(folder, key, copy)
        content, place = good.read_bytes(), folder / NAME
        aside = _set_aside(place)
        files.write(place, content, mode=files.PRIVATE)
        record = Record(place, key, author_of(folder))
        facts = _saved(record, aside)
        decisions = bring_lines(record)
        record.complete_lines()
        record.close()
    return BroughtBack(copy=good, aside=aside, facts=facts, decisions=decisions)


def _refuse_sound(folder: Path, key: bytes) -> None:
    """Leave a record alone that is sound and holds all that its copies and lines hold."""
    place = folder / NAME
    if not place.is_file() or _fault(place, key):
        return
    record = Record(place, key)
    told = look_over(record, folder)
    record.close()
    if not told:
        fault = "the record is sound and whole, so nothing is to be brought back"
        remedy = "what a copy holds beyond it is added by: seatwork record combine COPY"
        raise SeatworkError(str(place), fault, remedy)


def _sound(folder: Path, key: bytes, copy: Path | None) -> Path:
    """Return the copy to take: whole, sealed with this key, and the fullest of those."""
    if copy is not None and not copy.is_dir():
        fault = _fault(copy, key)
        if fault:
            raise SeatworkError(str(copy), fault, "take an earlier copy")
        return copy
    place = folder / FOLDER if copy is None else copy
    for one in reversed(_copies_in(place)):
        if not _fault(one, key):
            return one
    remedy = "name another with --from, or hand the sheets out again: forms come out the same"
    raise SeatworkError(str(place), "there is no sound copy of this course's record", remedy)


def _copies_in(place: Path) -> list[Path]:
    """Return the copies in a folder, or in its folder of copies; the copy of a stick is last."""
    stick = [place / NAME] if (place / NAME).is_file() else []
    return [*by_size(place / FOLDER), *by_size(place), *stick]


def _fault(copy: Path, key: bytes) -> str:
    if not copy.is_file():
        return "there is no such file"
    try:
        with closing(sqlite3.connect(f"{copy.resolve().as_uri()}?mode=ro", uri=True)) as source:
            if source.execute("PRAGMA integrity_check").fetchone()[0] != "ok":
                return "it is damaged"
        record = Record(copy, key)
        told = check(record)
        record.close()
    except (sqlite3.DatabaseError, UnicodeDecodeError, SeatworkError):
        return "it is damaged"
    return told[0] if told else ""


def _set_aside(place: Path) -> Path | None:
    """Move a record out of the way, with the journal that belongs to it."""
    if not place.exists():
        return None
    number = 1
    while (aside := place.with_name(f"record.damaged-{number}.db")).exists():
        number += 1
    for tail in ("", "-journal"):
        one = place.with_name(place.name + tail)
        if one.exists():
            try:
                one.replace(aside.with_name(aside.name + tail))
            except OSError as error:  # another program holds it open
                raise files.refusal(one, error) from error
    return aside


def _saved(record: Record, aside: Path | None) -> Brought:
    if aside is None:
        return Brought()
    try:
        return bring_facts(record, aside)
    except SeatworkError:
        return Brought()
