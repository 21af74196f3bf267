"""The form under a question: it saves what is typed, says what it is, and helps."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.answers import LONGEST
from seatwork.marking.languages import languages
from seatwork.questions.type.parts import Part
from seatwork.worksheet.answer_view import AnswerView
from seatwork.worksheet.asking import asked
from seatwork.worksheet.entry import Entry
from seatwork.worksheet.helping import Help
from seatwork.worksheet.kept import Overtaken
from seatwork.worksheet.telling import QUIET, Told, graded, practice

SPEAK = "speak "
"""What the buttons of the languages begin with."""

BUTTONS = {"check", "hint", "worked", "renew", "cut", "other"}


class Form:
    """A form that saves each key press and answers with a verdict when it is checked.

    Parameters
    ----------
    entry : Entry
        The question on the desk.
    """

    def __init__(self, entry: Entry) -> None:
        self.entry = entry
        self._dark, self._scale, self._turn = False, 1.0, 0
        self._judged: tuple[str, ...] = ()
        self._told, self._closed = QUIET, ""
        self._fault: SeatworkError | None = None
        self.help = Help(entry)
        self.view = AnswerView(self._heard, self.type, entry.name)
        entry.desk.when_spoken(entry.name, self._ask_again)
        if any(self.texts) and self._answer.tries:
            self._judge(self.texts)
        self._ask()

    @property
    def texts(self) -> tuple[str, ...]:
        """What is kept for each box."""
        typed = (*self._answer.parts, *[""] * len(self._parts))
        return typed[: len(self._parts)]

    @property
    def said(self) -> str:
        """What is said of the answer, of all its parts, in one text."""
        told = self._told
        beside = (part[name] for part in told.parts for name in ("said", "more"))
        return " ".join([self._trouble, *told.lines, *beside]).strip()

    @property
    def _trouble(self) -> str:
        """Why the last change was not saved, in the language chosen; empty where it was."""
        return self.entry.desk.voice.explain(self._fault) if self._fault else ""

    @property
    def _answer(self) -> Any:
        return self.entry.desk.answers.of(self.entry.name)

    @property
    def _parts(self) -> tuple[Part, ...]:
        return self.entry.question.parts

    def _ask(self, focus: str = "") -> None:
        """Show the question, with its picture, as it is now."""
        self._typed = self.texts
        with self.view.hold_sync():
            self.view.picture = self.entry.png(dark=self._dark, scale=self._scale)
            self.view.typed = list(self.texts)
            self._show(focus)
            self.view.asked = asked(self.entry)

    def _ask_again(self) -> None:
        """Ask and tell everything again in the language that was chosen."""
        if self._judged:
            self._judge(self._judged)
        if self._closed:
            self._close_boxes()
        self._ask()

    def _show(self, focus: str = "") -> None:
        """Show what is said, and where the focus goes."""
        self._turn += 1
        told = self._told
        figures = self.help.figures(dark=self._dark)
        with self.view.hold_sync():
            self.view.figures = [figure.png for figure in figures]
            self.view.now = {
                "turn": self._turn,
                "texts": list(self.texts),
                "judged": list(self._judged),
                "said": [self._trouble] if self._trouble else list(told.lines),
                "tone": "wrong" if self._trouble else told.tone,
                "parts": list(told.parts),
                "help": self.help.blocks(),
                "figures": [figure.shown for figure in figures],
                "drawn": [self._dark, self._scale],
                "buttons": self._buttons(),
                "choices": self.help.choices(self.entry.words),
                "closed": self._closed,
                "sure": self._answer.sure,
                "focus": focus,
            }

    def _buttons(self) -> list[dict[str, Any]]:
        """Return the buttons as they are now, in the order of the keyboard."""
        words, desk = self.entry.words, self.entry.desk
        if not desk.is_practice:
            hint = [self.help.button(words)] if desk.plan.hint_cost else []
            return [_button("check", words["form.save"], shut=bool(self._closed)), *hint]
        tried = bool(self.entry.worked())
        worked = words["form.worked" if tried else "form.worked_later"]
        found = [
            _button("check", words["form.check"], shut=bool(self._closed)),
            self.help.button(words),
            _button("worked", worked, shut=not tried),
        ]
        if self._told.right and self.help.can_cut:
            found.append(_button("cut", words["form.cut"]))
        found.append(_button("renew", words["form.renew"]))
        if self._told.right:
            found.append(_button("next", words["form.next"]))
        return found

    def _heard(self, content: dict[str, Any]) -> None:
        """Hear the page: a button, the mark "sure", or how it looks."""
        if "page" in content:
            self._fit(**content["page"])
        elif "sure" in content:
            sure = bool(content["sure"])
            self._saved(lambda: self.entry.desk.mark_sure(self.entry.name, sure))
        elif "press" in content:
            self.press(str(content["press"]), [str(text) for text in content.get("texts", ())])

    def press(self, what: str, typed: Sequence[str] | None = None) -> None:
        """Press a button by its name, with what stands in the boxes then."""
        texts = self._cut_off(self._typed if typed is None else typed)
        if what.removeprefix(SPEAK) in languages():
            self.entry.desk.speak(what.removeprefix(SPEAK))  # asks again in every form shown
            self._show("language")
        elif what in BUTTONS:
            getattr(self, f"_{what}")(texts)
        elif what.removeprefix("which").isdecimal():
            self._which(int(what.removeprefix("which")))

    def _fit(self, dark: bool, scale: float) -> None:
        """Draw again for a dark page, or more sharply."""
        if (dark, scale) == (self._dark, self._scale):
            return
        dimmed = dark != self._dark
        self._dark, self._scale = dark, float(scale)
        self.view.picture = self.entry.png(dark=dark, scale=self._scale)
        if dimmed:
            self._show()

    def _cut_off(self, typed: Sequence[str]) -> tuple[str, ...]:
        """Return what is in the boxes, one text for each part, none too long to be kept."""
        texts = (*typed, *[""] * len(self._parts))[: len(self._parts)]
        return tuple(text[:LONGEST] for text in texts)

    def type(self, typed: Sequence[str]) -> None:
        """Save what is typed; nothing is said of it before it is checked."""
        self._typed = texts = self._cut_off(typed)
        if texts == self.texts and not self._trouble:
            return
        if self._saved(lambda: self.entry.keep(texts)):
            self.view.send({"kept": list(texts)})

    def _saved(self, save: Callable[[], None]) -> bool:
        """Save something, or say why it is not saved."""
        before = self._trouble, self._closed
        try:
            save()
        except SeatworkError as error:
            self._fault = error
            self._closed = self._trouble if isinstance(error, Overtaken) else self._closed
            self._show()
            return False
        self._fault = None
        if before != (self._trouble, self._closed):
            self._show()
        return True

    def _check(self, typed: tuple[str, ...]) -> None:
        self._saved(lambda: self._count_and_judge(typed))

    def _count_and_judge(self, typed: tuple[str, ...]) -> None:
        desk, name = self.entry.desk, self.entry.name
        desk.kept.refresh()  # tries used in another page count too
        limit = desk.plan.tries
        if limit and desk.answers.of(name).tries >= limit:
            self._close_boxes()
            self._show("heading")
            return
        self.entry.keep(typed)
        if any(text.strip() for text in typed):  # empty boxes are no try
            desk.count(name, "tries")
        self._fault = None
        self._judge(typed)
        self._show(self._told.focus)

    def _close_boxes(self) -> None:
        """Close the boxes: another page goes on, or all tries are used; the last answer is kept."""
        if isinstance(self._fault, Overtaken):
            self._closed = self._trouble
            return
        tries = self.entry.desk.plan.tries
        self._closed = self.entry.words["form.out_of_tries"].format(tries=tries)
        self._told = Told(lines=(self._closed,), tone="wrong")

    def _judge(self, typed: tuple[str, ...]) -> None:
        """Find what is to be said of an answer, and what helps with it."""
        self._judged = typed
        if not self.entry.desk.is_practice:
            self._told = graded(self.entry.question, typed, self.entry.desk.voice)
            return
        verdicts = self.entry.verdicts
        self.help.judged(verdicts, typed)
        self._told = practice(self.entry, typed, verdicts, self.help.opened)

    def _hint(self, _typed: tuple[str, ...]) -> None:
        if self._saved(self.help.more):
            self._show("hint")

    def _worked(self, _typed: tuple[str, ...]) -> None:
        self.help.work()
        self._show("worked")

    def _cut(self, _typed: tuple[str, ...]) -> None:
        self.help.cut_right()
        self._show()

    def _renew(self, typed: tuple[str, ...]) -> None:
        """Draw new numbers in place; the answer to the old ones is kept."""
        del typed
        if self._saved(self.entry.renew):
            self._judged, self._told, self._closed = (), QUIET, ""
            self.help = Help(self.entry)
            self._ask("box")

    def _which(self, number: int) -> None:
        """Take the learner's word which of several ways gave the number."""
        self._told = replace(self._told, lines=(self._told.lines[0], self.help.which(number)))
        self._show("select")

    def _other(self, _typed: tuple[str, ...]) -> None:
        """Take the learner's word: the same number can come from another thought."""
        if self._saved(self.help.something_else):
            words = self.entry.words
            self._told = replace(self._told, lines=(words["form.other_said"],))
            self._show("hint")


def _button(press: str, label: str, *, shut: bool = False) -> dict[str, Any]:
    return {"press": press, "label": label, "shut": shut}
