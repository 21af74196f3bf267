"""What came and cannot be marked: how it is held, and whether a paper has settled it."""

import hashlib
import re
from collections.abc import Container
from typing import NamedTuple

from seatwork.marking.marker import Marked
from seatwork.marking.submissions import owner_of
from seatwork.record.facts import Fact
from seatwork.record.keeping import Batch
from seatwork.record.reading import Contents, Kept
from seatwork.record.standing import Head

OURS = re.compile(r"([A-Z]\d{2,6})-([a-z][a-z0-9_-]{0,39})-(\d{1,2})\.json", re.ASCII)
"""The name under which the page saves a paper."""
CODE = re.compile(r"(?<![A-Z])[A-Z]\d{2,6}(?!\d)", re.ASCII)
"""A learner code in a file's name."""


class Piled(NamedTuple):
    """What cannot be marked, as the record holds it.

    Parameters
    ----------
    name : str
        What the record calls it; never the name it came under, which may be a person's.
    learner : str or None
        Whose it is, if that can be told.
    digest : str
        Hash of what came.
    """

    name: str
    learner: str | None
    digest: str


def piled(one: Marked, learners: Container[str]) -> Piled:
    """Return how the record holds what cannot be marked.

    Parameters
    ----------
    one : Marked
        What came.
    learners : container of str
        Codes of those who were given the sheet: one of them owns a file in a folder of that
        name, or with the code in its own.
    """
    content = one.file.content() if one.file is not None else None
    said = content if content is not None else f"{one.name}\n{one.doubt}".encode(errors="replace")
    digest = hashlib.sha256(said).hexdigest()
    base = one.name.rpartition("/")[2]
    shown = one.file.name if one.file is not None else base
    if one.file is not None:
        learner: str | None = one.file.learner
    else:
        codes = [owner_of(one.name), *CODE.findall(base.upper())]
        learner = next((code for code in codes if code and code in learners), None)
    if not OURS.fullmatch(shown):
        shown = f"file {digest[:8]}" + (f" of {learner}" if learner else "")
    return Piled(shown, learner, digest)


def put_on_pile(batch: Batch, name: str, one: Marked, day: str, learners: Container[str]) -> str:
    """Keep that something came which cannot be marked, and return the id.

    Parameters
    ----------
    batch : Batch
        What is being kept.
    name : str
        Name of the sheet.
    one : Marked
        What came.
    day : str
        Year-month-day.
    learners : container of str
        As for `piled`.
    """
    held = piled(one, learners)
    body = {
        "sheet": name,
        "name": held.name,
        "digest": held.digest,
        "content": one.file.content() if one.file is not None else None,
        "doubt": one.doubt,
    }
    return batch.add(Fact("pile", f"pile/{name}/{held.digest[:12]}", body, day, held.learner))


def waiting(rows: Contents, name: str | None = None) -> list[tuple[Head, Kept]]:
    """Return what came and could not be marked, and has no paper that settles it.

    Parameters
    ----------
    rows : Contents
        The record as read.
    name : str, optional
        Of this sheet alone.
    """
    papers = [row for some in rows.papers_of.values() for row in some]
    digests = {rows.papers[row.id].digest for row in papers}
    last: dict[str, str] = {}  # by learner, sheet and form, the day of the last paper
    for row in papers:
        last[row.subject] = max(row.day, last.get(row.subject, ""))
    found: dict[str, tuple[Head, Kept]] = {}
    for row in sorted(rows.standing.of("pile"), key=lambda row: row.learner or ""):
        one = rows.piles[row.id]
        settled = one.digest in digests or _is_settled(rows, row, one, last)
        if not settled and name in (None, one.sheet):
            found[row.subject] = row, one  # of two names, that which tells whose it is
    return sorted(found.values(), key=lambda both: (both[1].sheet, both[1].name, both[0].id))


def _is_settled(rows: Contents, row: Head, one: Kept, last: dict[str, str]) -> bool:
    """Whether the paper that a file names came on its day or later; if none, all its owner's.

    A file that came after the paper is looked at: it may be the better one.
    """
    named = place_named(one.name)
    theirs = [named] if named else _places_of(rows, row.learner, one.sheet)
    return bool(theirs) and all(last.get(place, "") >= row.day for place in theirs)


def _places_of(rows: Contents, learner: str | None, name: str) -> list[str]:
    """Return learner, sheet and form of each form that a learner was given of a sheet."""
    if learner is None:
        return []
    forms = [row for row in rows.standing.of("form") if row.learner == learner]
    return [row.subject for row in forms if row.subject.split("/")[1] == name]


def place_named(name: str) -> str:
    """Return the place that the name of a paper says, such as ``L07/cones/1``; empty if none.

    Examples
    --------
    >>> place_named("L07-cones-1.json"), place_named("homework.json")
    ('L07/cones/1', '')
    """
    found = OURS.fullmatch(name)
    return f"{found[1]}/{found[2]}/{int(found[3])}" if found else ""
