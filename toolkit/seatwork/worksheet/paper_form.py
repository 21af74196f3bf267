"""Answers from paper, typed into a form: one learner after the other, each box saved at once."""

from pathlib import Path
from typing import Any

import ipywidgets as widgets

from seatwork.errors import SeatworkError
from seatwork.marking import AnswerFile, Sheet
from seatwork.marking.answers import LONGEST
from seatwork.marking.handed import Forms, HandedOut
from seatwork.marking.sealing import form_secret
from seatwork.marking.sheets import Item
from seatwork.marking.text import verdict_text
from seatwork.questions import Question, judge_all
from seatwork.shop import wording
from seatwork.units import explain
from seatwork.worksheet.boxes import LETTERS, FormView, button, status
from seatwork.worksheet.kept import Kept


class PaperForm:
    """A box for each answer of one learner; what is typed is saved and judged at once.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    handed_out : Forms
        What was handed out.
    folder : Path
        Where the answer files go; made with the first answer.
    key : bytes
        The course key: what is typed here is sealed as the form's own page would.
    """

    def __init__(self, plan: Sheet, handed_out: Forms, folder: Path, key: bytes) -> None:
        self.plan, self.folder, self._key = plan, folder, key
        self.forms: dict[str, HandedOut] = {
            f"{learner}, form {form.form}": form
            for learner, forms in sorted(handed_out.sheets[plan.name].items())
            for form in forms
        }
        self.who = widgets.Dropdown(options=list(self.forms), description="Learner")
        self.rows = widgets.VBox()
        self.saved = widgets.HTML()
        self.who.observe(lambda _change: self._turn(), names="value")
        buttons = widgets.HBox([button("Next learner", self._next)])
        self.view = FormView([self.who, self.rows, buttons, self.saved], f"{plan.title} on paper")
        self._turn()

    def __repr__(self) -> str:
        return f"{self.plan.title}: answers from paper, {len(self.forms)} forms handed out."

    def _ipython_display_(self) -> None:
        from IPython import display as shown

        display: Any = shown.display
        display(self.view)

    def _turn(self) -> None:
        """Show the boxes of the learner chosen, with what was typed before."""
        chosen = str(self.who.value)
        learner, form = chosen.split(",")[0], self.forms[chosen]
        empty = AnswerFile(
            learner=learner, sheet=self.plan.name, form=form.form, form_id=form.form_id
        )
        secret = form_secret(self._key, form.form_id) if form.form_id else b""
        self.kept = Kept(empty, self.folder, secret)
        self.asked = {
            item.id: _Asked(self, item, form.question(item))
            for item in form.asked(self.plan).items
            if item.id in form.sizes
        }
        for name in self.asked:
            self.kept.show(name)
        self.rows.children = [row for asked in self.asked.values() for row in asked.rows]
        self._show()

    def _next(self, _button: Any) -> None:
        names = list(self.forms)
        self.who.value = names[(names.index(self.who.value) + 1) % len(names)]

    @property
    def file(self) -> AnswerFile:
        """The answers of the learner chosen."""
        return self.kept.answers

    def keep(self, name: str, parts: tuple[str, ...]) -> None:
        """Save the answer to one question, or say why it was not saved."""
        try:
            self.kept.change(name, lambda answer: answer._replace(parts=parts))
        except SeatworkError as error:
            self.saved.value = status([explain(error)])
        else:
            self._show()

    def _show(self) -> None:
        done = sum(any(self.file.of(name).parts) for name in self.asked)
        count = f"{self.file.learner}: {done} of {len(self.asked)} typed"
        where = f"saved in {self.folder.name}/{self.file.name}" if done else "nothing saved yet"
        self.saved.value = status([f"{count}, {where}."])


class _Asked:
    """The boxes of one question, each with the verdict beside it."""

    def __init__(self, form: PaperForm, item: Item, question: Question) -> None:
        self.form, self.name, self.question = form, item.id, question
        typed = (*form.file.of(item.id).parts, *[""] * len(question.parts))
        letters = LETTERS if len(question.parts) > 1 else [""]
        self.boxes = [
            widgets.Text(value=text, description=f"{item.id}{letter}", continuous_update=False)
            for text, letter, _ in zip(typed, letters, question.parts, strict=False)
        ]
        self.verdicts = [widgets.HTML() for _ in self.boxes]
        self.rows = [
            widgets.HBox(pair, layout=widgets.Layout(flex_flow="row wrap"))
            for pair in zip(self.boxes, self.verdicts, strict=True)
        ]
        for box in self.boxes:
            box.observe(self._type, names="value")
        self._judge()

    def _type(self, _change: Any) -> None:
        parts = tuple(box.value.strip()[:LONGEST] for box in self.boxes)
        self.form.keep(self.name, parts)
        self._judge()

    def _judge(self) -> None:
        typed = tuple(box.value.strip() for box in self.boxes)
        if not any(typed):
            return
        words, parts = wording(), self.question.parts
        verdicts = judge_all(self.question, typed)
        for shown, verdict, part in zip(self.verdicts, verdicts, parts, strict=True):
            codes = "".join(f" [{slip.code}]" for slip in verdict.slips)  # for the instructor
            shown.value = status([verdict_text(verdict, part, words) + codes])
