"""Names that become parts of file names: learner codes, sheet names, forms."""

import re

from seatwork.errors import SeatworkError

PRACTICE_LEARNER = "L00"
LEARNER = re.compile(r"[A-Z]\d{2,6}", re.ASCII)
NAME = re.compile(r"[a-z][a-z0-9_-]{0,39}", re.ASCII)
QUESTION = re.compile(r"[a-z]{1,8}\d{1,3}", re.ASCII)
MOST_FORMS = 99


def learner_code(text: object) -> str:
    """Return a learner code: a letter and 2 to 6 digits.

    Raises
    ------
    SeatworkError
        For anything else.
    """
    if isinstance(text, str) and LEARNER.fullmatch(text):
        return text
    raise SeatworkError(_short(text), "that is no learner code", "write one such as L07")


def sheet_name(text: object) -> str:
    """Return the name of a sheet: small letters, digits, - and _.

    Raises
    ------
    SeatworkError
        For anything else.
    """
    if isinstance(text, str) and NAME.fullmatch(text):
        return text
    raise SeatworkError(_short(text), "that is no name of a sheet", "write one such as cones")


def form_number(value: object) -> int:
    """Return the number of a form, 1 to 99.

    Raises
    ------
    SeatworkError
        For anything else.
    """
    if isinstance(value, int) and not isinstance(value, bool) and 1 <= value <= MOST_FORMS:
        return value
    raise SeatworkError(_short(value), "that is no form", f"write a number from 1 to {MOST_FORMS}")


def _short(value: object) -> str:
    return ascii(value)[:40] if not isinstance(value, str) or len(value) > 40 else ascii(value)
