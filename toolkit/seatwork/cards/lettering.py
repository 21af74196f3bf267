"""Lettering on paper: how wide words come out, and where lines break."""

import re
from bisect import bisect_right
from contextlib import AbstractContextManager
from functools import lru_cache
from typing import cast

import matplotlib
import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.font_manager import FontProperties
from matplotlib.patches import PathPatch
from matplotlib.path import Path
from matplotlib.text import Text
from matplotlib.textpath import TextToPath

from seatwork.drawings.strokes.style import FONT
from seatwork.drawings.strokes.symbols import DRAWN, GAP, SPOTFACE, legible

UNITS = 100.0
"""Page units in an inch."""

SIZE = 12.0
"""Type on paper, unless something is to be read at a desk alone [pt]."""

LEADING = 1.22
SIGNS = (SPOTFACE, "⌵", "⌴")
"""Signs the font lacks; they are drawn, the spotface with its letters inside."""

RUN = re.compile(f"({'|'.join(SIGNS)})")

WRITTEN = {
    **{letter: f"({chr(ord(letter) - ord('Ⓐ') + ord('A'))})" for letter in "ⒻⓁⓂⓅⓈⓉⓊ"},
    **{"⌖": "⊕", "⟂": "⊥", "⏊": "⊥", "⌭": "cylindricity", "⌯": "symmetry"},
    **{"⌰": "total runout", "⌱": "total runout", "⌒": "line profile", "⌓": "surface profile"},
}
"""Signs of frames that the font lacks, as they are written without them (ASME Y14.5)."""

AS_WRITTEN = str.maketrans(WRITTEN)


def as_on_paper() -> AbstractContextManager[None]:
    """Draw letters as wide on a screen as on paper.

    Notes
    -----
    Fitted to whole pixels, a long line runs past its margin by up to a fifth of an inch.
    """
    return matplotlib.rc_context({"text.hinting": "none"})


def em(size: float) -> float:
    """Return a type size [pt] in page units."""
    return size / 72.0 * UNITS


@lru_cache(maxsize=2_000)
def printable(words: str) -> str:
    """Return words with what the font lacks written out, or a box in its place.

    Examples
    --------
    >>> printable("⌖ ⌀.014 Ⓜ A")
    '⊕ ⌀.014 (M) A'
    """
    return words if words.isascii() else legible(words.translate(AS_WRITTEN))


@lru_cache(maxsize=20_000)
def word_width(word: str, bold: bool = False) -> float:
    """Return the width of a word [-], as a share of its type size."""
    if word in SIGNS:
        return float(DRAWN[word]().get_extents().x1) + 2 * GAP
    drawn = [sign for sign in SIGNS if sign in word]
    if drawn:
        before, sign, after = word.partition(drawn[0])
        return sum(word_width(part, bold) for part in (before, sign, after) if part)
    font = FontProperties(family=FONT, size=100.0, weight="bold" if bold else "normal")
    width, _, _ = TextToPath().get_text_width_height_descent(word, font, ismath=False)
    return float(width) / 100.0


def width(line: str, size: float = SIZE, *, bold: bool = False) -> float:
    """Return the width of a line [in].

    Parameters
    ----------
    line : str
        What it says.
    size : float
        Type size [pt].
    bold : bool
        Whether it is bold.
    """
    return word_width(line, bold) * size / 72.0


def broken(words: str, room: float, size: float = SIZE, *, bold: bool = False) -> list[str]:
    """Break a paragraph into lines that fit.

    Parameters
    ----------
    words : str
        The paragraph; line breaks in it are kept.
    room : float
        Width there is [in].
    size : float
        Type size [pt].
    bold : bool
        Whether it is bold.

    Returns
    -------
    list of str
        At least one line, an empty one for an empty paragraph.
    """
    most = room * 72.0 / size
    lines: list[str] = []
    for paragraph in printable(words).split("\n"):
        lines += _fill(paragraph.split(), most, bold)
    return lines


def _fill(words: list[str], most: float, bold: bool) -> list[str]:
    lines, line, wide = [], "", 0.0
    space = word_width("a a", bold) - word_width("aa", bold)
    for word in (piece for whole in words for piece in _pieces(whole, most, bold)):
        long = word_width(word, bold)
        if line and wide + space + long > most:
            lines.append(line)
            line, wide = "", 0.0
        line, wide = (f"{line} {word}", wide + space + long) if line else (word, long)
    return [*lines, line]


def _pieces(word: str, most: float, bold: bool) -> list[str]:
    """Cut a word that is wider than a whole line."""
    pieces = []
    while word_width(word, bold) > most:
        fitting = bisect_right(range(1, len(word)), most, key=lambda n: _wide(word, n, bold))
        cut = max(1, fitting)
        pieces.append(word[:cut])
        word = word[cut:]
    return [*pieces, word] if word else pieces


def _wide(word: str, count: int, bold: bool) -> float:
    return word_width(word[:count], bold)


def write(
    axes: Axes, x: float, y: float, line: str, *, size: float = SIZE, bold: bool = False
) -> None:
    """Set a line with its baseline starting at a spot, hole signs and all.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    x, y : float
        Where the baseline starts [page units].
    line : str
        What to set.
    size : float
        Type size [pt].
    bold : bool
        Whether it is bold.
    """
    for run in runs(printable(line)):
        if run in SIGNS:
            outline = DRAWN[run]()
            corners = np.asarray(outline.vertices, dtype=float) * em(size)
            shape = Path(corners + np.array([x + GAP * em(size), y]), outline.codes)
            axes.add_artist(PathPatch(shape, facecolor="black", linewidth=0, zorder=8.0))
        elif run.strip():
            lead = len(run) - len(run.lstrip())
            at = x + word_width(" ", bold) * em(size) * lead
            words = Text(at, y, run.strip(), fontproperties=_type(size, bold), parse_math=False)
            words.set(zorder=8.0, transform=axes.transData)
            # not axes.text, which clips each line anew and takes four times as long
            cast(Figure, axes.figure).add_artist(words)
        x += word_width(run, bold) * em(size)


@lru_cache(maxsize=50)
def _type(size: float, bold: bool) -> FontProperties:
    return FontProperties(family=FONT, size=size, weight="bold" if bold else "normal")


def runs(line: str) -> list[str]:
    """Part a line at the signs that are drawn.

    Examples
    --------
    >>> runs("#7 ⌵ 82°")
    ['#7 ', '⌵', ' 82°']
    """
    return [run for run in RUN.split(line) if run]
