"""Which of several papers of a form counts, when a person says so."""

from typing import Any

from sqlalchemy import select

from seatwork.errors import SeatworkError
from seatwork.record.deciding import SHORT, one_fact, stated
from seatwork.record.keeping import Record
from seatwork.record.reasons import reason_of
from seatwork.record.standing import Standing
from seatwork.record.tables import paper


def count_paper(record: Record, target: str, reason: str, day: str) -> tuple[str, str]:
    """Say that this paper of its form counts, whatever the house rule says; all stay kept.

    Parameters
    ----------
    record : Record
        The term record.
    target : str
        First signs of the paper's id, four or more.
    reason, day : str
        Why; year-month-day.

    Returns
    -------
    tuple of str
        Id of the decision, and code of the learner.

    Raises
    ------
    SeatworkError
        If no paper, or several, begin so, it was taken back, or that was said before.
    """
    said = reason_of(reason)
    with record.writing() as batch:
        row = one_fact(batch, target)
        _refuse_other(batch.connection, row, target)
        form = batch.connection.execute(
            select(paper.c.form).where(paper.c.fact == row.id)
        ).scalar_one()
        body = {"paper": row.id, "reason": said}
        return stated(batch, "choice", form, body, day, row.learner), row.learner


def _refuse_other(connection: Any, row: Any, target: str) -> None:
    """Refuse what is no paper, and a paper that was taken back."""
    remedy = f"seatwork history {row.learner or 'L01'} shows the papers; write the id of one"
    if row.kind != "paper":
        raise SeatworkError(target, f"that is a {row.kind.replace('_', ' ')}, no paper", remedy)
    if not Standing(connection, [row.subject]).stands(row.id):
        fault = f"paper {row.id[:SHORT]} was taken back"
        raise SeatworkError(target, fault, "undo that first, or name another paper")
