"""Answer files: a learner's answers as data, within limits checked before anything is used."""

import json
import re
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any, NamedTuple, NoReturn

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.names import QUESTION, form_number, learner_code, sheet_name
from seatwork.marking.sealing import is_seal_of, seal_of

FORMAT = 3
"""Files of forms that have an id, with it and a seal."""
RENEWED = 2
"""Files with answers to earlier numbers; all others without an id are written as format 1."""

MOST_BYTES = 256 * 1024
MOST_ANSWERS = 200
MOST_PARTS = 8
LONGEST = 200
MOST_TRIES = 10_000
MOST_EARLIER = 12
SURROGATE = re.compile(r"[\ud800-\udfff]")
KEYS = {"format", "learner", "sheet", "form", "answers"}
SEALED_KEYS = {"form_id", "seal"}
ANSWER_KEYS = {"parts", "attempt", "tries", "hints", "sure"}


class NewerFormat(SeatworkError):
    """An answer file that a newer version wrote: nothing is wrong with it."""


class Answer(NamedTuple):
    """What a learner answered to one question.

    Parameters
    ----------
    parts : tuple of str
        The text typed for each part.
    attempt : int
        Which numbers: 1, or more after new numbers were asked for in practice.
    tries : int
        How often the answer was checked.
    hints : int
        How many hints were read.
    sure : bool
        "I am sure of this one": shown to the instructor.
    earlier : tuple of tuple of str
        What was typed for the numbers before these, the last ones last.
    """

    parts: tuple[str, ...] = ()
    attempt: int = 1
    tries: int = 0
    hints: int = 0
    sure: bool = False
    earlier: tuple[tuple[str, ...], ...] = ()

    def renewed(self) -> "Answer":
        """Return the empty answer to the next numbers; what was typed for these is kept."""
        earlier = (*self.earlier, self.parts)[-MOST_EARLIER:]
        return Answer(attempt=self.attempt + 1, earlier=earlier)


NONE = Answer()


@dataclass(frozen=True, slots=True, kw_only=True)
class AnswerFile:
    """All answers of one learner to one form of a sheet.

    Parameters
    ----------
    learner, sheet : str
        Whose, to which sheet.
    form : int
        Number of the form.
    answers : dict of str to Answer
        By question.
    form_id, seal : str
        Id of the form and the seal of the page that saved the file; empty where the form has
        none.
    """

    learner: str
    sheet: str
    form: int
    answers: dict[str, Answer] = field(default_factory=dict)
    form_id: str = ""
    seal: str = ""

    @property
    def name(self) -> str:
        """Name of the file."""
        return f"{self.learner}-{self.sheet}-{self.form}.json"

    def of(self, question: str) -> Answer:
        """Return the answer to a question, an empty one if there is none."""
        return self.answers.get(question, NONE)

    def changed(self, question: str, **change: Any) -> "AnswerFile":
        """Return the file with one answer changed; a seal it had is gone."""
        answer = self.of(question)._replace(**change)
        return replace(self, answers={**self.answers, question: answer}, seal="")

    def sealed(self, secret: bytes) -> "AnswerFile":
        """Return the file with the seal that the form's own secret gives."""
        return replace(self, seal=seal_of(self._said(), secret))

    def has_seal(self, secret: bytes) -> bool:
        """Tell whether the file is as a page that holds the form's own secret saved it."""
        return is_seal_of(self._said(), secret, self.seal)

    def content(self) -> bytes:
        """Return the file's bytes."""
        whole = self._said() | ({"seal": self.seal} if self.form_id else {})
        return (json.dumps(whole, ensure_ascii=False, separators=(",", ":")) + "\n").encode()

    def _said(self) -> dict[str, Any]:
        """Return what the file says, without its seal."""
        answers = {
            name: {
                "parts": list(answer.parts),
                "attempt": answer.attempt,
                "tries": answer.tries,
                "hints": answer.hints,
                "sure": answer.sure,
            }
            | ({"earlier": [list(parts) for parts in answer.earlier]} if answer.earlier else {})
            for name, answer in sorted(self.answers.items())
        }
        renewed = any(answer.earlier for answer in self.answers.values())
        return {
            "format": FORMAT if self.form_id else RENEWED if renewed else 1,
            "learner": self.learner,
            "sheet": self.sheet,
            "form": self.form,
            "answers": answers,
        } | ({"form_id": self.form_id} if self.form_id else {})

    def save(self, folder: Path) -> None:
        """Write the file at once; what stood there before stays as its backup."""
        files.write(folder / self.name, self.content(), backup=True)


def reopen(empty: AnswerFile, folder: Path) -> AnswerFile:
    """Return the saved answers for the same learner, sheet and form; `empty` if none.

    A damaged file is passed over for its backup.

    Raises
    ------
    NewerFormat
        If a newer version wrote it; it is not to be written over.
    """
    for name in (empty.name, empty.name + ".bak"):
        path = folder / name
        if path.is_file():
            try:
                found = read(path)
            except NewerFormat:
                raise
            except SeatworkError:
                continue
            if found.name == empty.name:
                return found
    return empty


def read(path: Path) -> AnswerFile:
    """Return an answer file.

    Raises
    ------
    SeatworkError
        If it breaks a limit, is damaged, or a newer version wrote it.
    """
    try:
        with path.open("rb") as file:
            raw = file.read(MOST_BYTES + 1)
    except OSError as error:
        reason = (error.strerror or "it cannot be opened").lower()
        raise SeatworkError(path.name, reason, "hand it in again") from error
    return parse(raw, path.name)


def parse(raw: bytes, name: str) -> AnswerFile:
    """Return the answer file that `raw` holds; `name` is what an error calls it."""
    whole = _loaded(raw, name)
    _check_format(whole, name)
    if whole.keys() != (KEYS | SEALED_KEYS if whole["format"] == FORMAT else KEYS):
        _refuse(name, "its fields are not those of an answer file")
    answers = whole["answers"]
    if type(answers) is not dict or len(answers) > MOST_ANSWERS:
        _refuse(name, "its list of answers is not as it should be")
    return AnswerFile(
        learner=learner_code(whole["learner"]),
        sheet=sheet_name(whole["sheet"]),
        form=form_number(whole["form"]),
        answers={_question(key, name): _answer(value, name) for key, value in answers.items()},
        form_id=_short(whole.get("form_id", ""), name),
        seal=_short(whole.get("seal", ""), name),
    )


def _loaded(raw: bytes, name: str) -> dict[str, Any]:
    if len(raw) > MOST_BYTES:
        _refuse(name, "it is larger than 256 kB")
    try:
        whole = DECODER.decode(raw.decode("utf-8-sig"))
    except UnicodeDecodeError:
        _refuse(name, "it is damaged, or another program changed its letters (not UTF-8)")
    except SeatworkError as error:
        _refuse(name, error.fault)
    except (ValueError, RecursionError):
        _refuse(name, "it is damaged, cut off, or not from a worksheet")
    if type(whole) is not dict:
        _refuse(name, "it is no answer file")
    return whole


def _check_format(whole: dict[str, Any], name: str) -> None:
    found = whole.get("format")
    if type(found) is not int or found < 1:
        _refuse(name, "it does not say its format")
    if found > FORMAT:
        raise NewerFormat(name, "a newer version wrote it", "use that version")


def _short(text: Any, name: str) -> str:
    """Return a form's id or a seal as it stands: whether it fits is for marking to look at."""
    if type(text) is not str or len(text) > LONGEST or SURROGATE.search(text):
        _refuse(name, "its form id or its seal is no short text")
    return text


def _question(key: str, name: str) -> str:
    if not QUESTION.fullmatch(key):
        _refuse(name, "a question in it has no proper id")
    return key


def _answer(value: Any, name: str) -> Answer:
    if type(value) is not dict or value.keys() - {"earlier"} != ANSWER_KEYS:
        _refuse(name, "an answer in it has other fields than it should")
    parts, sure = _parts(value["parts"], name), value["sure"]
    attempt, tries, hints = value["attempt"], value["tries"], value["hints"]
    if not type(attempt) is type(tries) is type(hints) is int:
        _refuse(name, "a count in it is no whole number")
    if not (1 <= attempt <= MOST_TRIES and 0 <= tries <= MOST_TRIES and 0 <= hints <= MOST_TRIES):
        _refuse(name, "a count in it is out of range")
    if type(sure) is not bool:
        _refuse(name, "a mark in it is neither true nor false")
    earlier = value.get("earlier", [])
    if type(earlier) is not list or len(earlier) > MOST_EARLIER:
        _refuse(name, "its earlier answers are not as they should be")
    before = tuple(_parts(one, name) for one in earlier)
    return Answer(parts, attempt, tries, hints, sure, before)


def _parts(parts: Any, name: str) -> tuple[str, ...]:
    """Return what was typed for the parts of a question, within its limits."""
    if type(parts) is not list or len(parts) > MOST_PARTS:
        _refuse(name, "an answer in it has no list of parts")
    for part in parts:
        if type(part) is not str or len(part) > LONGEST:
            _refuse(name, "an answer in it is no short text")
        if SURROGATE.search(part):
            _refuse(name, "an answer in it holds half a character, which is no text")
    return tuple(parts)


def _no_twice(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) < len(pairs):
        raise SeatworkError("", "a field stands twice in it", "")
    return found


def _no_constant(text: str) -> NoReturn:
    raise SeatworkError("", f"{text} is no number", "")


def _no_float(text: str) -> NoReturn:
    raise SeatworkError("", "it holds a number that is no whole number", "")


_hook: Callable[[list[tuple[str, Any]]], Any] = _no_twice
DECODER = json.JSONDecoder(
    object_pairs_hook=_hook,
    parse_constant=_no_constant,
    parse_float=_no_float,
)


def _refuse(name: str, fault: str) -> NoReturn:
    raise SeatworkError(name, fault, "hand in the file that the worksheet saved")
