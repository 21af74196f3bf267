"""Feedback that was written before is written anew when what it tells no longer counts."""

import re
from pathlib import Path
from typing import Any

from seatwork.cli.course_folder import folder_of, sheet_of
from seatwork.cli.marking import feedback_of, feedback_place
from seatwork.questions.left_out import LeftOut
from seatwork.record.keeping import Record
from seatwork.record.paper_results import results

MARKS = "-marks.csv"
Papers = dict[tuple[str, str, int], dict[str, Any]]
"""What counts of each paper, by learner, sheet and form."""


def papers_now(record: Record, folder: Path, day: str) -> Papers:
    """Return what counts of each paper of the sheets marked so far."""
    sheets = sorted(place.name.removesuffix(MARKS) for place in folder.glob(f"*{MARKS}"))
    return {
        (one["learner"], sheet, one["form"]): one
        for sheet in sheets
        for one in results(record, sheet, day)["files"]
        if one["form"] is not None
    }


def told_anew(before: Papers, after: Papers, named: Path | None, day: str) -> list[str]:
    """Write the feedback anew where points changed; return a line for each such paper."""
    lines = []
    for place in sorted(before.keys() | after.keys()):
        old, new = before.get(place), after.get(place)
        if old is not None and new is not None and _counts(old) == _counts(new):
            continue
        learner, sheet, form = place
        now = "no paper counts" if new is None else points_of(new)
        again = feedback_again(learner, sheet, form, named, day)
        lines.append(f"{learner}, {sheet}, form {form}: {now}.{again}")
    return lines


def _counts(paper: dict[str, Any]) -> tuple[Any, ...]:
    """Return what a learner is told of a paper."""
    return paper["questions"], paper["points"], paper["state"]


def points_of(paper: dict[str, Any]) -> str:
    """Say the points of a paper, or why it has none."""
    if paper["points"] is not None:
        return f"{paper['points']:g} of {paper['of']:g} points"
    if paper["state"] != "needs a person":
        return f"{paper['state']}, no mark and no zero"
    waits = " ".join(one["id"] for one in paper["questions"] if one["points"] is None)
    return f"waiting for a person: {waits}" if waits else f"needs a person: {paper['note']}"


def feedback_again(learner: str, sheet: str, form: int, named: Path | None, day: str) -> str:
    """Write a learner's feedback anew where it was written before, so that it agrees."""
    folder = folder_of(named)
    place = feedback_place(folder, learner, sheet, form)
    if not place.is_file():
        return ""
    stated = re.search('<html lang="([a-z]+)">', place.read_text(encoding="utf-8"))
    plan = sheet_of(sheet, named)
    stand_ins = any(issubclass(item.kind, LeftOut) for item in plan.items)
    if stated is None or stand_ins:
        return f" Write the feedback anew: seatwork mark {sheet} FOLDER --feedback."
    if not feedback_of(plan, {(learner, form)}, folder, stated[1], day):
        return f" Hand out no more of its feedback: delete {place} and the PDF beside it."
    return " The feedback is written anew."
