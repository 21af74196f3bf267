"""Forms in the record: what was drawn for whom, and the sheets as they were then."""

import json
from dataclasses import dataclass, field, replace
from typing import Any

from sqlalchemy import Connection, select

from seatwork.marking.handed import Forms, HandedOut, as_given
from seatwork.marking.sheets import Sheet
from seatwork.record.facts import Fact, text_of
from seatwork.record.keeping import Batch
from seatwork.record.standing import Standing
from seatwork.record.tables import fact, form, question, sheet


@dataclass(slots=True)
class Given:
    """The forms of sheets as the record holds them.

    Parameters
    ----------
    forms : Forms
        By sheet and learner, in the order of their sittings.
    ids : dict
        Id of a form's fact, by sheet, learner and number.
    pins : dict
        Id of the sheet as it was when a form was handed out, by the id of the form.
    """

    forms: Forms = field(default_factory=Forms)
    ids: dict[tuple[str, str, int], str] = field(default_factory=dict)
    pins: dict[str, str] = field(default_factory=dict)

    def __repr__(self) -> str:
        return f"<Given: {len(self.ids)} forms>"


def read_forms(connection: Connection, name: str | None = None) -> Given:
    """Return the forms that stand in the record.

    Parameters
    ----------
    connection : Connection
        To the record.
    name : str, optional
        Of this sheet alone.
    """
    query = (
        select(form, fact.c.learner, sheet.c.name)
        .join(fact, fact.c.id == form.c.fact)
        .join(sheet, sheet.c.fact == form.c.sheet)
        .order_by(fact.c.learner, form.c.sitting, form.c.fact)
    )
    if name is not None:
        query = query.where(sheet.c.name == name)
    standing, found, types = Standing(connection, ()), Given(), _types(connection)
    for row in connection.execute(query):
        place = row.name, row.learner, row.number
        if standing.stands(row.fact) and place not in found.ids:
            found.forms.forms(row.name, row.learner).append(_handed(row, types.get(row.sheet, {})))
            found.ids[place] = row.fact
            found.pins[row.fact] = row.sheet
    return found


def _types(connection: Connection) -> dict[str, dict[str, str]]:
    """Return the type of each question of each sheet as it was handed out, in their order."""
    found: dict[str, dict[str, str]] = {}
    for row in connection.execute(select(question).order_by(question.c.sheet, question.c.place)):
        found.setdefault(row.sheet, {})[row.id] = row.type
    return found


def _handed(row: Any, types: dict[str, str]) -> HandedOut:
    drawn = json.loads(row.drawn)
    return HandedOut(
        sitting=row.sitting,
        form=row.number,
        mode=row.mode,
        sizes=drawn["sizes"],
        versions=drawn["versions"],
        types=types,
        form_id=drawn.get("form_id", ""),
        sealed=drawn.get("sealed", False),
    )


def pin(batch: Batch, plan: Sheet, day: str) -> str:
    """Keep a sheet as it is now, and return the id: one edited later changes no old mark.

    Parameters
    ----------
    batch : Batch
        What is being kept.
    plan : Sheet
        The worksheet.
    day : str
        Year-month-day.
    """
    body = {
        "name": plan.name,
        "title": plan.title,
        "pass_mark": plan.pass_mark,
        "rules": text_of({"tries": plan.tries, "hint_cost": plan.hint_cost}).decode(),
    }
    rows = tuple(
        {
            "id": item.id,
            "place": place,
            "type": item.kind.id,
            "version": item.kind.version,
            "points": item.points,
            "codes": " ".join(item.kind.codes),
        }
        for place, item in enumerate(plan.items)
    )
    return batch.add(Fact("sheet", plan.name, body, day, rows=rows))


def add_form(batch: Batch, pinned: str, name: str, learner: str, one: HandedOut, day: str) -> str:
    """Keep a form, and return its id.

    Parameters
    ----------
    batch : Batch
        What is being kept.
    pinned : str
        Id of the sheet, as `pin` gives it.
    name, learner : str
        The sheet's name and whose form it is.
    one : HandedOut
        The form.
    day : str
        Year-month-day.
    """
    drawn: dict[str, Any] = {"sizes": one.sizes, "versions": one.versions}
    if one.form_id:
        drawn |= {"form_id": one.form_id} | ({"sealed": True} if one.sealed else {})
    body = {
        "sheet": pinned,
        "sitting": one.sitting,
        "number": one.form,
        "mode": one.mode,
        "drawn": text_of(drawn).decode(),
    }
    return batch.add(Fact("form", f"{learner}/{name}/{one.form}", body, day, learner))


def pinned_sheets(connection: Connection, plan: Sheet) -> dict[str, Sheet]:
    """Return a sheet as it was at each hand-out, by the id of that fact.

    Parameters
    ----------
    connection : Connection
        To the record.
    plan : Sheet
        The worksheet of that name as it is now: it says how what is pinned is asked.
    """
    standing: dict[str, list[Any]] = {}
    query = select(question).join(sheet, sheet.c.fact == question.c.sheet)
    for row in connection.execute(query.where(sheet.c.name == plan.name).order_by("place")):
        standing.setdefault(row.sheet, []).append(row)
    found = {}
    for row in connection.execute(select(sheet).where(sheet.c.name == plan.name)):
        rules = json.loads(row.rules)
        found[row.fact] = replace(
            plan,
            title=row.title,
            pass_mark=row.pass_mark,
            tries=int(rules["tries"]),
            hint_cost=float(rules["hint_cost"]),
            items=tuple(
                as_given(one.id, one.type, plan, one.points) for one in standing.get(row.fact, ())
            ),
        )
    return found
