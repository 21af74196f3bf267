"""Giving points by hand: bounded by the question, only where there is a marked paper to change."""

from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import overriding, results
from seatwork.marking.merging import Kept
from seatwork.marking.overriding import Override


def give(folder: Path, override: Override, key: bytes) -> Kept:
    """Keep points that a person gave, and count them in the marks at once.

    Parameters
    ----------
    folder : Path
        The instructor's folder.
    override : Override
        What is given.
    key : bytes
        The course key.

    Returns
    -------
    dict
        The paper as the results keep it now.

    Raises
    ------
    SeatworkError
        If there is no such paper or question, the points are more than it is worth or those it
        has already, no reason is given, or another command is writing there.
    """
    with files.lock(folder):
        rows = results.marked_before(folder, override.sheet, key)["files"]
        _check(override, _asked(_paper(rows, override), override))
        overriding.add(folder, override)
        rows = results.renew(folder, override.sheet, key)["files"]
    return _paper(rows, override)


def _paper(rows: list[Kept], override: Override) -> Kept:
    theirs = [one for one in rows if one["learner"] == override.learner and one["questions"]]
    for one in theirs:
        if one["form"] == override.form:
            return one
    who, sheet = override.learner, override.sheet
    if theirs:
        forms = ", ".join(str(one["form"]) for one in theirs)
        fault = f"no paper of {sheet}, form {override.form}, was marked"
        raise SeatworkError(who, fault, f"add --form with one of {forms}")
    remedy = f"check the code; or mark their paper first: seatwork mark {sheet} FOLDER"
    raise SeatworkError(who, f"no paper of {sheet} was marked, so nothing can change", remedy)


def _asked(paper: Kept, override: Override) -> Kept:
    for question in paper["questions"]:
        if question["id"] == override.question:
            found: Kept = question
            return found
    known = ", ".join(question["id"] for question in paper["questions"])
    fault = f"{override.sheet} has no such question"
    raise SeatworkError(override.question[:40], fault, f"write one of {known}")


def _check(override: Override, question: Kept) -> None:
    of, given = question["of"], f"{override.points:g} points"
    if not 0 <= override.points <= of:
        fault = f"{override.question} is worth {of:g}"
        raise SeatworkError(given, fault, f"give 0 to {of:g}")
    if override.points == question["points"]:
        fault = f"{override.learner} has them already for {override.question}"
        raise SeatworkError(given, fault, "nothing is to change; give another number if it should")
