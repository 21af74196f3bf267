"""The signs of print notes as outlines: ⌵ ⌴ ↧ and, from the font, all the rest.

The default font has no ⌵ and no ⌴, and a missing sign on a print is a wrong print. So the
three signs are drawn here, to the height of a capital letter, and set in line with the font's own
outlines of every other character.
"""

from functools import cache
from itertools import pairwise

import numpy as np
from matplotlib.font_manager import FontProperties
from matplotlib.path import Path
from matplotlib.textpath import TextPath, TextToPath

from seatwork.drawings.style import FONT, POINTS

CAPITAL = 0.73
"""Height of a capital letter as a share of the type size."""

STROKE = 0.075
"""Thickness of a sign's strokes as a share of the type size."""

GAP = 0.13
"""Space on each side of a sign as a share of the type size."""


def _polygon(*corners: tuple[float, float]) -> Path:
    points = np.array([*corners, corners[0]], dtype=float)
    return Path(points, closed=True)


def _stroke(*points: tuple[float, float]) -> Path:
    """Thicken a line through `points` to STROKE, square at its ends, mitred at its corners."""
    line = np.array(points, dtype=float)
    steps = np.diff(line, axis=0)
    steps /= np.hypot(steps[:, 0], steps[:, 1])[:, None]
    sides = np.column_stack([-steps[:, 1], steps[:, 0]])
    offsets = [sides[0]]
    for before, after in pairwise(sides):
        miter = before + after
        offsets.append(2.0 * miter / (miter @ miter))
    offsets.append(sides[-1])
    shift = np.array(offsets) * STROKE / 2.0
    return _polygon(*(line + shift), *(line - shift)[::-1])


def _countersink() -> Path:
    low = STROKE * 0.7
    half = CAPITAL - low
    return _stroke((0.0, CAPITAL), (half, low), (2.0 * half, CAPITAL))


def _counterbore() -> Path:
    left, right, low = STROKE / 2.0, 2.0 * CAPITAL - STROKE / 2.0, STROKE / 2.0
    return _stroke((left, CAPITAL), (left, low), (right, low), (right, CAPITAL))


def _depth() -> Path:
    top, middle = CAPITAL - STROKE / 2.0, CAPITAL / 2.0
    bar = _stroke((0.0, top), (CAPITAL, top))
    shaft = _stroke((middle, top), (middle, 0.25))
    head = _polygon((middle, 0.0), (middle - 0.15, 0.3), (middle + 0.15, 0.3))
    return Path.make_compound_path(bar, shaft, head)


def _diameter() -> Path:
    middle = CAPITAL / 2.0
    around = np.linspace(0.0, 2.0 * np.pi, 49)[:-1]
    turn = np.column_stack([np.cos(around), np.sin(around)])
    ring = _polygon(*(middle + turn[::-1] * middle))
    inside = _polygon(*(middle + turn * (middle - STROKE)))
    slash = _stroke((middle - 0.27, -0.1), (middle + 0.27, CAPITAL + 0.1))
    return Path.make_compound_path(ring, inside, slash)


DRAWN = {"⌵": _countersink, "⌴": _counterbore, "↧": _depth, "⌀": _diameter}
"""Signs drawn here, in the proportions of ASME Y14.5 (from memory: cones and bores twice as
wide as a capital is high); everything else comes from the font."""


@cache
def _glyph(character: str) -> tuple[Path | None, float]:
    """Give a character's outline at type size 1 and the width it takes."""
    if character in DRAWN:
        sign = DRAWN[character]()
        return _placed(sign, right=GAP), sign.get_extents().x1 + 2.0 * GAP
    size = 100.0
    font = FontProperties(family=FONT, size=size)
    width, _, _ = TextToPath().get_text_width_height_descent(character, font, ismath=False)
    if not character.strip():
        return None, width / size
    outline = TextPath((0.0, 0.0), character, prop=font)
    return _placed(outline, scale=1.0 / size), width / size


def _placed(outline: Path, *, scale: float = 1.0, right: float = 0.0, up: float = 0.0) -> Path:
    points = np.asarray(outline.vertices, dtype=float) * scale + np.array([right, up])
    return Path(points, outline.codes)


def note_path(text: str, *, x: float, y: float, points: float, align: str = "left") -> Path:
    """Set a line of print note as one outline, hole signs included.

    Parameters
    ----------
    text : str
        The note, with ⌵, ⌴, ↧ and ⌀ as characters.
    x, y : float
        Where its baseline starts, or has its middle [page units].
    points : float
        Size of the type [pt].
    align : {"left", "center"}
        Which end of the baseline `x` names.

    Returns
    -------
    matplotlib.path.Path
        Filled outline of the whole line, in page units.

    Examples
    --------
    >>> wide = note_path("⌵ ⌀.385 X 82°", x=10, y=20, points=18).get_extents()
    >>> bool(wide.x0 > 10 and 20 < wide.y1 < 50)
    True
    """
    size = points / POINTS
    pieces, pen = [], 0.0
    for character in text:
        outline, width = _glyph(character)
        if outline is not None:
            pieces.append((outline, pen))
        pen += width
    start = x - pen * size / 2.0 if align == "center" else x
    placed = [_placed(outline, scale=size, right=start + at * size, up=y) for outline, at in pieces]
    return Path.make_compound_path(*placed)
