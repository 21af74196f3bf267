"""One question on the desk: its text, its form, and what is said of the answer."""

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.text import verdict_text
from seatwork.questions import Question, Verdict
from seatwork.questions.type.pictures import spoken
from seatwork.worksheet import watching
from seatwork.worksheet.answered import Answered
from seatwork.worksheet.kept import Overtaken

PICTURE_SCALE = 0.5  # half of a bench's picture, a question and its form on one screen


class Entry:
    """A question with its form; as text, the question alone.

    Parameters
    ----------
    desk : Answered
        The worksheet.
    name : str
        The question's place on it.
    form : callable
        Makes the form that is shown under the question.
    """

    def __init__(self, desk: Answered, name: str, form: Callable[["Entry"], Any]) -> None:
        self.desk = desk
        self.name = name
        self._form = form
        self.question: Question = desk.question(name)
        self.attempt = desk.answers.of(name).attempt
        self._drawn: dict[tuple[bool, str], Any] = {}

    def __repr__(self) -> str:
        return f"{self.name}. {self.say(self.question.ask())}"

    @property
    def words(self) -> Mapping[str, str]:
        """The wording, in the language that the learner chose."""
        return self.desk.voice.words

    def say(self, text: str) -> str:
        """Say a text of the question in the language that the learner chose."""
        return self.desk.voice.say(text)

    @property
    def verdicts(self) -> tuple[Verdict, ...]:
        """What is to be said of each part of the answer now."""
        return self.desk.verdicts(self.name)

    @property
    def feedback(self) -> tuple[str, ...]:
        """The verdicts in plain words; in a graded sheet only that the answer is saved."""
        words = self.words
        if not self.desk.is_practice:
            typed = any(self.desk.answers.of(self.name).parts)
            return (words["marking.saved" if typed else "marking.not_answered"],)
        parts = zip(self.verdicts, self.question.parts, strict=True)
        return tuple(verdict_text(verdict, part, words, self.say) for verdict, part in parts)

    def keep(self, parts: Sequence[str]) -> None:
        """Save what was typed under this question, at once.

        Raises
        ------
        SeatworkError
            If it cannot be saved, or new numbers were drawn since the question was shown.
        """
        if self.desk.answers.of(self.name).attempt != self.attempt:
            fault = "not saved, since new numbers are drawn for it"
            raise Overtaken(self.name, fault, "run this cell again to see them")
        self.desk.keep(self.name, parts)

    def renew(self) -> None:
        """Draw new numbers in place; the answer to the old ones stays in the file."""
        self.desk.renew(self.name)
        self.question = self.desk.question(self.name)
        self.attempt = self.desk.answers.of(self.name).attempt
        self._drawn.clear()

    def hint(self, number: int) -> str:
        """Return a hint, the first one is number 0."""
        return self.say(self.question.hints[number])

    def worked(self) -> str:
        """Return the worked answer; only after a try, and never on a graded sheet."""
        tried = self.desk.answers.of(self.name).tries > 0
        return self.say(self.question.worked()) if tried and self.desk.is_practice else ""

    def steps(self) -> tuple[str, ...]:
        """Return the worked answer step by step, or in one text; none before a try."""
        worked = self.worked()
        if not worked or type(self.question).worked is not Question.worked:
            return (worked,) if worked else ()
        steps = self.question.worked_steps()
        return tuple(self.say(step.line(self.question.system)) for step in steps)

    def _ipython_display_(self) -> None:
        from IPython import display as shown

        display: Any = shown.display
        if watching.sitting:  # the referee wants no drawing and no form
            display({"text/plain": repr(self)}, raw=True)
            return
        display(self.picture(), raw=True)
        display(self.desk.show(self.name, self._form(self)))

    def _drawing(self, *, dark: bool = False) -> Any:
        """Return the drawing, made once for each theme and language; None if it has none."""
        voice = self.desk.voice
        if (dark, voice.language) not in self._drawn:
            from seatwork.drawings.scene import Look, looking

            with looking(Look(palette="dark" if dark else "light")):
                drawn = spoken(self.question.drawing(), voice.say)
            self._drawn[dark, voice.language] = drawn
        return self._drawn[dark, voice.language]

    @property
    def alt(self) -> str:
        """What the picture shows, in words; empty without a picture."""
        drawing = self._drawing()
        return drawing.text if drawing is not None else ""

    def png(self, *, dark: bool = False, scale: float = 1.0) -> bytes:
        """Return the picture as a PNG file; empty without one."""
        drawing = self._drawing(dark=dark)
        if drawing is None:
            return b""
        try:
            return bytes(drawing.trimmed_png(PICTURE_SCALE * scale))
        except SeatworkError:  # an own drawing that fails says so in its text
            return b""

    def picture(self) -> dict[str, Any]:
        """Return the question as text and, with its drawing, as markdown."""
        drawing = self._drawing()
        lines = repr(self).split("\n")
        shown = f"**{self.name}.** " + "  \n".join(lines)[len(self.name) + 2 :]
        if drawing is not None:
            shown += "\n\n" + drawing.markdown(PICTURE_SCALE)
        return {"text/plain": repr(self), "text/markdown": shown}


def typed_parts(answer: str | Sequence[str]) -> tuple[str, ...]:
    """Return an answer as its parts: a sequence, or one text with ``;`` between parts.

    Examples
    --------
    >>> typed_parts("a; .018 in"), typed_parts((".139 in",))
    (('a', '.018 in'), ('.139 in',))
    """
    pieces = answer.split(";") if isinstance(answer, str) else [str(piece) for piece in answer]
    return tuple(piece.strip() for piece in pieces)[:8]
