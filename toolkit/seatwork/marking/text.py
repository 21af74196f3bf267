"""Verdicts in plain words."""

from collections.abc import Callable, Mapping

from seatwork.entries.measures import Measure
from seatwork.questions.type.parts import ChoicePart, NumberPart, Part
from seatwork.questions.type.slips import Slip
from seatwork.questions.type.spoiled import OTHER
from seatwork.questions.type.verdicts import Verdict


def verdict_text(
    verdict: Verdict, part: Part, words: Mapping[str, str], translate: Callable[[str], str] = str
) -> str:
    """Return a verdict as one or two sentences.

    Parameters
    ----------
    verdict : Verdict
        What was found.
    part : NumberPart, ChoicePart or OrderPart
        What was asked.
    words : mapping
        The wording in force, see ``seatwork.shop.house.wording``.
    translate : callable
        Says a slip's sentence or an option in the reader's language, see ``speaking.speaker``.
    """
    kind = verdict.kind
    if kind == "right":
        if isinstance(part, NumberPart):
            accepted = band(part, translate)
            return words["marking.right"].format(answer=right_answer(part), band=accepted)
        return words["marking.right_word"].format(answer=right_answer(part, translate))
    if kind == "own step":
        return words["marking.own_step"]
    if kind == "unreadable":
        why = translate(verdict.why)
        fault = f"{verdict.read}: {why}" if verdict.read else why
        return words["marking.unreadable"].format(fault=fault)
    if kind == "slip":
        slip = verdict.slips[0]
        text = words["marking.matches"].format(slip=slip.told(translate))
        return text + _twins(slip, part, words, translate)
    if kind in ("several slips", "asks back"):
        name = "marking.several" if kind == "several slips" else "marking.asks_back"
        told = (slip.told(translate) for slip in verdict.slips)
        return words[name].format(slips=f" {words['marking.or']} ".join(told))
    if kind == "other unit" and isinstance(part, NumberPart):
        other = part.measure.unit[OTHER[part.system]]
        return words["marking.other_unit"].format(typed=other, asked=part.unit)
    if kind == "coarse" and isinstance(part, NumberPart):
        return words["marking.coarse"].format(step=part.measure.write(part.step, part.system))
    return words[{"blank": "marking.not_answered"}.get(kind, "marking.wrong")]


def _twins(
    slip: Slip, part: Part, words: Mapping[str, str], translate: Callable[[str], str]
) -> str:
    """Name what else always gives that number; the drawing tells them apart."""
    twins = part.twins(slip) if isinstance(part, NumberPart) else ()
    return "".join(" " + words["marking.twin"].format(slip=twin.told(translate)) for twin in twins)


def right_answer(part: Part, translate: Callable[[str], str] = str) -> str:
    """Return the right answer as it is written, an option in the reader's language."""
    if isinstance(part, NumberPart):
        return _written(part.measure, part, str(part.rounded))
    if isinstance(part, ChoicePart):
        return translate(dict(part.options)[part.right])
    return part.right.upper()


def band(part: Part, translate: Callable[[str], str] = str) -> str:
    """Return the numbers accepted, both ends included; empty if the answer is no number."""
    if not isinstance(part, NumberPart) or not part.tolerance:
        return ""
    low, high = part.band
    greatest = _written(part.measure, part, f"{high:f}")
    return translate("{low} to {high}").format(low=f"{low:f}", high=greatest)


def _written(measure: Measure, part: NumberPart, amount: str) -> str:
    unit = measure.unit[part.system]
    return f"{amount}{unit}" if unit == "°" else f"{amount} {unit}".rstrip()
