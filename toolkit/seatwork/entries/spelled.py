"""Spellings that mean one thing only: signs, units in Spanish, and words beside a number."""

import re
from typing import NamedTuple

SIGNS = str.maketrans({"⁄": "/", "∕": "/", "’": "'", "′": "'", "\u00a0": " "})
DOUBLED = re.compile(r"(?<=[\d.½¼¾⅛⅜⅝⅞]) ?''$")
SLASH = re.compile(r"(?<=\d) ?/ ?(?=\d)")
ENDING = re.compile(r"(?<=[\w\"°.½¼¾⅛⅜⅝⅞])[ ]*[,;]$")

UNITS = {
    "m.m.": "mm",
    "m.m": "mm",
    "pulgada": "in",
    "pulgadas": "in",
    "pulg": "in",
    "pulg.": "in",
    "milímetro": "mm",
    "milímetros": "mm",
    "milimetro": "mm",
    "milimetros": "mm",
    "milésimas de pulgada": "thou",
    "milesimas de pulgada": "thou",
    "grado": "deg",
    "grados": "deg",
    "r.p.m.": "rpm",
    "r.p.m": "rpm",
    "vueltas/min": "rpm",
    "vueltas por minuto": "rpm",
    "pulg/vuelta": "in/rev",
    "mm/vuelta": "mm/rev",
    "pies/min": "ft/min",
    "segundo": "s",
    "segundos": "s",
    "seg": "s",
    "seg.": "s",
}
"""Units as people write them beside those that the reader of shop text knows."""
IN_INCHES = {"milésima": "thou", "milésimas": "thou", "milesima": "thou", "milesimas": "thou"}
"""Thousandths of an inch where inches are asked for; of what, where millimeters are?"""
UNIT = re.compile(r"(?P<number>.*[\d½¼¾⅛⅜⅝⅞]\.?) ?(?P<unit>[^\W\d_][^\d]*)", re.DOTALL)

SAID = {
    "proud": ("proud", "proud of the face", "sobresale", "saliente"),
    "below": (
        *("below", "below flush", "below the face", "hundida", "hundido"),
        *("bajo la cara", "por debajo", "debajo"),
    ),
    "deep": ("deep", "depth", "de profundidad", "de hondo", "profundidad"),
    "wide": ("wide", "de ancho"),
}
"""Words beside a number, by what they say of it."""
BEFORE = {"proud": "proud", "sobresale": "proud", "depth": "deep", "profundidad": "deep"}
"""Those that stand before it too: "below .012" may mean less than that, and stays asked."""
AFTER = {word: said for said, words in SAID.items() for word in words}


class Spelled(NamedTuple):
    """A number as the reader of shop text knows it, and the word beside it."""

    text: str
    said: str


def spelled(text: str, system: str, *, is_length: bool) -> Spelled:
    """Take the word from beside a number, and write its signs and unit as the reader knows them.

    Parameters
    ----------
    text : str
        What was typed.
    system : {"inch", "metric"}
        Unit system the answer is asked in.
    is_length : bool
        Whether a length is asked for; only beside a length stand words such as proud.

    Examples
    --------
    >>> spelled("0.12 pulg por debajo", "inch", is_length=True)
    Spelled(text='0.12 in', said='below')
    """
    plain = " ".join(text.translate(SIGNS).split(" ")).strip(" ")
    plain = ENDING.sub("", plain.removeprefix("=").lstrip(" "))
    plain, said = _word_beside(plain) if is_length else (plain, "")
    plain = SLASH.sub("/", DOUBLED.sub('"', plain))
    found = UNIT.fullmatch(plain)
    known = UNITS | (IN_INCHES if system == "inch" else {})
    if found and (unit := known.get(found["unit"].lower())):
        plain = f"{found['number']} {unit}"
    return Spelled(plain, said)


def _word_beside(text: str) -> tuple[str, str]:
    """Return a number without the word before or after it, and what the word says."""
    first, _, rest = text.partition(" ")
    if rest and first.lower() in BEFORE:
        return rest, BEFORE[first.lower()]
    for word in sorted(AFTER, key=len, reverse=True):
        if text.lower().endswith(f" {word}"):
            return text[: -len(word)].rstrip(" "), AFTER[word]
    return text, ""
