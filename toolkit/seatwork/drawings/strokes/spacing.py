"""How wide the letters of the drawings' font are, and how far apart two of them stand.

A page that draws without the font puts a table in place of this module.
"""

from functools import cache

from matplotlib.font_manager import FontProperties, findfont, get_font
from matplotlib.ft2font import LoadFlags

from seatwork.drawings.strokes.style import FONT


@cache
def alone(letter: str) -> float:
    """Give the width of a letter, or of a blank, at type size 1."""
    return _laid(f"{letter}.") - _laid(".")


@cache
def closer(pair: tuple[str, str]) -> float:
    """Give how much farther apart two letters stand than their widths say, at type size 1.

    Kept for each pair, so that a number never seen before is not laid out anew.
    """
    first, second = pair
    return _laid(f"{first}{second}.") - _laid(f"{second}.") - alone(first)


@cache
def characters() -> frozenset[int]:
    """Give the characters that the font has, by their numbers."""
    return frozenset(get_font(_font_file()).get_charmap())


def _laid(text: str) -> float:
    """Give the width of a text laid out whole, at type size 1; blanks at its end do not count."""
    font = get_font(_font_file())
    font.set_size(100.0, 72)
    font.set_text(text, 0.0, flags=LoadFlags.NO_HINTING)
    return float(font.get_width_height()[0]) / 64.0 / 100.0


@cache
def _font_file() -> str:
    return findfont(FontProperties(family=FONT))
