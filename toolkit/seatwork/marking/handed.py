"""What was handed out: each learner's forms with the sizes drawn for them."""

from dataclasses import dataclass, field, replace
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.sheets import Item, Sheet
from seatwork.questions import Question, named
from seatwork.questions.left_out import left_out


@dataclass(frozen=True, slots=True, kw_only=True)
class HandedOut:
    """One form that a learner was given.

    Parameters
    ----------
    sitting : int
        1 for the first test, 2 for the first re-test.
    form : int
        Number of the form, part of its seed.
    mode : {"practice", "graded"}
        How it was given.
    sizes : dict
        Drawn sizes by question.
    versions : dict
        Version of each question's type at that time.
    types : dict
        Type of each question, in the order of the paper; empty where it was not kept.
    form_id : str
        As printed on the paper; empty for a form of a time when there were none.
    sealed : bool
        Whether each of its pages seals what it saves; pages taken home once did not.
    """

    sitting: int
    form: int
    mode: str
    sizes: dict[str, dict[str, Any]]
    versions: dict[str, int]
    types: dict[str, str] = field(default_factory=dict)
    form_id: str = ""
    sealed: bool = False

    def asked(self, sheet: Sheet) -> Sheet:
        """Return a sheet as this form asks it, whatever has gone or changed on it since."""
        if not self.types:
            return sheet
        items = (as_given(name, kind, sheet) for name, kind in self.types.items())
        return replace(sheet, items=tuple(items))

    def questions(self, sheet: Sheet) -> dict[str, Question]:
        """Return the questions as they were drawn, by their id."""
        items = self.asked(sheet).items
        return {item.id: self.question(item) for item in items if item.id in self.sizes}

    def question(self, item: Item) -> Question:
        """Return one question as it was drawn, of the type and version that was handed out."""
        was = self.types.get(item.id, item.kind.id)
        kind = item.kind if was == item.kind.id else _kind(was)
        return kind.earlier.get(self.versions.get(item.id, 0), kind)(**self.sizes[item.id])


def as_given(name: str, kind: str, sheet: Sheet, points: float | None = None) -> Item:
    """Return a question of a sheet as it was handed out.

    Parameters
    ----------
    name, kind : str
        Its place and its type then.
    sheet : Sheet
        The worksheet as it is now: it says how what is still on it is asked.
    points : float, optional
        Points it was worth then [-]; as the sheet says, else 1, if not given.
    """
    same = next((item for item in sheet.items if item.id == name), None)
    worth = points if points is not None else same.points if same else 1.0
    if same is not None and same.kind.id == kind:
        return replace(same, points=worth)
    own = {item.kind.id: item.kind for item in sheet.items}
    return Item(id=name, kind=_kind(kind, own), points=worth, system=None)


def _kind(name: str, own: dict[str, type[Question]] | None = None) -> type[Question]:
    """Return a question type; a stand-in, which says that it is not here, if nobody knows it."""
    try:
        return named(name, own)
    except SeatworkError:
        return left_out(name)


@dataclass(slots=True)
class Forms:
    """Everything handed out in a course: sheet, then learner, then forms."""

    sheets: dict[str, dict[str, list[HandedOut]]] = field(default_factory=dict)

    def forms(self, sheet: str, learner: str) -> list[HandedOut]:
        """Return the forms of a sheet that a learner was given, in order."""
        return self.sheets.setdefault(sheet, {}).setdefault(learner, [])

    def form(self, sheet: str, learner: str, form: int) -> HandedOut | None:
        """Return one form that a learner was given, None if there is none."""
        for given in self.sheets.get(sheet, {}).get(learner, ()):
            if given.form == form:
                return given
        return None

    def whose(self, form_id: str) -> tuple[str, str, int] | None:
        """Return learner, sheet and number of the form that has an id, None if there is none."""
        for sheet, learners in self.sheets.items():
            for learner, forms in learners.items():
                for one in forms:
                    if one.form_id and one.form_id == form_id:
                        return learner, sheet, one.form
        return None
