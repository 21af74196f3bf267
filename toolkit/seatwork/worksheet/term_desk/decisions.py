"""What a person decides about the cell that was pressed: one form, a reason, one button."""

from collections.abc import Callable
from typing import NamedTuple

import ipywidgets as widgets

from seatwork.errors import SeatworkError
from seatwork.record import Override, Record, choosing, deciding, override
from seatwork.record.deciding import SHORT
from seatwork.record.points_by_hand import form_of_sitting

SITTING, QUESTION, POINTS, FACT = "sitting", "question", "points", "id"
MACHINE, PLACE, REASON = "machine", "paper", "reason"
LABELS = {
    SITTING: "Sitting",
    QUESTION: "Question, such as c1",
    POINTS: "Points",
    FACT: "Id, from the history",
    MACHINE: "Machine",
    PLACE: "Where the signed paper lies",
    REASON: "Why, in a few words; no names",
}
"""The boxes, each with its label."""
NO_CELL = "no cell of the class was pressed"
PRESS_ONE = "press the learner's cell first"


class Chosen(NamedTuple):
    """What is decided about.

    Parameters
    ----------
    learner, sheet : str
        The cell that was pressed; no sheet where it was the learner's code.
    day : str
        Year-month-day.
    """

    learner: str
    sheet: str
    day: str


Typed = dict[str, str]
Decide = Callable[[Record, Chosen, Typed], tuple[str, str]]
"""Gives what was kept, in words, and the id of the decision."""


class Choice(NamedTuple):
    """One thing that can be decided.

    Parameters
    ----------
    boxes : tuple of str
        What must be typed for it.
    decide : callable
        Keeps it.
    of_sheet : bool
        Whether it is about a sheet.
    """

    boxes: tuple[str, ...]
    decide: Decide
    of_sheet: bool = True


def _points(record: Record, at: Chosen, typed: Typed) -> tuple[str, str]:
    sitting, points = _whole(typed[SITTING], "sitting"), _number(typed[POINTS])
    form = form_of_sitting(record, at.learner, at.sheet, sitting)
    given = Override(at.learner, at.sheet, form, typed[QUESTION], points, typed[REASON])
    return f"{typed[QUESTION]} is {points:g} now", override(record, given, at.day)


def _of_sitting(word: str, said: Callable[..., str]) -> Decide:
    def decide(record: Record, at: Chosen, typed: Typed) -> tuple[str, str]:
        sitting = _whole(typed[SITTING], "sitting")
        return word, said(record, at.sheet, at.learner, typed[REASON], at.day, sitting)

    return decide


def _left(record: Record, at: Chosen, typed: Typed) -> tuple[str, str]:
    return "left the course", deciding.leave(record, at.learner, typed[REASON], at.day)


def _signed(record: Record, at: Chosen, typed: Typed) -> tuple[str, str]:
    made = deciding.sign(record, at.learner, typed[MACHINE], typed[PLACE], at.day)
    return "kept that a person signed on paper; software clears nobody", made


def _paper(record: Record, at: Chosen, typed: Typed) -> tuple[str, str]:
    made, learner = choosing.count_paper(record, typed[FACT], typed[REASON], at.day)
    return f"this paper of {learner} counts", made


def _undo(record: Record, at: Chosen, typed: Typed) -> tuple[str, str]:
    made, undone = deciding.undo(record, typed[FACT], typed[REASON], at.day)
    return f"{undone[:SHORT]} is taken back, and stays written down", made


CHOICES = {
    "points by hand": Choice((SITTING, QUESTION, POINTS, REASON), _points),
    "excused": Choice((SITTING, REASON), _of_sitting("excused: no zero", deciding.excuse)),
    "paper lost": Choice((SITTING, REASON), _of_sitting("paper lost: no zero", deciding.lose)),
    "void": Choice((SITTING, REASON), _of_sitting("void: no mark and no zero", deciding.void)),
    "this paper counts": Choice((FACT, REASON), _paper),
    "take back": Choice((FACT, REASON), _undo, of_sheet=False),
    "signed on paper for a machine": Choice((MACHINE, PLACE), _signed, of_sheet=False),
    "left the course": Choice((REASON,), _left, of_sheet=False),
}
"""What can be decided, by its words in the menu."""


class DecisionBoxes:
    """The menu of what can be decided, and the boxes that it needs."""

    def __init__(self) -> None:
        self.what = widgets.Dropdown(options=list(CHOICES), description="Decide")
        self.boxes = {
            name: widgets.Text(description=label, value="1" if name == SITTING else "")
            for name, label in LABELS.items()
        }
        self.row = widgets.HBox([self.what, *self.boxes.values()])
        self.what.observe(lambda _change: self._lay(), names="value")
        self._lay()

    def __repr__(self) -> str:
        return f"<DecisionBoxes: {self.what.value}>"

    def _lay(self) -> None:
        for name, box in self.boxes.items():
            shown = name in CHOICES[self.what.value].boxes
            box.layout.display = None if shown else "none"

    def keep(self, record: Record, at: Chosen | None) -> list[str]:
        """Keep what was decided about a cell, and say it.

        Raises
        ------
        SeatworkError
            If no cell was pressed, or what was typed does not do; then nothing is kept, and
            what was typed stays.
        """
        choice = CHOICES[self.what.value]
        if at is None or (choice.of_sheet and not at.sheet):
            raise SeatworkError(self.what.value, NO_CELL, PRESS_ONE)
        typed = {name: self.boxes[name].value.strip() for name in choice.boxes}
        said, made = choice.decide(record, at, typed)
        for name in choice.boxes:
            if name != SITTING:
                self.boxes[name].value = ""
        place = f"{at.learner}, {at.sheet}" if choice.of_sheet else at.learner
        return [f"{place}: {said}. To undo it, choose take back with the id {made[:SHORT]}."]


def _whole(text: str, what: str) -> int:
    if not text.isdecimal():
        raise SeatworkError(text[:20] or what, f"that is no {what}", "write a number such as 1")
    return int(text)


def _number(text: str) -> float:
    try:
        found = float(text.replace(",", "."))
    except ValueError:
        found = -1.0
    if not 0 <= found < 1e6:
        raise SeatworkError(text[:20] or "points", "that is no number of points", "write one")
    return found
