"""Papers as they are marked now, from the record: for feedback that agrees with the marks."""

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from sqlalchemy import Connection, select

from seatwork.marking.answers import parse
from seatwork.marking.handed import HandedOut
from seatwork.marking.marker import Marked
from seatwork.marking.sheets import Sheet
from seatwork.marking.submissions import Submission
from seatwork.record.class_now import Class
from seatwork.record.keeping import Record
from seatwork.record.tables import paper
from seatwork.record.takers import Takers


class MarkedAgain(NamedTuple):
    """A paper that counts, as marked now, with the points that a person gave.

    Parameters
    ----------
    sheet : Sheet
        The worksheet as it was handed out.
    form : HandedOut
        The learner's form.
    marked : Marked
        The paper.
    """

    sheet: Sheet
    form: HandedOut
    marked: Marked


def marked_again(
    record: Record, plan: Sheet, places: Iterable[tuple[str, int]], day: str
) -> Iterator[MarkedAgain]:
    """Yield the papers of learners that count.

    Parameters
    ----------
    record : Record
        The term record.
    plan : Sheet
        The worksheet as it is now.
    places : iterable of (str, int)
        Learners and the numbers of their forms; one without a paper is passed over.
    day : str
        Year-month-day.
    """
    wanted = set(places)
    with record.reading() as connection:
        takers = Takers(connection, plan, record.key)
        now = Class(connection, day, plan.name)
        for head in sorted(now.forms(), key=lambda row: row.subject):
            row = now.rows.forms[head.id]
            if (head.learner, row.number) in wanted:
                yield from _again(connection, takers, now, head.id)


def _again(connection: Connection, takers: Takers, now: Class, form: str) -> Iterator[MarkedAgain]:
    head, row = now.heads.all[form], now.rows.forms[form]
    learner = str(head.learner)
    counts, _ = now.paper(form, now.due(learner, takers.plan.name, row.sitting))
    handed = takers.given.forms.form(takers.plan.name, learner, row.number)
    if counts is None or handed is None:
        return
    query = select(paper.c.content, paper.c.came).where(paper.c.fact == counts.id)
    content, came = connection.execute(query).one()
    file = parse(content, "a paper in the record")
    marked = takers.mark(Submission(file.name, file, came=came))
    doubt = "" if now.cell(head).points is not None else marked.doubt
    given = now.given(form)
    scored = tuple(
        item._replace(points=given[item.id]) if item.id in given else item for item in marked.scored
    )
    if scored:
        again = Marked(name=file.name, file=file, scored=scored, doubt=doubt)
        yield MarkedAgain(takers.sheet(form), handed, again)
