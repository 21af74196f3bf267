"""Answers that cannot be read: never a zero, but a person's matter, with what was read and why."""

import re

from seatwork.errors import plainly
from seatwork.questions import Verdict

MONTHS = "jan|feb|mar|m[aä]r|apr|ma[yi]|jun|jul|aug|sep|o[ck]t|nov|de[cz]|ene|abr|ago|dic"
DATE = re.compile(
    rf"(\d{{1,4}}[-./ ]+({MONTHS})[a-z]*\.?|({MONTHS})[a-z]*\.?[-./ ]+\d{{1,4}})([-./ ]+\d{{1,4}})?"
    r"|\d{1,4}([-./])\d{1,2}\5\d{1,4}",
    re.IGNORECASE,
)
LETTERS = re.compile(r"[\dOoIl]*[.,/]?[\dOoIl]+\s?(in|mm|\"|°|deg)?")
SERIAL = re.compile(r"[34]\d{4}|5[0-4]\d{3}")
"""A day from 1982 to 2050 as a spreadsheet counts days."""
DATE_GUESS = "a spreadsheet may have made a date of a fraction such as 5/8"
LETTER_GUESS = "a letter O, I or l may stand for a digit"


def doubt(text: str, verdict: Verdict) -> str:
    """Say why a person must read an answer; empty if none must.

    Parameters
    ----------
    text : str
        The answer as typed.
    verdict : Verdict
        What was found of it.
    """
    if verdict.is_right or verdict.kind == "blank":
        return ""
    shown = f"“{plainly(text)}”"
    if not text.strip().isprintable():
        return f"{shown} holds characters that cannot be seen"
    if verdict.kind == "wrong" and SERIAL.fullmatch(text.strip()):
        return f"{shown} may be no number: {DATE_GUESS}"
    if verdict.kind != "unreadable":
        return ""
    why = _why(text.strip(), verdict)
    if why.startswith("that cannot be read"):
        return f"{shown} {why.removeprefix('that ')}"
    return f"{shown} cannot be read: {why}"


def _why(text: str, verdict: Verdict) -> str:
    if DATE.fullmatch(text):
        return DATE_GUESS
    if LETTERS.fullmatch(text) and any(letter in text for letter in "OoIl"):
        return LETTER_GUESS
    sentence = verdict.fault.removeprefix(f"{text}: ").partition(";")[0]
    return plainly(sentence).rstrip(".").replace("That is", "that is")
