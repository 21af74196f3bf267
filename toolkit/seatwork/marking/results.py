"""Results of one run of marking as plain data: for counting slips and for looking at."""

from collections import Counter
from collections.abc import Iterable, Sequence
from typing import Any

from seatwork.marking.marker import Marked
from seatwork.marking.scoring import Scored
from seatwork.marking.sheets import Sheet

Data = dict[str, Any]


def as_data(sheet: Sheet, marked: Sequence[Marked]) -> Data:
    """Return what was marked as plain data, in the form that the record gives marks in.

    Parameters
    ----------
    sheet : Sheet
        The worksheet.
    marked : sequence of Marked
        What was marked.
    """
    rows = [_file(one, sheet) for one in marked if not one.same_as]
    return {"sheet": sheet.name, "files": rows, "slips": slips(rows), "unknown": unknown(rows)}


def _file(one: Marked, sheet: Sheet) -> Data:
    file = one.file
    return {
        "file": one.name,
        "learner": file.learner if file else None,
        "form": file.form if file else None,
        "points": one.points,
        "of": sheet.points,
        "doubt": one.doubt,
        "asks": one.question,
        "questions": [_question(item) for item in one.scored],
    }


def _question(item: Scored) -> Data:
    return {
        "id": item.id,
        "points": item.points,
        "computed": item.computed,
        "of": item.of,
        "typed": list(item.typed),
        "verdicts": [verdict.kind for verdict in item.verdicts],
        "slips": [slip.code for verdict in item.verdicts for slip in verdict.slips],
        "sure": item.sure,
        "doubt": item.doubt,
    }


def slips(rows: Iterable[Data]) -> dict[str, int]:
    """Count the questions whose answers match a slip, by its code."""
    found = Counter(
        code for one in rows for question in one["questions"] for code in set(question["slips"])
    )
    return dict(sorted(found.items()))


def unknown(rows: Iterable[Data]) -> list[Data]:
    """Return the wrong answers that no known slip explains, question by question."""
    return [
        {"learner": one["learner"], "question": question["id"], "typed": question["typed"]}
        for one in rows
        for question in one["questions"]
        if "wrong" in question["verdicts"]
    ]
