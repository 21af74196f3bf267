"""Characters as people type them, one for one turned into those the grammar knows.

Each character stays at its place, so that an error can point into the text as typed.
"""

import re
import string

DIAMETER, COUNTERBORE, COUNTERSINK, DEPTH = "⌀", "⌴", "⌵", "↧"

ALIASES = {
    **dict.fromkeys("Øø∅φΦϕ", DIAMETER),
    **dict.fromkeys("⊔⎵⨆", COUNTERBORE),
    **dict.fromkeys("∨⋁˅", COUNTERSINK),
    **dict.fromkeys("↓⤓⭳", DEPTH),
    **dict.fromkeys("×✕✖⨯*", "X"),
    **dict.fromkeys("’‘`´′", "'"),
    **dict.fromkeys("”“″", '"'),
    **dict.fromkeys("−–—‐‑", "-"),
    **dict.fromkeys("º˚", "°"),
    **dict.fromkeys("\t\r\u00a0\u1680\u202f\u205f\u3000", " "),
    **dict.fromkeys(map(chr, range(0x2000, 0x200B)), " "),  # blanks of every width
    **dict.fromkeys("\u2028\u2029\x0b\x0c\x85", "\n"),
    **dict.fromkeys("\x1c\x1d\x1e\x1f", "\ufffd"),  # no keyboard has them; else taken as blanks
    **dict.fromkeys("\ue000\ue001", "\ufffd"),  # signs of our own, see apart.py
    "¦": "|",
    "⁄": "/",
}
TABLE = str.maketrans(
    ALIASES | dict(zip(string.ascii_lowercase, string.ascii_uppercase, strict=True))
)

ZERO = r"(?:0?[.,]0+|0)"
UNSIGNED_ZERO = re.compile(
    rf"(?<=[\d.,])(?:(?P<over> *\+ *\d*[.,]?\d+) (?={ZERO}(?![\d.,/-]))"
    rf"|(?P<zero> +{ZERO}) (?=- *[.,\d]))"
)
"""A deviation beside a zero without sign, ``12 +0.1 0`` and ``12 0 -0.1``: the blank between."""


def plain(text: str) -> str:
    """Return the note in capitals and in the grammar's own characters, place for place.

    A zero without a sign beside a deviation is joined to it by a slash, as if typed so.

    Examples
    --------
    >>> plain("4x Ø.201 thru")
    '4X ⌀.201 THRU'
    """
    return UNSIGNED_ZERO.sub(r"\g<over>\g<zero>/", text.translate(TABLE))
