"""Which of several papers of one form may count, by the house rule."""

from collections.abc import Iterator, Sequence

from seatwork.record.cells import FIRST, LAST
from seatwork.record.reading import Contents
from seatwork.record.standing import Head

SECOND = "another paper came later: look"
LATER = "another paper came after the day: look"
DECIDED = "another paper came after it was decided which counts: look"


def candidates(
    rows: Contents, papers: Sequence[Head], due: str | None, rule: str
) -> tuple[list[Head], str]:
    """Return the papers of a form that may count, and what to look at.

    Parameters
    ----------
    rows : Contents
        What the record holds.
    papers : sequence of Head
        The papers of the form that stand.
    due : str or None
        The day it is due.
    rule : {"later until due", "first", "last"}
        The house rule.
    """
    in_time = [row for row in papers if due is None or row.day <= due]
    if rule == LAST:
        return _ends(rows, papers), ""
    if rule == FIRST:
        first = _begins(rows, papers)
        return first, SECOND if others(rows, papers, first) else ""
    found = _ends(rows, in_time) if in_time else _begins(rows, papers)
    late = [row for row in papers if row not in in_time]
    return found, LATER if others(rows, late, found) else ""


def others(rows: Contents, papers: Sequence[Head], found: Sequence[Head]) -> bool:
    """Whether papers have other answers than those found."""
    answers = {rows.papers[row.id].digest for row in found}
    return any(rows.papers[row.id].digest not in answers for row in papers)


def _ends(rows: Contents, papers: Sequence[Head]) -> list[Head]:
    behind = {one for row in papers for one in _before(rows, row)}
    return [row for row in papers if row.id not in behind]


def _begins(rows: Contents, papers: Sequence[Head]) -> list[Head]:
    ids = {row.id for row in papers}
    return [row for row in papers if not ids.intersection(_before(rows, row))]


def _before(rows: Contents, row: Head) -> Iterator[str]:
    """Yield the papers that one follows, the latest first."""
    one, known = row.follows, rows.standing.all
    while one in known:
        yield one
        one = known[one].follows
