"""What a form says of an answer: one message for a check, and no word of practice when graded."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from seatwork.entries.letters import LETTERS
from seatwork.marking.speaking import Speaker, Voice
from seatwork.questions.type.parts import ChoicePart, NumberPart, Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.verdicts import Verdict, judge_all
from seatwork.rows import short
from seatwork.worksheet.entry import Entry

EXAMPLES = {
    "in": ".125, 1/8 or 3.2 mm",
    "mm": "3.2, 3.2 mm or 1/8 in",
    "°": "60",
    "": "12",
}
"""What may be written for a number of each unit; other units take a plain number."""

SHOWN = 40
"""Letters shown of what was typed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What is said after a check.

    Parameters
    ----------
    lines : tuple of str
        The one message.
    tone : {"right", "wrong", ""}
        Whether it is good.
    parts : tuple of dict
        Where there are several parts, what is said beside each: ``said``, ``more`` and ``tone``.
    right : bool
        Whether every part is right.
    focus : str
        Where the focus goes.
    """

    lines: tuple[str, ...] = ()
    tone: str = ""
    parts: tuple[dict[str, str], ...] = ()
    right: bool = False
    focus: str = ""


QUIET = Told()


def practice(
    entry: Entry,
    typed: Sequence[str],
    verdicts: Sequence[Verdict],
    opened: str,
) -> Told:
    """Say what each part is, and show the hint that opened by itself, if one did."""
    said = [
        _said(part, text, verdict, line, entry)
        for part, text, verdict, line in zip(
            entry.question.parts, typed, verdicts, entry.feedback, strict=True
        )
    ]
    good = [verdict.is_right for verdict in verdicts]
    tones = ["right" if right else "wrong" for right in good]
    more = (opened,) if opened else ()
    tone = "right" if all(good) else "wrong"
    focus = "next" if all(good) else f"select {good.index(False)}"
    if len(said) == 1:
        alone = ({"said": "", "more": "", "tone": tone},)
        return Told(lines=(*said[0], *more), tone=tone, parts=alone, right=all(good), focus=focus)
    head = entry.words["form.right_of"].format(right=sum(good), count=len(good))
    parts = tuple(
        {"said": lines[0], "more": " ".join(lines[1:]), "tone": one}
        for lines, one in zip(said, tones, strict=True)
    )
    return Told(lines=(head, *more), tone=tone, parts=parts, right=all(good), focus=focus)


def _said(part: Part, text: str, verdict: Verdict, line: str, entry: Entry) -> tuple[str, ...]:
    """Say of one part what it is; what was typed heads what is said of it."""
    if verdict.is_right or verdict.kind == "blank":
        return (line,)
    words, typed = entry.words, shown(part, text, entry.say)
    if verdict.kind == "unreadable":
        if why := reason(verdict, entry.desk.voice):
            return (words["form.cannot_read_why"].format(typed=typed, why=why),)
        return (words["form.cannot_read"].format(typed=typed, example=entry.say(example(part))),)
    if verdict.kind == "wrong":
        return (words["form.unknown"].format(typed=typed),)
    not_yet = words["marking.matches"].partition("{slip}")[0]
    return words["form.typed"].format(typed=typed), line.removeprefix(not_yet)


def shown(part: Part, text: str, say: Speaker = str) -> str:
    """Return what was typed, as it is shown: an option by its words."""
    if isinstance(part, ChoicePart):
        word = part.chosen(text) or ""
        return say(dict(part.options)[word]) if word else text
    return short(" ".join(text.split()), SHOWN)


def example(part: Part) -> str:
    """Return what may be written for a part."""
    if isinstance(part, NumberPart):
        kind = {"length": "a size", "angle": "an angle"}.get(part.measure.name, "a number")
        return f"{kind} such as {EXAMPLES.get(part.unit, '12')}"
    return "a letter" if isinstance(part, ChoicePart) else "the letters, each once"


def reason(verdict: Verdict, voice: Voice) -> str:
    """Return why an answer cannot be read and what would do; empty where that says no more."""
    why = verdict.why if verdict.read else ""
    if not why or "cannot be read as one number" in why:
        return ""
    said = voice.say(why)
    return "" if said == why and voice.language != "en" else said


def graded(question: Question, typed: Sequence[str], voice: Voice) -> Told:
    """Say that an answer is saved, which parts are empty, and which cannot be read."""
    parts, verdicts = question.parts, judge_all(question, typed)
    several, words = len(parts) > 1, voice.words
    empty = [number for number, text in enumerate(typed) if not text.strip()]
    unclear = [n for n, verdict in enumerate(verdicts) if verdict.kind == "unreadable"]
    lines = [_saved(len(parts), empty, words)]
    for number in unclear:
        name = f"({LETTERS[number]})" if several else words["form.it"]
        such, why = voice.say(example(parts[number])), reason(verdicts[number], voice)
        key = "form.not_read_why" if why else "form.not_read"
        lines.append(words[key].format(part=name, example=such, why=why))
    first = (unclear or empty or [0])[0]
    focus = f"box {first}" if unclear or empty else "next"
    return Told(lines=tuple(lines), tone="", focus=focus)


def _saved(count: int, empty: Sequence[int], words: Mapping[str, str]) -> str:
    if len(empty) == count:
        return words["form.nothing_typed"]
    if not empty:
        return (
            words["form.saved_parts"].format(done=count, count=count)
            if count > 1
            else (words["form.saved_all"])
        )
    letters = [LETTERS[number] for number in empty]
    if len(letters) == 1:
        return words["form.saved_empty"].format(part=letters[0])
    listed = ", ".join(f"({letter})" for letter in letters)
    return words["form.saved_empties"].format(parts=listed)
