"""Overrides: points a person gave, with the reason; kept apart from what was computed."""

from dataclasses import dataclass
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.names import QUESTION, form_number, learner_code, sheet_name

FILE = "overrides.csv"
HEADS = ("date", "learner", "sheet", "form", "question", "points", "reason")
LONGEST = 290  # a cell of a table holds 300 letters
MOST_ROWS = 200_000


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
        If it gives no reason, one of its fields is wrong, or another command is writing there.
    """
    _check(override)
    with files.lock(folder):
        rows = [*read(folder), override]
        cells = ([getattr(row, head) for head in HEADS] for row in rows)
        files.write_table(folder / FILE, HEADS, cells, mode=files.PRIVATE, backup=True)


def read(folder: Path) -> list[Override]:
    """Return the overrides kept, in order.

    Raises
    ------
    SeatworkError
        With all faults of the file at once, each with its row.
    """
    path = folder / FILE
    if not path.is_file():
        return []
    faults: list[SeatworkError] = []
    rows = files.read_table(path, columns=HEADS, needed=HEADS, most=MOST_ROWS, faults=faults)
    return files.build_each(rows, _override, faults)


def _override(row: files.Row) -> Override:
    try:
        override = Override(
            date=row.text("date"),
            learner=row.text("learner"),
            sheet=row.text("sheet"),
            form=int(row.text("form")),
            question=row.text("question"),
            points=float(row.text("points")),
            reason=row.text("reason"),
        )
        _check(override)
    except SeatworkError as error:
        place = f"{FILE}, row {row.number}: {error.value}"
        raise SeatworkError(place, error.fault, error.remedy) from error
    except ValueError as error:
        raise row.refuse("form or points", "that is no number", "mend it") from error
    return override


def _check(override: Override) -> None:
    learner_code(override.learner)
    sheet_name(override.sheet)
    form_number(override.form)
    if not QUESTION.fullmatch(override.question):
        raise SeatworkError(override.question[:40], "that is no question", "write one such as c1")
    if not 0 <= override.points <= 1000:
        raise SeatworkError(str(override.points), "that is no number of points", "write 0 or more")
    text = override.reason.strip()
    if not 3 <= len(text) <= LONGEST:
        fault = f"{len(text)} letters are no reason" if len(text) < 3 else "that is too long"
        raise SeatworkError(text[:40] or "reason", fault, "say why in a few words")
