"""The practice sheet and the planner in a page's own Python: the package's own, unchanged."""

import json
from typing import Any

from seatwork.entries.asked import READ_AS, Asked, as_data, echo
from seatwork.errors import SeatworkError
from seatwork.marking import given as handed
from seatwork.marking import sheets
from seatwork.marking.speaking import Speaker
from seatwork.questions.type.question import Question
from seatwork.units import explain
from seatwork.worksheet.desk import Desk
from seatwork.worksheet.telling import example

DESKS: dict[str, Desk] = {}
"""The sheet that is open."""


def open_sheet(given: dict[str, Any]) -> dict[str, Any]:
    """Open a practice sheet; its answers are kept by the page."""
    plan = sheets.load(given["sheet"])
    desk = DESKS["open"] = Desk(plan, handed.practice(plan.name), None)
    return speak(given) if given.get("language") else _asked(desk)


def speak(given: dict[str, Any]) -> dict[str, Any]:
    """Say everything in another language; numbers and answers stay."""
    DESKS["open"].speak(given["language"])
    return _asked(DESKS["open"])


def _asked(desk: Desk) -> dict[str, Any]:
    return {"title": desk.plan.title, "items": [_item(desk, item.id) for item in desk.plan.items]}


def check(given: dict[str, Any]) -> dict[str, Any]:
    """Judge an answer as the notebook does."""
    entry = DESKS["open"].ask(given["id"], answer=given["parts"])
    pairs = zip(given["parts"], entry.question.parts, strict=True)
    return {
        "read": [_read(text, part.asked, entry.say) for text, part in pairs],
        "kinds": [verdict.kind for verdict in entry.verdicts],
        "said": list(entry.feedback),
        "worked": list(entry.steps()),
    }


def _read(text: str, asked: Asked, say: Speaker) -> str:
    """Say how an entry is read; why one cannot be read is what the verdict says."""
    told = echo(text, asked, say)
    return told if told.startswith(say(READ_AS).partition("{")[0]) else ""


def hint(given: dict[str, Any]) -> str:
    """Return a hint; the first is number 0."""
    return DESKS["open"].ask(given["id"]).hint(given["number"])


def renew(given: dict[str, Any]) -> dict[str, Any]:
    """Draw new numbers for a question."""
    desk = DESKS["open"]
    desk.renew(given["id"])
    return _item(desk, given["id"])


def plan(given: dict[str, Any]) -> dict[str, Any]:
    """Plan a note: its rows as the card prints them."""
    from seatwork.plan import make_plan  # a sheet is checked without it

    made = make_plan(given["note"], material=given["material"], machine=given["machine"])
    blocks = [
        [heading, [[row.label, row.text] for row in rows]] for heading, rows in made._blocks()
    ]
    return {"blocks": blocks}


def stock(given: dict[str, Any]) -> dict[str, list[str]]:
    """Return what a plan can be made for."""
    from seatwork.shop.shop import Shop  # as for a plan

    del given
    shop = Shop.at()
    return {
        "materials": [one.name for one in shop.materials],
        "machines": [one.name for one in shop.machines],
    }


def _item(desk: Desk, name: str) -> dict[str, Any]:
    question: Question = desk.question(name)
    say = desk.voice.say
    parts = []
    for part in question.parts:
        told = as_data(part.asked)
        parts.append(told | {"unit": getattr(part, "unit", ""), "such": say(example(part))})
    return {"id": name, "ask": say(question.ask()), "parts": parts, "hints": len(question.hints)}


CALLS = {
    "open": open_sheet, "speak": speak, "check": check, "hint": hint, "renew": renew,
    "plan": plan, "stock": stock,
}  # fmt: skip


def call(name: str, text: str) -> str:
    """Answer what the page asks; a fault of the asker comes back as a sentence."""
    try:
        return json.dumps(CALLS[name](json.loads(text)))
    except SeatworkError as error:
        return json.dumps({"fault": explain(error)})
