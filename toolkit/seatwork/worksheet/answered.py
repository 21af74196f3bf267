"""One form of a worksheet with its answers: what they are now, and how they change."""

from collections.abc import Callable, Sequence
from contextlib import suppress
from dataclasses import replace
from pathlib import Path
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking import Answer, AnswerFile, Sheet
from seatwork.marking.answers import LONGEST
from seatwork.marking.given import Given
from seatwork.marking.speaking import Voice, voice_at
from seatwork.questions import Question, Verdict, judge_all
from seatwork.shop.folder import find
from seatwork.shop.marker import name_in_marker
from seatwork.worksheet import watching
from seatwork.worksheet.kept import Kept


class Answered:
    """A worksheet with a learner's numbers and answers.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    mine : Given
        Whose numbers these are.
    folder : Path or None
        Where answers are saved; None to keep them in memory only.
    """

    def __init__(self, plan: Sheet, mine: Given, folder: Path | None) -> None:
        self.plan = plan
        self.mine = mine
        self.asked: set[str] = set()
        self.finished = False
        empty = replace(mine.empty, sheet=plan.name)
        if watching.sitting:
            folder = watching.sitting.sees(self, folder, empty.name)
        self.kept = Kept(empty, folder, mine.secret)
        self._shown: dict[str, Any] = {}
        self._asked_again: dict[str, Callable[[], None]] = {}
        self.voice = voice_at(folder)

    def __repr__(self) -> str:
        count = len(self.plan.items)
        return f"{self.plan.title}: {count} questions, numbers of learner {self.mine.learner}"

    @property
    def answers(self) -> AnswerFile:
        """The answers as last seen."""
        return self.kept.answers

    @property
    def is_practice(self) -> bool:
        """Whether feedback is given at once."""
        return self.mine.mode == "practice"

    def question(self, name: str) -> Question:
        """Return a question with this learner's numbers."""
        attempt = self.answers.of(name).attempt
        return self.mine.question(self.plan, name, attempt)

    def show(self, name: str, view: Any) -> Any:
        """Keep the form shown for a question; the one shown before is closed."""
        if name in self._shown:
            self._shown.pop(name).close()
        self._shown[name] = view
        return view

    def when_spoken(self, name: str, ask: Callable[[], None]) -> None:
        """Ask a question again, by `ask`, when the learner chooses another language."""
        self._asked_again[name] = ask

    def speak(self, language: str) -> None:
        """Say everything in another language, and begin with it the next time.

        No answer and no mark depends on it. A workbook that cannot be written keeps its own.

        Raises
        ------
        SeatworkError
            If there is no catalog of that language.
        """
        voice = Voice(language)
        voice.say("")  # refuses a language that is not there
        self.voice = voice
        workbook = find(self.kept.folder) if self.kept.folder else None
        if workbook:
            with suppress(SeatworkError):
                name_in_marker(workbook, "language", language)
        for ask in self._asked_again.values():
            ask()

    def keep(self, name: str, parts: Sequence[str]) -> None:
        """Save what was typed for a question, at once."""
        typed = tuple(part[:LONGEST] for part in parts)
        self.kept.change(name, lambda answer: answer._replace(parts=typed))

    def count(self, name: str, what: str) -> None:
        """Count one more of "tries" or "hints" for a question."""

        def more(answer: Answer) -> Answer:
            return answer._replace(**{what: getattr(answer, what) + 1})

        self.kept.change(name, more)

    def renew(self, name: str) -> None:
        """Draw new numbers for a practice question; its answer starts empty, the old is kept."""
        self.kept.change(name, Answer.renewed)

    def mark_sure(self, name: str, sure: bool) -> None:
        """Keep the learner's "I think this is right" for the instructor."""
        self.kept.change(name, lambda answer: answer._replace(sure=sure))

    def verdicts(self, name: str) -> tuple[Verdict, ...]:
        """Return what is to be said of each part of an answer."""
        return judge_all(self.question(name), self.answers.of(name).parts)
