"""Marking adds: what was marked before stays, a paper marked again replaces only itself."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

from seatwork.marking.overriding import Override

Kept = dict[str, Any]
"""One file as the results keep it."""
Place = tuple[str, object]


@dataclass(frozen=True, slots=True, kw_only=True)
class Tally:
    """What a run of marking added.

    Parameters
    ----------
    new, known, changed : int
        Papers not marked before; marked before with the same outcome; marked anew.
    notes : tuple of str
        What a person should know of papers marked before, a sentence each.
    """

    new: int
    known: int
    changed: int
    notes: tuple[str, ...] = ()


def merged(before: Sequence[Kept], now: Sequence[Kept]) -> tuple[list[Kept], Tally]:
    """Add the papers of a run to those marked before.

    A paper has its place by learner and form; what could not be marked, by its file. A file
    that cannot be marked now never takes the place of marks given before.

    Parameters
    ----------
    before, now : sequence of dict
        Files as the results keep them.

    Returns
    -------
    tuple
        All files in the order of learners, and what the run added.
    """
    kept = {_place(one): one for one in before}
    count = {"new": 0, "known": 0, "changed": 0}
    notes: list[str] = []
    for one in now:
        earlier = kept.get((one["learner"], one["form"])) if one["learner"] else None
        if not one["questions"] and earlier is not None:
            notes.append(f"{_who(one)} was marked before and stays as it was")
            if _typed(one) == _typed(earlier):
                count["known"] += 1
                continue
        count[_enter(kept, one, notes)] += 1
    rows = sorted(kept.values(), key=_order)
    return rows, Tally(**count, notes=tuple(notes))


def _enter(kept: dict[Place, Kept], one: Kept, notes: list[str]) -> str:
    """Put one file in its place; say whether it is new, known or changed."""
    place = _place(one)
    earlier = kept.get(place)
    if one["questions"]:
        for other in [at for at, row in kept.items() if _is_settled(row, one)]:
            del kept[other]
    if earlier is not None and _outcome(earlier) == _outcome(one):
        return "known"
    kept[place] = one
    if earlier is None:
        return "new"
    if one["questions"] and _typed(earlier) != _typed(one):
        notes.append(f"{_who(one)} has other answers than the paper marked before; these count now")
    return "changed"


def _place(one: Kept) -> Place:
    return (one["learner"], one["form"]) if one["questions"] else ("", one["file"])


def _is_settled(row: Kept, paper: Kept) -> bool:
    """Whether a file that could not be marked is the paper that is marked now."""
    same = row["file"] == paper["file"] or _who(row) == _who(paper)
    return not row["questions"] and same


def _who(one: Kept) -> str:
    return f"{one['learner']}, form {one['form']}"


def _order(one: Kept) -> tuple[bool, str, int, str]:
    return one["learner"] is None, one["learner"] or "", one["form"] or 0, one["file"]


def _typed(one: Kept) -> dict[str, list[str]]:
    if one["questions"]:
        found = {question["id"]: question["typed"] for question in one["questions"]}
    else:
        found = one.get("typed") or {}
    return {name: parts for name, parts in found.items() if any(parts)}


def _outcome(one: Kept) -> object:
    if not one["questions"]:
        return one.get("doubt", one["note"])
    return [
        (q["id"], q["typed"], q.get("computed", q["points"]), q["doubt"]) for q in one["questions"]
    ]


def renewed(one: Kept, overrides: Iterable[Override], sheet: str) -> Kept:
    """Return a file with points, state and note as they follow from it and the overrides.

    Parameters
    ----------
    one : dict
        A file as the results keep it.
    overrides : iterable of Override
        All that were given; the last of a question counts.
    sheet : str
        Name of the sheet.
    """
    paper = (sheet, one["learner"], one["form"])
    given = {row.question: row for row in overrides if (row.sheet, row.learner, row.form) == paper}
    questions = [{**q, "points": q.get("computed", q["points"])} for q in one["questions"]]
    for question in questions:
        if question["id"] in given:
            question["points"] = given[question["id"]].points
    points = [question["points"] for question in questions]
    waits = not points or None in points
    return {
        **one,
        "questions": questions,
        "points": None if waits else sum(points),
        "state": "needs a person" if waits else "marked",
        "note": _note(one, questions, given),
    }


def _note(one: Kept, questions: Sequence[Kept], given: dict[str, Override]) -> str:
    if "doubt" not in one:  # kept by an earlier version
        return str(one["note"])
    doubts = [f"{q['id']}: {q['doubt']}" for q in questions if q["doubt"] and q["id"] not in given]
    asked = {question["id"] for question in questions}
    lines = [
        f"{row.question}: {row.points:g} given, {row.reason}"
        for row in given.values()
        if row.question in asked
    ]
    sure = " ".join(question["id"] for question in questions if question["sure"])
    notes = [one["doubt"], *doubts, one["asks"], *lines]
    notes.append(f"the learner is sure of {sure}" if sure else "")
    return "; ".join(note for note in notes if note)
