"""Numbers as tables print them: ``.0470``, ``7/16``, ``1-3/16``."""

import re
from fractions import Fraction

from seatwork.errors import SeatworkError

PRINTED = re.compile(r"(?:(\d+)[ -])?(\d+)/(\d+)|[+-]?(?:\d+\.?\d*|\.\d+)", re.ASCII)


def number(text: str) -> float | None:
    """Read one printed number; a blank cell is None.

    Parameters
    ----------
    text : str
        A decimal with or without leading zero, or a fraction.

    Returns
    -------
    float or None
        In the unit of its column.

    Raises
    ------
    SeatworkError
        If the cell holds anything else.

    Examples
    --------
    >>> number(".0470"), number("1-3/16"), number("")
    (0.047, 1.1875, None)
    """
    text = text.strip()
    if not text:
        return None
    printed = PRINTED.fullmatch(text)
    if not printed or printed[3] == "0":
        raise SeatworkError(
            text, "that is no number as tables print them", "write .0470, 7/16 or 1-3/16"
        )
    if "/" in text:
        return float(int(printed[1] or 0) + Fraction(int(printed[2]), int(printed[3])))
    return float(text)
