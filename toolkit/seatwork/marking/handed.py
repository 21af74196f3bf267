"""What was handed out: each learner's forms with the sizes drawn for them."""

from dataclasses import dataclass, field
from typing import Any

from seatwork.marking.sheets import Item, Sheet
from seatwork.questions import Question


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
    form_id: str = ""
    sealed: bool = False

    def questions(self, sheet: Sheet) -> dict[str, Question]:
        """Return the questions as they were drawn, by their id."""
        return {item.id: self.question(item) for item in sheet.items if item.id in self.sizes}

    def question(self, item: Item) -> Question:
        """Return one question as it was drawn, of the version that was handed out."""
        kind = item.kind.earlier.get(self.versions.get(item.id, 0), item.kind)
        return kind(**self.sizes[item.id])


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
