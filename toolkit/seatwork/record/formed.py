"""Forms in the record: what was drawn for whom, and the sheets as they were then."""

import json
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from sqlalchemy import Connection, select

from seatwork.marking.handed import Forms, HandedOut
from seatwork.marking.sheets import Item, Sheet
from seatwork.questions import all_types
from seatwork.questions.left_out import left_out
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
    standing, found = Standing(connection, ()), Given()
    for row in connection.execute(query):
        place = row.name, row.learner, row.number
        if standing.stands(row.fact) and place not in found.ids:
            found.forms.forms(row.name, row.learner).append(_handed(row))
            found.ids[place] = row.fact
            found.pins[row.fact] = row.sheet
    return found


def _handed(row: Any) -> HandedOut:
    drawn = json.loads(row.drawn)
    return HandedOut(
        sitting=row.sitting,
        form=row.number,
        mode=row.mode,
        sizes=drawn["sizes"],
        versions=drawn["versions"],
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
            items=tuple(_item(one, plan) for one in standing.get(row.fact, ())),
        )
    return found


def _item(row: Any, plan: Sheet) -> Item:
    """Return a question as it was pinned; what it leads to is as the sheet says now."""
    now: Mapping[str, Item] = {item.id: item for item in plan.items}
    same = now.get(row.id)
    if same is not None and same.kind.id == row.type:
        return replace(same, points=row.points)
    kinds = {item.kind.id: item.kind for item in plan.items} | dict(all_types())
    kind = kinds.get(row.type) or left_out(row.type)
    return Item(id=row.id, kind=kind, points=row.points, system=None)
