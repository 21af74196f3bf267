"""Points by hand: a person gives the points of one question, with the reason."""

from typing import NamedTuple

from sqlalchemy import select

from seatwork.errors import SeatworkError
from seatwork.marking.names import QUESTION, form_number, learner_code, sheet_name
from seatwork.record.class_now import Class
from seatwork.record.deciding import stated
from seatwork.record.formed import read_forms
from seatwork.record.keeping import Record
from seatwork.record.reasons import reason_of
from seatwork.record.tables import form, question
from seatwork.record.tables import override as override_rows


class Override(NamedTuple):
    """Points a person gives for one question.

    Parameters
    ----------
    learner, sheet, question : str
        Whose answer to what.
    form : int or None
        Which form; None where a paper of one form alone is in.
    points : float
        Points given [-].
    reason : str
        Why.
    """

    learner: str
    sheet: str
    form: int | None
    question: str
    points: float
    reason: str


def override(record: Record, given: Override, day: str) -> str:
    """Give points by hand, and return the id of the decision.

    Parameters
    ----------
    record : Record
        The term record.
    given : Override
        What is given.
    day : str
        Year-month-day.

    Raises
    ------
    SeatworkError
        If there is no such paper or question, the points are more than it is worth or those it
        has already, or no reason is given.
    """
    learner_code(given.learner)
    sheet_name(given.sheet)
    if given.form is not None:
        form_number(given.form)
    if not QUESTION.fullmatch(given.question):
        raise SeatworkError(given.question[:40], "that is no question", "write one such as c1")
    reason = reason_of(given.reason)
    with record.writing() as batch:
        now = Class(batch.connection, day, given.sheet)
        number, paper_form = _form_with_paper(now, given)
        sheet = now.rows.forms[paper_form].sheet
        worth = {
            row.id: row.points
            for row in batch.connection.execute(
                select(question).where(question.c.sheet == sheet).order_by(question.c.place)
            )
        }
        _check(given, worth, _standing_points(now, paper_form, given.question))
        body = {
            "form": paper_form,
            "sheet": sheet,
            "question": given.question,
            "of": worth[given.question],
            "points": given.points,
            "reason": reason,
        }
        subject = f"{given.learner}/{given.sheet}/{number}/{given.question}"
        return stated(batch, "override", subject, body, day, given.learner)


def decided_form(record: Record, made: str) -> int:
    """Return the number of the form that points were given on, by the id of the decision."""
    query = select(form.c.number).join(override_rows, override_rows.c.form == form.c.fact)
    with record.reading() as connection:
        return int(connection.execute(query.where(override_rows.c.fact == made)).scalar_one())


def form_of_sitting(record: Record, learner: str, name: str, sitting: int) -> int:
    """Return the number of the form that a learner was given at a sitting of a sheet.

    Raises
    ------
    SeatworkError
        If there was no such sitting.
    """
    with record.reading() as connection:
        forms = read_forms(connection, name).forms.forms(name, learner)
    found = [one.form for one in forms if one.sitting == sitting]
    if not found:
        fault = f"{name}, sitting {sitting}, was not handed out to this learner"
        raise SeatworkError(learner, fault, "check the sitting")
    return found[0]


def _form_with_paper(now: Class, given: Override) -> tuple[int, str]:
    """Return the form that points are given on; refuse one of which no paper was marked.

    Where papers of several forms are in, the form must be said.
    """
    who, name = given.learner, given.sheet
    theirs: dict[int, str] = {
        now.rows.forms[row.id].number: row.id
        for row in now.forms()
        if row.learner == who and now.rows.papers_of.get(row.id)
    }
    forms = ", ".join(map(str, sorted(theirs)))
    if given.form is None and len(theirs) == 1:
        return theirs.popitem()
    if given.form is not None and given.form in theirs:
        return given.form, theirs[given.form]
    if given.form is None and theirs:
        fault = f"papers of the forms {forms} of {name} are in"
        raise SeatworkError(who, fault, "add --form with the one that is meant")
    if theirs:
        fault = f"no paper of {name}, form {given.form}, was marked"
        raise SeatworkError(who, fault, f"add --form with one of {forms}")
    remedy = f"check the code; or mark their paper first: seatwork mark {name} FOLDER"
    raise SeatworkError(who, f"no paper of {name} was marked, so nothing can change", remedy)


def _standing_points(now: Class, form: str, name: str) -> float | None:
    """Return the points that a question of a form has now; None if a person must decide."""
    given = now.given(form)
    if name in given:
        return given[name]
    head = now.heads.all[form]
    sheet = now.rows.sheets[now.rows.forms[form].sheet].name
    due = now.due(str(head.learner), sheet, now.rows.forms[form].sitting)
    paper, _ = now.paper(form, due)
    mark = now.mark(paper)[0] if paper is not None else None
    row = now.rows.answers[mark.fact].get(name) if mark is not None else None
    return row.points if row is not None else None


def _check(given: Override, worth: dict[str, float], before: float | None) -> None:
    if given.question not in worth:
        fault = f"{given.sheet} has no such question"
        raise SeatworkError(given.question[:40], fault, f"write one of {', '.join(worth)}")
    of, said = worth[given.question], f"{given.points:g} points"
    if not 0 <= given.points <= of:
        fault = f"{given.question} is worth {of:g}"
        raise SeatworkError(said, fault, f"give 0 to {of:g}")
    if given.points == before:
        fault = f"{given.learner} has them already for {given.question}"
        raise SeatworkError(said, fault, "nothing is to change; give another number if it should")
