"""Answers kept in a folder that another page may write too: nothing typed is lost unsaid."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from threading import RLock

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import Answer, AnswerFile
from seatwork.marking.answers import NewerFormat, read, reopen

Change = Callable[[Answer], Answer]


EMPTIED = "another page has cleared it, its box is empty now"


class Overtaken(SeatworkError):
    """Another page, or a newer version, wrote what this page shows: its box is to be closed."""


class Kept:
    """The answers to one form of a sheet, and where they are kept.

    A change is made on what the file holds at that moment, so that pages which have the same
    sheet open add to each other. Where two pages answer the same question, the later one is
    refused until it has shown what the other wrote. A page may send what is typed and what is
    pressed to two threads; they take turns here.

    Parameters
    ----------
    empty : AnswerFile
        Whose answers, to which form; without answers.
    folder : Path or None
        Where they are kept; None to keep them in memory only.
    secret : bytes
        The form's own, to seal what is saved with; empty for a form without an id.
    """

    def __init__(self, empty: AnswerFile, folder: Path | None, secret: bytes = b"") -> None:
        self.folder, self._secret = folder, secret
        found = reopen(empty, folder) if folder else empty
        self.answers = replace(empty, answers=found.answers)
        self._shown: dict[str, Answer] = {}
        self._turn = RLock()
        self.on_change: Callable[[], None] | None = None

    def refresh(self) -> None:
        """Take in what other pages have written; a file that cannot be read is passed over."""
        with self._turn:
            self._take_in()

    def _take_in(self) -> None:
        path = self.folder / self.answers.name if self.folder else None
        if path is None or not path.is_file():
            return
        try:
            found = read(path)
        except NewerFormat:
            raise
        except SeatworkError:
            return
        if found.name == self.answers.name:
            answers = {**self.answers.answers, **found.answers}
            self.answers = replace(self.answers, answers=answers)

    def show(self, question: str) -> Answer:
        """Return the answer to a question as it is now; the page shows this one."""
        with self._turn:
            self._take_in()
            self._shown[question] = self.answers.of(question)
            return self._shown[question]

    def change(self, question: str, change: Change) -> None:
        """Change the answer to one question and save it at once.

        Raises
        ------
        SeatworkError
            If another page has answered the question since this one showed it, or the folder
            cannot be written; nothing is changed then.
        """
        with self._turn:
            if self.folder is None:
                self._change(question, change)
                return
            try:
                self._write(self.folder, question, change)
            except SeatworkError as error:
                remedy = error.remedy.replace("give the command again", "type it again")
                why = error.fault.removeprefix("it was not saved: ")
                overtaken = isinstance(error, Overtaken | NewerFormat)
                kind = Overtaken if overtaken else SeatworkError
                raise kind(error.value, f"not saved, since {why}", remedy) from error
            self._shown[question] = self.answers.of(question)
            if self.on_change:
                self.on_change()

    def _write(self, folder: Path, question: str, change: Change) -> None:
        try:
            files.make_folder(folder)
        except OSError as error:
            raise files.refusal(folder, error) from error
        with files.lock(folder):
            self._take_in()
            self._check(question)
            before = self.answers
            self._change(question, change)
            try:
                self._sealed().save(folder)
            except SeatworkError:
                self.answers = before
                raise

    def _sealed(self) -> AnswerFile:
        return self.answers.sealed(self._secret) if self._secret else self.answers

    def _change(self, question: str, change: Change) -> None:
        changed = change(self.answers.of(question))
        self.answers = self.answers.changed(question, **changed._asdict())

    def _check(self, question: str) -> None:
        """Refuse to write over what another page wrote after this one showed the question."""
        now = self.answers.of(question)
        shown = self._shown.get(question, now)
        if now.attempt != shown.attempt:
            fault = "another page has drawn new numbers for it"
            raise Overtaken(question, fault, "run this cell again to see them")
        if _typed(now) != _typed(shown):
            typed = "; ".join(_typed(now))
            fault = f"another page has answered it ({typed})" if typed else EMPTIED
            remedy = "run this cell again to see that answer and go on from it"
            raise Overtaken(question, fault, remedy)


def _typed(answer: Answer) -> tuple[str, ...]:
    """Return what was typed, without boxes left empty at the end."""
    parts = answer.parts
    while parts and not parts[-1].strip():
        parts = parts[:-1]
    return parts
