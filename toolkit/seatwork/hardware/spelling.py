"""Text as typed or spoken at the counter, made even before it is read."""

import re
from collections.abc import Iterator
from contextlib import contextmanager

from seatwork.errors import SeatworkError

LONGEST = 80  # characters; no screw, drill or washer has a longer name

MARKS = str.maketrans(
    {
        **dict.fromkeys("×✕*", "x"),
        **dict.fromkeys("″”“", '"'),
        **dict.fromkeys("–—−‐‑", "-"),
        "⁄": "/",
        "º": "°",
        "’": "'",
        "\u00a0": " ",
        "\t": " ",
        "\n": " ",
    }
)
VULGAR = {
    **{"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"},
}


def tidy(text: object, wanted: str) -> str:
    """Return `text` in lower case with plain marks and single spaces.

    Parameters
    ----------
    text : str
        As typed.
    wanted : str
        What would do, for the sentence of the error.

    Raises
    ------
    SeatworkError
        If it is no text, is empty, too long, or holds what does not print.

    Examples
    --------
    >>> tidy(" M6×1  SHCS ", "a screw")
    'm6x1 shcs'
    """
    if not isinstance(text, str):
        raise SeatworkError(type(text).__name__, "that is not text", f"write {wanted}")
    if len(text) > LONGEST:
        raise SeatworkError(text[:20] + "…", "that is too long to be a name", f"write {wanted}")
    plain = text.translate(MARKS)
    for sign, fraction in VULGAR.items():
        plain = re.sub(rf"(?<=\d)-?{sign}", f"-{fraction}", plain).replace(sign, fraction)
    if not plain.isprintable():
        raise SeatworkError(ascii(text), "it holds characters that do not print", f"write {wanted}")
    if any(sign.isdigit() and not sign.isascii() for sign in plain):
        raise SeatworkError(text, "it holds figures that are not 0 to 9", f"write {wanted}")
    plain = re.sub(r" +", " ", plain).strip().lower()
    if not plain:
        raise SeatworkError("nothing", "no name was typed", f"write {wanted}")
    return plain


@contextmanager
def as_typed(text: object) -> Iterator[None]:
    """Let every error raised inside show the text as it was typed."""
    try:
        yield
    except SeatworkError as error:
        if not isinstance(text, str) or len(text) > LONGEST or not text.strip().isprintable():
            raise
        if not text.strip():
            raise
        raise error.of(text.strip()) from error


def size_name(text: str) -> str:
    """Write a screw or drill size the way the tables do: ``no. 10`` is ``#10``.

    Examples
    --------
    >>> size_name("no. 10"), size_name("1 1/4"), size_name("m6")
    ('#10', '1-1/4', 'M6')
    """
    plain = re.sub(r"^(?:no\.?|number|nr\.?) ?(?=\d)", "#", text.strip())
    plain = re.sub(r"^# (?=\d)", "#", plain)
    plain = re.sub(r"(?<=\d) ?[ -] ?(?=\d+/\d)", "-", plain)
    plain = re.sub(r'(?<=\d) ?(?:"|in\.?|inch)$', "", plain)
    return plain.upper() if re.fullmatch(r"m ?\d.*|[a-z]", plain) else plain
