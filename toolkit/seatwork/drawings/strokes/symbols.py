"""The signs of print notes as outlines: ⌵ ⌴ ↧ and the spotface; from the font, all the rest.

The default font has no ⌵ and no ⌴, and a missing sign on a print is a wrong print. So the
signs are drawn here, to the height of a capital letter, and set in line with the font's own
outlines of every other character.
"""

import re
from functools import cache
from itertools import pairwise
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.font_manager import FontProperties
from matplotlib.patches import PathPatch
from matplotlib.path import Path
from matplotlib.textpath import TextPath

from seatwork.drawings.strokes.spacing import alone, characters, closer
from seatwork.drawings.strokes.style import FONT, POINTS, Style

CAPITAL = 0.73
"""Height of a capital letter as a share of the type size."""

STROKE = 0.075
"""Thickness of a sign's strokes as a share of the type size."""

GAP = 0.13
"""Space on each side of a sign as a share of the type size."""

LETTERS = 0.56
"""Size of the letters inside the spotface's bracket as a share of the type size."""


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


def _spotface() -> Path:
    """Set the letters SF inside the bracket of the counterbore, as the sign has it since 2009."""
    looks = FontProperties(family=FONT, weight="bold")
    letters = TextPath((0.0, 0.0), "SF", size=LETTERS, prop=looks)
    middle = CAPITAL - letters.get_extents().width / 2.0
    inside = letters.vertices + np.array([middle, STROKE + GAP])
    return Path.make_compound_path(_counterbore(), Path(inside, letters.codes))


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


SPOTFACE = "⌴SF"
"""As it is typed: the sign has no letter of its own."""

DRAWN = {
    SPOTFACE: _spotface,
    "⌵": _countersink,
    "⌴": _counterbore,
    "↧": _depth,
    "⌀": _diameter,
}
"""Signs drawn here, in the proportions of ASME Y14.5 (from memory: cones and bores twice as
wide as a capital is high); everything else comes from the font."""


RUN = re.compile(f"({'|'.join(DRAWN)})")
RUNS = 4
"""Most runs of letters that one line holds."""

NOTHING = Path(np.zeros((1, 2)))


class SignedLine:
    """A line of lettering with hole signs in it, which can be set anew.

    The letters stay text, so that a change of one number sets one short text; the signs are
    one path, which changes only where they come to stand elsewhere.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    style : Style
        Color of the ink, size of the type.
    x, y : float
        Where its baseline starts, or has its middle [page units].
    align : {"left", "center"}
        Which spot of the baseline `x` names.
    animated : bool
        Whether it moves.
    runs : int
        Most runs of letters between signs that the line will hold [-].
    """

    def __init__(
        self,
        axes: Axes,
        style: Style,
        *,
        x: float,
        y: float,
        align: str = "left",
        animated: bool = False,
        runs: int = RUNS,
    ) -> None:
        self._x, self._y, self._align, self._runs = x, y, align, runs
        self._size = style.sizes.text / POINTS
        looks: dict[str, Any] = {
            "fontfamily": FONT,
            "fontsize": style.sizes.text,
            "color": style.colors.ink,
            "parse_math": False,
        }
        self.texts = [axes.text(x, y, "", zorder=5.3, **looks) for _ in range(runs)]
        self.signs = PathPatch(NOTHING, facecolor=style.colors.ink, linewidth=0, zorder=5.2)
        axes.add_artist(self.signs)
        for artist in (*self.texts, self.signs):
            artist.set_animated(animated)
        self._set_signs: list[tuple[str, float]] = []

    def set(self, line: str) -> None:
        """Write `line`, with no more runs of letters between its signs than it holds."""
        runs = [run for run in RUN.split(line) if run]
        wide = self._size * sum(_width(run) for run in runs)
        pen = self._x - wide / 2.0 if self._align == "center" else self._x
        letters: list[tuple[str, float]] = []
        signs: list[tuple[str, float]] = []
        for run in runs:
            if run.strip():
                (signs if run in DRAWN else letters).append((run, pen))
            pen += self._size * _width(run)
        letters += [("", self._x)] * (self._runs - len(letters))
        for text, (run, at) in zip(self.texts, letters, strict=True):
            text.set_text(run.rstrip())
            text.set_x(at)
        if signs != self._set_signs:
            self.signs.set_path(self._outline(signs))
            self._set_signs = signs

    def _outline(self, signs: list[tuple[str, float]]) -> Path:
        shapes = [
            _placed(_sign(sign), scale=self._size, right=at, up=self._y) for sign, at in signs
        ]
        return Path.make_compound_path(*shapes) if shapes else NOTHING


def line_width(line: str) -> float:
    """Give the width of a line with signs in it, at type size 1."""
    return sum(_width(run) for run in RUN.split(line) if run)


def legible(text: str) -> str:
    """Put a box in place of every character that neither the font nor this module can draw.

    Examples
    --------
    >>> legible(f"⌵ .385 {chr(0x4E2D)}")
    '⌵ .385 □'
    """
    known = characters()
    return "".join(c if ord(c) in known or c in DRAWN or c == "\n" else "□" for c in text)


@cache
def _sign(character: str) -> Path:
    """Give a sign's outline at type size 1, with the gap before it."""
    return _placed(DRAWN[character](), right=GAP)


@cache
def _width(run: str) -> float:
    """Give the width of a sign, or of a run of letters, at type size 1."""
    if run in DRAWN:
        return float(_sign(run).get_extents().x1) + GAP
    letters = run.replace("ff", "\ufb00")  # the font draws the two as one letter
    return sum(map(alone, letters)) + sum(map(closer, pairwise(letters)))


def _placed(outline: Path, *, scale: float = 1.0, right: float = 0.0, up: float = 0.0) -> Path:
    points = np.asarray(outline.vertices, dtype=float) * scale + np.array([right, up])
    return Path(points, outline.codes)
