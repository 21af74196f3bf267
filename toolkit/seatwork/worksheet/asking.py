"""What a form asks, as plain text: the question, its boxes with their units, its options."""

from collections.abc import Mapping
from typing import Any

from seatwork.questions.type.parts import UNIT_WORDS, ChoicePart, NumberPart, Part
from seatwork.shop import wording
from seatwork.worksheet.boxes import LETTERS, label
from seatwork.worksheet.entry import Entry


def asked(entry: Entry) -> dict[str, Any]:
    """Return all that a form shows of a question until new numbers are drawn."""
    words, question = wording(), entry.question
    parts = question.parts
    lines = question.text().split("\n")
    if len(parts) == 1 and not isinstance(parts[0], ChoicePart):
        lines.append(" ".join(filter(None, (parts[0].prompt, parts[0].request))))
    return {
        "heading": entry.name,
        "mode": _mode(entry, words),
        "lines": lines,
        "alt": entry.alt,
        "skip": words["form.skip"],
        "saved": words["form.saved_note"],
        "sure": "" if entry.desk.is_practice else words["form.sure"],
        "parts": [_part(part, number, len(parts)) for number, part in enumerate(parts)],
    }


def _mode(entry: Entry, words: Mapping[str, str]) -> str:
    """Say what kind of sheet it is; a graded one says what is done with the answers."""
    if entry.desk.is_practice:
        return words["form.practice"]
    costs = bool(entry.desk.plan.hint_cost)
    top = words["form.graded_top_hints" if costs else "form.graded_top"]
    return f"{words['form.graded']}. {top}"


def _part(part: Part, number: int, count: int) -> dict[str, Any]:
    """Return one box, or one list of options."""
    several = count > 1
    letter = f"({LETTERS[number]})" if several else label(number, count)
    if isinstance(part, ChoicePart):
        legend = " ".join(filter(None, (letter if several else "", part.prompt))) or letter
        options = [list(option) for option in part.options]
        return {"label": letter, "legend": legend, "options": options, "prompt": "", "unit": ""}
    unit = part.unit if isinstance(part, NumberPart) else ""
    spoken = f" in {UNIT_WORDS.get(unit, unit)}" if unit else ""
    prompt = " ".join(filter(None, (letter, part.prompt, part.request))) if several else ""
    shown = {"label": letter, "prompt": prompt, "options": [], "legend": ""}
    return shown | {"unit": unit, "unit_words": spoken}
