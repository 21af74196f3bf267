"""A word typed beside a number: whether it is what was asked for, and what was chosen before."""

import re
from collections.abc import Sequence

from seatwork.entries.typed import read
from seatwork.errors import SeatworkError
from seatwork.questions.type.parts import ChoicePart, NumberPart
from seatwork.questions.type.question import Question

ASKED = {
    "proud": r"\bproud\b",
    "below": r"\bbelow\b",
    "deep": r"\b(deep|deeper|depth)\b",
    "wide": r"\b(wide|wider|diameter|across|width)\b",
}
"""What the asking sentence says where a word may stand beside the number."""
SIDES = {"proud", "below"}
SENTENCE = re.compile(r"[^.?!]*\?")


def said_otherwise(question: Question, number: int, typed: Sequence[str]) -> str:
    """Say how the word beside a number goes against the question; empty if it does not.

    Parameters
    ----------
    question : Question
        What is asked.
    number : int
        Which part of it, from 0.
    typed : sequence of str
        What was typed for each part.
    """
    part = question.parts[number]
    said = _said(part, typed[number]) if isinstance(part, NumberPart) else ""
    if not said:
        return ""
    assert isinstance(part, NumberPart)
    chosen = _sides_chosen(question, typed) if said in SIDES else None
    if chosen is not None:
        other = chosen and chosen != said
        return f"you chose {chosen} and wrote {said} here; say the same in both" if other else ""
    asking = " ".join([*SENTENCE.findall(question.text())[-1:], part.prompt])
    if re.search(ASKED[said], asking, re.IGNORECASE):
        return ""
    return f"the question does not ask how far {said}; write the number alone"


def _said(part: NumberPart, text: str) -> str:
    try:
        return read(text, part.measure, part.system).said
    except SeatworkError:
        return ""


def _sides_chosen(question: Question, typed: Sequence[str]) -> str | None:
    """Return the side chosen in another part; None if none asks for it, or it is left empty."""
    for part, text in zip(question.parts, typed, strict=False):
        if isinstance(part, ChoicePart) and {word for word, _ in part.options} >= SIDES:
            return part.chosen(text) or ""
    return None
