"""Numbers behind a metric thread: its pitch, or its depth and its hole's."""

import re

from seatwork.notes.callout import NoteError
from seatwork.notes.parsing import Number, Phrase, Quantity

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
            _join_pair(text, number)
            deep = phrases[phrases.index(number) + 1 :][:1]
            if not (deep and deep[0].kind == "DEEP"):
                number.kind = _thread_number(text, thread, number)
    return phrases


def _join_pair(text: str, number: Phrase) -> None:
    """Take ``20 / 26`` and ``12,5/16`` behind a thread for two depths, not for two limits."""
    quantity = number.quantity
    if quantity is None or quantity.tolerance != "limits":
        return
    first, second = quantity.number, quantity.others[0]
    if "/" in text[first.end : second.start]:
        pair = Number(f"{first.text}/{second.text}", second.unit, first.start, second.end)
        number.quantity = Quantity(pair)


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
