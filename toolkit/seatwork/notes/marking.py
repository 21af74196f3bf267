"""First pass over the phrases: marks that stand before or behind a size join that size."""

import re

from seatwork.notes.callout import NoteError
from seatwork.notes.parsing import Phrase

SIZES = ("plain", "diameter", "depth", "drill_name", "c_chamfer")
BREAKS = ("SEPARATOR", "NEWLINE")
PITCHES: tuple[float, ...] = (
    0.2,
    0.25,
    0.3,
    0.35,
    0.4,
    0.45,
    0.5,
    0.6,
    0.7,
    0.75,
    0.8,
    1.0,
    1.25,
    1.5,
    1.75,
)
PITCHES += (2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0, 5.5, 6.0)  # mm, ISO 261
STEEPEST = 0.25  # pitch to diameter: M1 × 0.25 is the coarsest there is


def marked(text: str, phrases: list[Phrase]) -> list[Phrase]:
    """Return the phrases with DIA, DEEP, INCL and parentheses joined to their sizes.

    Parameters
    ----------
    text : str
        The note, for errors.
    phrases : list of Phrase
        As parsed; those that are sizes are changed.

    Raises
    ------
    NoteError
        At a mark with no size on either side.
    """
    kept: list[Phrase] = []
    for index, phrase in enumerate(phrases):
        if phrase.kind in ("DIA", "DEEP"):
            _join(text, phrase, kept, phrases[index + 1 : index + 4])
        elif phrase.kind == "INCLUDED":
            _mark_angle(text, phrase, kept)
        elif phrase.kind == "RIGHT":
            _close(kept)
        elif phrase.kind != "FILLER" and phrase.kind != "TO_LIMIT":
            kept.append(phrase)
    return [phrase for phrase in kept if phrase.kind != "LEFT"]


def with_thread_numbers(text: str, phrases: list[Phrase]) -> list[Phrase]:
    """Return the phrases with what stands behind ``M10 ×`` named: pitch or pair of depths.

    Parameters
    ----------
    text : str
        The note, for errors.
    phrases : list of Phrase
        As parsed; a number behind a metric thread is changed.

    Raises
    ------
    NoteError
        Where it can be either a pitch or a depth.
    """
    for thread, by, number in zip(phrases, phrases[1:], phrases[2:], strict=False):
        is_metric = thread.kind == "thread" and re.fullmatch(r"M[^-]+", thread.text)
        if is_metric and by.kind == "BY" and number.kind == "plain" and number.quantity:
            deep = phrases[phrases.index(number) + 1 :][:1]
            if not (deep and deep[0].kind == "DEEP"):
                number.kind = _thread_number(text, thread, number)
    return phrases


def _thread_number(text: str, thread: Phrase, number: Phrase) -> str:
    """Return "pitch", "depth_pair" or "plain" for a number behind a metric thread."""
    quantity = number.quantity
    assert quantity is not None
    diameter = float(thread.text[1:].replace(",", "."))
    digits = quantity.number.text.replace(",", ".")
    pair = re.fullmatch(r"(\d+(?:\.\d+)?)/(\d+(?:\.\d+)?)", digits)
    if pair:
        return "depth_pair" if float(pair[1]) >= diameter / 2 else "plain"
    if quantity.number.unit or not re.fullmatch(r"\d*\.?\d+", digits):
        return "plain"
    value = float(digits)
    if value > STEEPEST * diameter:
        return "plain"
    if value in PITCHES and not (digits.startswith(".") and diameter >= 5):
        return "pitch"
    raise NoteError(
        text,
        start=number.start,
        end=number.end,
        fault="a pitch or a depth?",
        remedy="write the depth as ↧ or DP, the pitch as in M8 X 1.25",
    )


def _join(text: str, mark: Phrase, before: list[Phrase], after: list[Phrase]) -> None:
    kind = "diameter" if mark.kind == "DIA" else "depth"
    follows = [phrase for phrase in after[:2] if phrase.kind != "FILLER"]
    last = before[-1] if before else None
    if last and _open(last, kind) and not _belongs_ahead(mark, before, after):
        last.kind = kind
        last.end = mark.end
    elif follows and _open(follows[0], kind):
        follows[0].kind = kind
        follows[0].start = mark.start
    else:
        raise NoteError(
            text,
            start=mark.start,
            end=mark.end,
            fault=f"no size stands by this {kind}",
            remedy=f"write the {kind}, such as .25 {mark.text}",
        )


def _open(phrase: Phrase, kind: str) -> bool:
    """Tell whether a phrase is a length that this mark can still say something about."""
    is_length = phrase.quantity is not None and not phrase.quantity.is_angle
    return (phrase.kind == "plain" and is_length) or phrase.kind == kind == "diameter"


def _belongs_ahead(mark: Phrase, before: list[Phrase], after: list[Phrase]) -> bool:
    """Tell whether DEPTH in ``C'BORE .438 DEPTH .25`` speaks for the size behind it."""
    if mark.kind != "DEEP" or not after or not _open(after[0], "depth"):
        return False
    closed = len(after) < 2 or after[1].kind not in ("DEEP", "DIA")
    behind_x = len(before) > 1 and before[-2].kind == "BY"
    return closed and not behind_x


def _mark_angle(text: str, mark: Phrase, before: list[Phrase]) -> None:
    last = before[-1] if before else None
    if last is None or last.quantity is None or not last.quantity.is_angle:
        raise NoteError(
            text,
            start=mark.start,
            end=mark.end,
            fault="no angle stands before INCL",
            remedy="write the angle, such as 82° INCL",
        )
    last.marks.add("included")


def _close(before: list[Phrase]) -> None:
    """Make ``(.250)`` a reference size; other parentheses only hold their words together."""
    if len(before) > 1 and before[-2].kind == "LEFT" and before[-1].quantity:
        before[-1].marks.add("reference")
