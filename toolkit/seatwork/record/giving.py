"""Handing out with the record: every form that is told as handed out is kept, or none is."""

from collections.abc import Mapping, Sequence
from pathlib import Path

from sqlalchemy import select

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import handing_out as drawing
from seatwork.marking import roster
from seatwork.marking.handed import Forms, HandedOut
from seatwork.marking.handing_out import Handout
from seatwork.marking.sheets import Sheet, load
from seatwork.record.copying import copy_for_day
from seatwork.record.course_record import day_of, open_record, writable_record
from seatwork.record.deciding import enroll, set_due, withdrawn
from seatwork.record.formed import Given, add_form, pin, read_forms
from seatwork.record.keeping import Record
from seatwork.record.tables import fact

WAIT = 20.0
"""How long a second hand-out waits for the first [s]."""


def hand_out(
    folder: str | Path,
    sheet: Sheet | str,
    learners: Sequence[str],
    *,
    sitting: int = 1,
    mode: str | None = None,
    target: str | Path | None = None,
    due: str = "",
    day: str = "",
) -> tuple[Handout, ...]:
    """Draw a sheet for every learner, keep what was drawn, and write what learners get.

    Doing it again gives the same forms, byte for byte, and adds nothing.

    Parameters
    ----------
    folder : str or Path
        The instructor's folder; the course key and the record are made there if there are none.
    sheet : Sheet or str
        The worksheet, or its name.
    learners : sequence of str
        Learner codes.
    sitting : int
        1 for the first test, 2 for the first re-test; no question of a re-test has the
        numbers it had in an earlier form of the same learner.
    mode : {"practice", "graded"}, optional
        As the sheet says if not given.
    target : str or Path, optional
        Where each learner's folder with ``SHEET.given.json`` goes; none is written if
        not given.
    due : str
        The day it is due, year-month-day; empty for none. It holds for these learners alone
        where others have had this sitting already.
    day : str
        The day of handing out; today if not given.

    Raises
    ------
    SeatworkError
        If a code is wrong, an earlier sitting is missing, the day it is due is before that of
        handing out, another command is writing there, or a file cannot be written.
    """
    plan = load(sheet) if isinstance(sheet, str) else sheet
    return keep_drawn(
        Path(folder), plan, learners,
        sitting=sitting, mode=mode, target=target, due=due, day=day, drawn={},
    )  # fmt: skip


def keep_drawn(
    folder: Path,
    sheet: Sheet,
    learners: Sequence[str],
    *,
    drawn: Mapping[str, HandedOut],
    sitting: int,
    mode: str | None,
    target: str | Path | None,
    due: str,
    day: str,
) -> tuple[Handout, ...]:
    """Hand out as `hand_out` does, with forms that another process drew by `draw_forms`.

    Parameters
    ----------
    folder, sheet, learners, sitting, mode, target, due, day
        As for `hand_out`.
    drawn : mapping of str to HandedOut
        Forms by learner; who is not in it gets a form drawn here.

    Raises
    ------
    SeatworkError
        As `hand_out`.
    """
    when, due = day_of(day), day_of(due) if due else ""
    files.make_folder(folder, private=True)
    with files.lock(folder, wait=WAIT):
        record = writable_record(folder, when)
        with record.reading() as connection:
            before = read_forms(connection, sheet.name)
        had = {(name, one.form) for name, forms in _of(before.forms, sheet) for one in forms}
        given = drawing.hand_out(
            record.key, before.forms, sheet, learners, sitting=sitting, mode=mode, drawn=drawn
        )
        new = [one for one in given if (one.given.learner, one.given.form) not in had]
        if due:
            _refuse_past(record, before, given, due, when)
        _keep(record, sheet, [(one, _form(before.forms, one)) for one in new], when)
        if due:
            _set_due(record, before.forms, given, sitting, due, when)
        if new:
            copy_for_day(record, when, again=True)
        record.close()
        for one in given if target is not None else ():
            path = Path(target or ".") / one.given.learner / f"{sheet.name}.given.json"
            files.write(path, one.given.text())
    return given


def draw_forms(
    folder: Path, sheet: Sheet, learners: Sequence[str], *, sitting: int, mode: str | None
) -> dict[str, HandedOut]:
    """Draw the forms that `hand_out` would hand out now, by learner; nothing is written.

    Parameters
    ----------
    folder, sheet, learners, sitting, mode
        As for `hand_out`; the course must have its key and its record.

    Raises
    ------
    SeatworkError
        If there is no record, a code is wrong, or an earlier sitting is missing.
    """
    record = open_record(folder)
    try:
        with record.reading() as connection:
            before = read_forms(connection, sheet.name).forms
    finally:
        record.close()
    given = drawing.hand_out(record.key, before, sheet, learners, sitting=sitting, mode=mode)
    return {one.given.learner: _form(before, one) for one in given}


def _refuse_past(
    record: Record, before: Given, given: Sequence[Handout], due: str, day: str
) -> None:
    """Refuse a day that lies before the forms were handed out; they may have been so before."""
    there = [before.ids.get((one.given.sheet, one.given.learner, one.given.form)) for one in given]
    with record.reading() as connection:
        query = select(fact.c.day).where(fact.c.id.in_([one for one in there if one]))
        days = [*connection.execute(query).scalars(), *([day] if None in there else [])]
    if days and due < max(days):
        fault = f"that is before the day of handing out, {max(days)}"
        raise SeatworkError(f"due {due}", fault, "write a later --due, or give --day")


def _set_due(
    record: Record, handed_out: Forms, given: Sequence[Handout], sitting: int, due: str, day: str
) -> None:
    """Say when a sitting is due: for all, or for these learners where others had it before."""
    if not given:
        return
    name, these = given[0].given.sheet, {one.given.learner for one in given}
    others = [
        learner
        for learner, forms in handed_out.sheets.get(name, {}).items()
        if learner not in these and any(form.sitting == sitting for form in forms)
    ]
    for learner in sorted(these) if others else [""]:
        set_due(record, name, sitting, due, day, learner)


def _of(forms: Forms, plan: Sheet) -> list[tuple[str, list[HandedOut]]]:
    return list(forms.sheets.get(plan.name, {}).items())


def other_mode(given: Sequence[Handout], mode: str | None) -> str:
    """Say of which forms the mode is another than was asked for; empty if of none.

    A form stays as it was handed out first.
    """
    others = [one.given for one in given if mode is not None and one.given.mode != mode]
    if not others:
        return ""
    count = "1 form" if len(others) == 1 else f"{len(others)} forms"
    return f"{count} stay {others[0].mode}, as handed out before; a re-test can be {mode}"


def _form(forms: Forms, one: Handout) -> HandedOut:
    found = forms.form(one.given.sheet, one.given.learner, one.given.form)
    if found is None:
        raise SeatworkError(one.given.learner, "the form is not there", "hand it out again")
    return found


def _keep(record: Record, plan: Sheet, new: Sequence[tuple[Handout, HandedOut]], day: str) -> None:
    """Keep new forms in one transaction: all of them are there, or none."""
    if not new:
        return
    with record.writing() as batch:
        pinned = pin(batch, plan, day)
        for one, form in new:
            add_form(batch, pinned, plan.name, one.given.learner, form, day)


def forms(folder: str | Path) -> Forms:
    """Return what was handed out in a course.

    Parameters
    ----------
    folder : str or Path
        The instructor's folder.

    Raises
    ------
    SeatworkError
        If there is no record, or it cannot be read.
    """
    record = open_record(Path(folder))
    try:
        with record.reading() as connection:
            return read_forms(connection).forms
    finally:
        record.close()


def class_of(folder: Path, day: str) -> list[str]:
    """Return the codes on the roster of those who have not left; all of them join the record.

    Parameters
    ----------
    folder : Path
        The instructor's folder.
    day : str
        Year-month-day.

    Raises
    ------
    SeatworkError
        If there is no roster, or it has faults.
    """
    learners = roster.read(folder)
    record = writable_record(folder, day)
    try:
        enroll(record, learners, day)
        with record.reading() as connection:
            gone = withdrawn(connection)
        return [one.code for one in learners if one.code not in gone]
    finally:
        record.close()
