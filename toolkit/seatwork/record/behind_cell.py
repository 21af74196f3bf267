"""One cell of the class: how each sitting stands, the paper question by question, its history."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.names import learner_code
from seatwork.marking.sheets import Sheet, load
from seatwork.marking.text import band, right_answer
from seatwork.questions import Question
from seatwork.questions.type.slip_sentences import SLIPS
from seatwork.record.class_now import Class
from seatwork.record.class_picture import OWN_SLIP
from seatwork.record.formed import pinned_sheets, read_forms
from seatwork.record.history import Line, history
from seatwork.record.keeping import Record
from seatwork.record.paper_results import results_in

NOT_AT_HAND = "the question is not at hand here"


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """One question of a paper, as it was asked, answered and marked.

    Parameters
    ----------
    name, text : str
        Its name on the sheet, and what was asked.
    typed, right : tuple of str
        What was typed, and what is right, for each part; an empty text where nothing was.
    points : float or None
        Points that count [-]; None while a person must look.
    of : float
        Points to be had [-].
    said : tuple of str
        What is to be said of it: slips, why a person must look, whether the learner was sure.
    """

    name: str
    text: str
    typed: tuple[str, ...]
    right: tuple[str, ...]
    points: float | None
    of: float
    said: tuple[str, ...]

    def __repr__(self) -> str:
        points = "?" if self.points is None else f"{self.points:g}"
        return f"<Asked {self.name}: {points} of {self.of:g}>"


@dataclass(frozen=True, slots=True, kw_only=True)
class SittingFacts:
    """How one sitting stands, with its paper.

    Parameters
    ----------
    sitting, form : int
        Which.
    word : str
        How it stands, such as passed, not here, excused.
    points, of : float or None
        Points that count and points to be had [-]; None without them.
    late : bool
        Whether the paper came after the day.
    due : str
        The day it is due; empty if none was said.
    why : str
        What a person should look at, or the reason given.
    asked : tuple of Asked
        The questions of the paper that counts; none without one.
    """

    sitting: int
    form: int
    word: str
    points: float | None
    of: float | None
    late: bool
    due: str
    why: str
    asked: tuple[Asked, ...]

    def __repr__(self) -> str:
        return f"<SittingFacts {self.sitting}: {self}>"

    def __str__(self) -> str:
        points = "" if self.points is None else f", {self.points:g} of {self.of:g}"
        after = ", after the day" if self.late else ""
        due = f", due {self.due}" if self.due else ""
        why = f": {self.why}" if self.why else ""
        return f"{self.word}{points}{after}{due}{why}"


@dataclass(frozen=True, slots=True, kw_only=True)
class CellFacts:
    """What the record holds of one learner and one sheet.

    Parameters
    ----------
    learner, sheet : str
        Which cell.
    sittings : tuple of SittingFacts
        In order.
    history : tuple of Line
        Every fact, in the order in which they follow.
    """

    learner: str
    sheet: str
    sittings: tuple[SittingFacts, ...]
    history: tuple[Line, ...]

    def __repr__(self) -> str:
        count = len(self.sittings)
        return f"<CellFacts of {self.learner}, {self.sheet}: {count} sittings>"


def cell_facts(record: Record, learner: str, sheet: str, day: str) -> CellFacts:
    """Return what lies behind one cell of the class's picture; the right answers are in it.

    Parameters
    ----------
    record : Record
        The term record.
    learner, sheet : str
        Code of the learner, name of the sheet.
    day : str
        Year-month-day.

    Raises
    ------
    SeatworkError
        If nobody of that code is in the record, or was given no such sheet.
    """
    lines = history(record, learner_code(learner), sheet)
    with record.reading() as connection:
        now = Class(connection, day, sheet)
        cells = now.grid().get((learner, sheet))
        if not cells:
            raise SeatworkError(learner, f"{sheet} was not handed out", "choose another cell")
        questions = _questions(connection, learner, sheet)
        rows = results_in(connection, sheet, day)["files"]
        dues = {cell.sitting: now.due(learner, sheet, cell.sitting) or "" for cell in cells}
    papers = {row["form"]: row["questions"] for row in rows if row["learner"] == learner}
    sittings = tuple(
        SittingFacts(
            sitting=cell.sitting,
            form=cell.form,
            word=cell.word,
            points=cell.points,
            of=cell.of,
            late=cell.late,
            due=dues[cell.sitting],
            why=cell.why,
            asked=_asked(papers.get(cell.form, ()), questions.get(cell.form, {})),
        )
        for cell in cells
    )
    return CellFacts(learner=learner, sheet=sheet, sittings=sittings, history=tuple(lines))


def _questions(connection: Any, learner: str, name: str) -> dict[int, dict[str, Question]]:
    """Return the questions of a learner's forms as drawn; none where the sheet is gone."""
    given = read_forms(connection, name)
    try:
        pins = pinned_sheets(connection, load(name))
    except SeatworkError:  # its file, or a question type of it, is not here
        return {}
    found = {}
    for form in given.forms.forms(name, learner):
        pinned: Sheet = pins[given.pins[given.ids[name, learner, form.form]]]
        found[form.form] = form.questions(pinned)
    return found


def _asked(rows: Any, questions: Mapping[str, Question]) -> tuple[Asked, ...]:
    return tuple(_one(row, questions.get(row["id"])) for row in rows)


def _one(row: Mapping[str, Any], question: Question | None) -> Asked:
    parts = question.parts if question is not None else ()
    slips = [SLIPS.get(code, OWN_SLIP) for code in row["slips"]]
    given = row["points"] != row["computed"]
    said = [
        *(f"fits: {sentence}" for sentence in dict.fromkeys(slips)),
        *([row["doubt"]] if row["doubt"] and not given else []),
        *(["points given by hand"] if given and row["points"] is not None else []),
        *(["the learner was sure"] if row["sure"] else []),
    ]
    return Asked(
        name=row["id"],
        text=question.text() if question is not None else NOT_AT_HAND,
        typed=tuple(row["typed"]),
        right=tuple(_right(part) for part in parts),
        points=row["points"],
        of=row["of"],
        said=tuple(said),
    )


def _right(part: Any) -> str:
    accepted = band(part)
    return right_answer(part) + (f" (accepted {accepted})" if accepted else "")
