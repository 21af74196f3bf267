"""The forms of a sheet that a class was given, as papers to take home."""

from collections.abc import Collection
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.marking.sealing import form_secret
from seatwork.marking.sheets import Sheet
from seatwork.record.course_record import open_record
from seatwork.record.takers import Takers
from seatwork.takehome.graded import Paper

GRADED = "graded"


def papers(
    folder: Path, plan: Sheet, sitting: int = 1, only: Collection[str] = ()
) -> tuple[Paper, ...]:
    """Return each learner's form of a sheet, as it was handed out.

    Parameters
    ----------
    folder : Path
        The instructor's folder; nothing is written there.
    plan : Sheet
        The worksheet as it is now; what was handed out is drawn as it was then.
    sitting : int
        1 for the first test, 2 for the first re-test.
    only : collection of str
        Learner codes; all if there are none.

    Raises
    ------
    SeatworkError
        If nothing was handed out, or for practice, or one of `only` was given nothing.
    """
    record = open_record(folder)
    try:
        with record.reading() as connection:
            key, takers = record.key, Takers(connection, plan, record.key)
    finally:
        record.close()
    given = takers.given.forms.sheets.get(plan.name, {})
    asked = {code.upper() for code in only} or set(given)
    if not asked:
        fault = f"{plan.name} was handed out to nobody"
        raise SeatworkError(str(folder), fault, f"seatwork hand-out {plan.name} does that")
    return tuple(_paper(folder, takers, key, code, sitting) for code in sorted(asked))


def _paper(folder: Path, takers: Takers, key: bytes, learner: str, sitting: int) -> Paper:
    name = takers.plan.name
    given = takers.given.forms.forms(name, learner)
    form = next((one for one in given if one.sitting == sitting), None)
    if form is None:
        fault = f"{name} was not handed out to {learner}, sitting {sitting}"
        raise SeatworkError(str(folder), fault, f"seatwork hand-out {name} does that")
    if form.mode != GRADED:
        fault = f"{learner} was given {name} for practice"
        remedy = f"hand out a re-test with --sitting {sitting + 1} --mode graded"
        raise SeatworkError(name, fault, remedy)
    sheet = takers.sheet(takers.given.ids[name, learner, form.form])
    return Paper(
        learner=learner,
        sheet=sheet,
        form=form.form,
        questions=form.questions(sheet),
        form_id=form.form_id,
        secret=form_secret(key, form.form_id) if form.form_id else b"",
    )
