"""Overrides: points a person gave, with the reason; kept apart from what was computed."""

from dataclasses import dataclass
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.marking import spreadsheet
from seatwork.marking.names import QUESTION, form_number, learner_code, sheet_name

FILE = "overrides.csv"
HEADS = ("date", "learner", "sheet", "form", "question", "points", "reason")
LONGEST = 300


@dataclass(frozen=True, slots=True, kw_only=True)
class Override:
    """Points a person gave for one question.

    Parameters
    ----------
    date : str
        Day of the decision.
    learner, sheet, question : str
        Whose answer to what.
    form : int
        Which form.
    points : float
        Points given [-].
    reason : str
        Why.
    """

    date: str
    learner: str
    sheet: str
    form: int
    question: str
    points: float
    reason: str


def add(folder: Path, override: Override) -> None:
    """Keep an override in the instructor's folder.

    Raises
    ------
    SeatworkError
        If it gives no reason, or one of its fields is wrong.
    """
    _check(override)
    rows = [*read(folder), override]
    spreadsheet.write(folder / FILE, HEADS, (tuple(_cells(row)) for row in rows))


def read(folder: Path) -> list[Override]:
    """Return the overrides kept, in order."""
    path = folder / FILE
    if not path.is_file():
        return []
    return [_override(row, n) for n, row in enumerate(spreadsheet.read(path, HEADS), 2)]


def _override(row: dict[str, str], number: int) -> Override:
    try:
        override = Override(
            date=row["date"],
            learner=row["learner"],
            sheet=row["sheet"],
            form=int(row["form"]),
            question=row["question"],
            points=float(row["points"]),
            reason=row["reason"].removeprefix("'"),
        )
    except ValueError as error:
        place = f"{FILE}, row {number}"
        raise SeatworkError(place, "form or points is no number", "mend it") from error
    _check(override)
    return override


def _check(override: Override) -> None:
    learner_code(override.learner)
    sheet_name(override.sheet)
    form_number(override.form)
    if not QUESTION.fullmatch(override.question):
        raise SeatworkError(override.question[:40], "that is no question", "write one such as c1")
    if not 0 <= override.points <= 1000:
        raise SeatworkError(str(override.points), "that is no number of points", "write 0 or more")
    if not 3 <= len(override.reason.strip()) <= LONGEST:
        raise SeatworkError(override.reason[:40], "no reason is given", "say why in a few words")


def _cells(row: Override) -> tuple[object, ...]:
    return tuple(getattr(row, head) for head in HEADS)
