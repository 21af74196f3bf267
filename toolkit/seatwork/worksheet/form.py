"""The form under a question: a box for each part, a check button, hints, and the verdict."""

from collections.abc import Callable
from time import monotonic
from typing import Any

import ipywidgets as widgets

from seatwork.errors import SeatworkError
from seatwork.shop import wording
from seatwork.units import explain
from seatwork.worksheet.boxes import FormView, answer_box, button, label, status, text_of
from seatwork.worksheet.entry import Entry

LATE_KEYS = 2.0
"""How long after the click on Check a busy kernel may get the key presses before it [s]."""


class Form:
    """A form that saves each key press and answers with a verdict.

    Parameters
    ----------
    entry : Entry
        The question on the desk.
    """

    def __init__(self, entry: Entry) -> None:
        self.entry = entry
        desk, parts = entry.desk, entry.question.parts
        typed = (*desk.answers.of(entry.name).parts, *[""] * len(parts))
        self.boxes = [
            answer_box(part, label(number, len(parts)), text)
            for number, (part, text) in enumerate(zip(parts, typed, strict=False))
        ]
        self.verdict = widgets.HTML()
        self.help = widgets.HTML()
        self._checked_at = -LATE_KEYS
        for box in self.boxes:
            box.observe(self._type, names="value")
        rows = [*self.boxes, self._buttons(), self.verdict, self.help]
        if not desk.is_practice:
            rows.insert(len(self.boxes), self._sure())
        self.view = FormView(rows, entry.name)
        if any(desk.answers.of(entry.name).parts):
            self.show_verdict()

    def _buttons(self) -> widgets.HBox:
        """Make the buttons; a graded sheet has no verdict, so fewer of them."""
        practice = self.entry.desk.is_practice
        check = button("Check" if practice else "Save", self._check)
        self.hint_button = button(self._hintlabel(), self._hint)
        self.worked_button = button("Worked answer", self._worked)
        self.worked_button.disabled = not self.entry.worked()
        self.new_button = button("New numbers", self._renew)
        self.other_button = button(wording()["marking.not_what_i_did"], self._not_that)
        self.other_button.layout.display = "none"
        rest = [self.worked_button, self.new_button, self.other_button] if practice else []
        hint = [self.hint_button] if practice or self.entry.desk.plan.hint_cost else []
        return widgets.HBox([check, *hint, *rest], layout=widgets.Layout(flex_flow="row wrap"))

    def _sure(self) -> Any:
        """Make the mark a learner sets for the instructor; only a graded sheet has it."""
        kept = self.entry.desk.answers.of(self.entry.name).sure
        box = widgets.Checkbox(value=kept, description="I think this is right", indent=False)
        box.observe(self._mark_sure, names="value")
        return box

    def _hintlabel(self) -> str:
        cost = self.entry.desk.plan.hint_cost
        return f"Hint (costs {cost:.0%} of the points)" if cost else "Hint"

    def _type(self, _change: Any) -> None:
        """Save a key press; a late one belongs to the check before it, another ends its verdict."""
        if not self._saved(self._keep):
            return
        if monotonic() - self._checked_at < LATE_KEYS:
            self.show_verdict()
        else:
            self.verdict.value = ""

    def _keep(self) -> None:
        self.entry.keep([text_of(box) for box in self.boxes])

    def _saved(self, save: Callable[[], None]) -> bool:
        """Save something, or say why it is not saved."""
        try:
            save()
        except SeatworkError as error:
            self.verdict.value = status([explain(error)])
            return False
        return True

    def _check(self, _button: Any) -> None:
        self._saved(self._judge)

    def _judge(self) -> None:
        desk, name = self.entry.desk, self.entry.name
        desk.kept.refresh()  # tries used in another page count too
        limit = desk.plan.tries
        if limit and desk.answers.of(name).tries >= limit:
            self.verdict.value = status([f"All {limit} tries are used."])
            return
        self._keep()
        self._checked_at = monotonic()
        desk.count(name, "tries")
        self.show_verdict()
        self.worked_button.disabled = not self.entry.worked()

    def show_verdict(self) -> None:
        """Show what is to be said of the answer."""
        slip = any(verdict.kind == "slip" for verdict in self.entry.verdicts)
        shown = slip and self.entry.desk.is_practice
        self.other_button.layout.display = "" if shown else "none"
        feedback = self.entry.feedback
        labels = [label(number, len(feedback)) for number in range(len(feedback))]
        single = len(feedback) == 1
        lines = feedback if single else [f"{a}: {b}" for a, b in zip(labels, feedback, strict=True)]
        self.verdict.value = status(lines)

    def _hint(self, _button: Any) -> None:
        desk, name = self.entry.desk, self.entry.name
        shown, hints = desk.answers.of(name).hints, self.entry.question.hints
        if shown < len(hints) and not self._saved(lambda: desk.count(name, "hints")):
            return
        read = hints[: min(shown + 1, len(hints))]
        self.help.value = status([f"Hint {n}: {hint}" for n, hint in enumerate(read, 1)])

    def _not_that(self, _button: Any) -> None:
        """Take the learner's word: the same number can come from another thought."""
        first = self.entry.question.hints[0]
        self.help.value = status(["Then something else gave the same number.", f"Hint 1: {first}"])

    def _mark_sure(self, change: Any) -> None:
        sure = bool(change["new"])
        self._saved(lambda: self.entry.desk.mark_sure(self.entry.name, sure))

    def _renew(self, _button: Any) -> None:
        if self._saved(lambda: self.entry.desk.renew(self.entry.name)):
            self.verdict.value = status(["New numbers are drawn. Run this cell again to see them."])

    def _worked(self, _button: Any) -> None:
        self.help.value = status([self.entry.worked()])
