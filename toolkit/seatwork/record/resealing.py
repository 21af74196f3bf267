"""Sealing a record anew, where the course key was lost or stolen: every fact by another key."""

from collections import Counter
from dataclasses import dataclass
from pathlib import Path
from secrets import token_hex

from sqlalchemy import bindparam, func, select, update

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.course import KEY_BYTES, KEY_FILE, read_key
from seatwork.record import lines
from seatwork.record.checking import BY_HAND, check
from seatwork.record.copying import FOLDER, by_size
from seatwork.record.course_record import author_of, server_of
from seatwork.record.engine import transaction
from seatwork.record.facts import is_sealed, seal
from seatwork.record.keeping import NAME, Record
from seatwork.record.tables import erased, fact

WARNING = (
    "With another key nobody can tell any more whether a fact was put in by somebody else before:"
    " what stands in the record now is taken as it is. The seals on papers of forms handed out so"
    " far cannot be looked at; such papers count, and are asked about."
)
ERASED = (
    "were erased here: by another key they are not known again, so combine no older record, and"
    " bring no older copy back"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Resealed:
    """What sealing a record anew came to.

    Parameters
    ----------
    facts : int
        Facts sealed.
    copies : int
        Copies of days sealed with them.
    erased : int
        Learners who were erased, and are not known again by another key.
    """

    facts: int
    copies: int
    erased: int

    def __repr__(self) -> str:
        return f"<Resealed: {self.facts} facts, {self.copies} copies>"


def why_not(folder: Path, *, stolen: bool = False) -> str:
    """Say why a record need not, or must not, be sealed anew; empty if it may.

    Parameters
    ----------
    folder : Path
        The instructor's folder.
    stolen : bool
        Whether a key that fits is to be given up.
    """
    record = _opened(folder, _key(folder))
    try:
        seals = Counter(_fits(record))
        faults = [said for said in check(record) if "sealed with another key" not in said]
    finally:
        record.close()
    if faults:
        return f"{faults[0]}; bring it back first: what was changed is not to be sealed"
    if not (folder / KEY_FILE).is_file():
        return ""
    if seals[True] and seals[False]:
        count = f"{seals[False]} of {seals.total()} facts were"
        return f"{count} sealed with another key; somebody else put them in"
    if seals[True] and not stolen:
        return "its key is here and fits; if it was stolen, add --new-key"
    return ""


def reseal(folder: Path, *, stolen: bool = False) -> Resealed:
    """Seal a record, its lines and its copies with the key of the folder, or with a new one.

    The record is sealed in one transaction, before a new key is written: whoever is killed
    between begins anew.

    Parameters
    ----------
    folder : Path
        The instructor's folder.
    stolen : bool
        Whether the key that is here is given up for a new one.

    Raises
    ------
    SeatworkError
        As `why_not` says; then nothing is changed.
    """
    with files.lock(folder, wait=20):
        refused = why_not(folder, stolen=stolen)
        if refused:
            raise SeatworkError(str(folder / NAME), refused, "seatwork record check shows more")
        old, found = _key(folder), (folder / KEY_FILE).is_file() and not stolen
        key = old if found else bytes.fromhex(token_hex(KEY_BYTES))
        record = _opened(folder, key)
        count, gone = _seal_all(record), _erased(record)
        _seal_lines(record)
        record.close()
        copies = sum(_seal_copy(one, old, key) for one in by_size(folder / FOLDER))
        files.write(folder / KEY_FILE, f"{key.hex()}\n", mode=files.PRIVATE)
    return Resealed(facts=count, copies=copies, erased=gone)


def _key(folder: Path) -> bytes:
    """Return the key of a folder, one that fits nothing where there is none."""
    return read_key(folder) if (folder / KEY_FILE).is_file() else bytes(KEY_BYTES)


def _opened(folder: Path, key: bytes) -> Record:
    server = server_of(folder)
    if not (server or (folder / NAME).is_file()):
        raise SeatworkError(str(folder), "there is no record here", "name the right --course")
    return Record(folder / NAME, key, author_of(folder), server)


def _fits(record: Record) -> list[bool]:
    """Return of each fact whether its seal is the key's."""
    with record.reading() as connection:
        rows = connection.execute(select(fact.c.id, fact.c.seal)).all()
    return [is_sealed(record.key, row.id, row.seal) for row in rows]


def _seal_all(record: Record) -> int:
    with transaction(record.engine, record.place, writing=True) as connection:
        ids = list(connection.execute(select(fact.c.id)).scalars())
        said = update(fact).where(fact.c.id == bindparam("one")).values(seal=bindparam("now"))
        rows = [{"one": one, "now": seal(record.key, one)} for one in ids]
        if rows:
            connection.execute(said, rows)
    return len(ids)


def _erased(record: Record) -> int:
    with record.reading() as connection:
        return connection.execute(select(func.count()).select_from(erased)).scalar() or 0


def _seal_lines(record: Record) -> None:
    """Write the decision lines anew with the seals that the record has now.

    A line of which the record holds no fact stays as it is: nobody can tell who wrote it.
    """
    found = list(lines.read(record.place))
    with record.reading() as connection:
        there = set(connection.execute(select(fact.c.id)).scalars())
    for one in found:
        if one["head"]["id"] in there:
            one["head"]["seal"] = seal(record.key, one["head"]["id"])
    if found:
        lines.rewrite(record.place, found)


def _seal_copy(place: Path, old: bytes, key: bytes) -> bool:
    """Seal a copy of a day, if it is sound but for its key; one that is not stays as it is."""
    try:
        copy = Record(place, old)
        sound = not any(BY_HAND in said or "damaged" in said for said in check(copy))
        copy.key = key
        if sound:
            _seal_all(copy)
        copy.close()
    except SeatworkError:
        return False
    return sound
