"""What a form asks, as plain text: the question, its boxes with their units, its options."""

from collections.abc import Mapping
from typing import Any

from seatwork.marking.languages import NAMES, languages
from seatwork.marking.speaking import Speaker
from seatwork.questions.type.parts import UNIT_WORDS, ChoicePart, NumberPart, Part
from seatwork.worksheet.boxes import LETTERS, label
from seatwork.worksheet.entry import Entry


def asked(entry: Entry) -> dict[str, Any]:
    """Return all that a form shows of a question until new numbers are drawn."""
    words, question = entry.words, entry.question
    parts = question.parts
    lines = entry.say(question.text()).split("\n")
    if len(parts) == 1 and not isinstance(parts[0], ChoicePart):
        lines.append(entry.say(" ".join(filter(None, (parts[0].prompt, parts[0].request)))))
    return {
        "language": entry.desk.voice.language,
        "languages": [[code, NAMES[code]] for code in languages()],
        "heading": entry.name,
        "mode": _mode(entry, words),
        "lines": lines,
        "alt": entry.alt,
        "skip": words["form.skip"],
        "saved": words["form.saved_note"],
        "sure": "" if entry.desk.is_practice else words["form.sure"],
        "parts": [_part(part, number, len(parts), entry.say) for number, part in enumerate(parts)],
    }


def _mode(entry: Entry, words: Mapping[str, str]) -> str:
    """Say what kind of sheet it is; a graded one says what is done with the answers."""
    if entry.desk.is_practice:
        return words["form.practice"]
    costs = bool(entry.desk.plan.hint_cost)
    top = words["form.graded_top_hints" if costs else "form.graded_top"]
    return f"{words['form.graded']}. {top}"


def _part(part: Part, number: int, count: int, say: Speaker) -> dict[str, Any]:
    """Return one box, or one list of options."""
    several = count > 1
    letter = f"({LETTERS[number]})" if several else say(label(number, count))
    if isinstance(part, ChoicePart):
        legend = " ".join(filter(None, (letter if several else "", say(part.prompt)))) or letter
        options = [[word, say(shown)] for word, shown in part.options]
        return {"label": letter, "legend": legend, "options": options, "prompt": "", "unit": ""}
    unit = part.unit if isinstance(part, NumberPart) else ""
    spoken = say("in {unit}").format(unit=say(UNIT_WORDS.get(unit, unit))) if unit else ""
    told = say(" ".join(filter(None, (part.prompt, part.request))))
    prompt = f"{letter} {told}".strip() if several else ""
    shown = {"label": letter, "prompt": prompt, "options": [], "legend": ""}
    return shown | {"unit": unit, "unit_words": spoken and f" {spoken}"}
