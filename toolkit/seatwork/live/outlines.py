"""Outlines as SVG path data: whole paths in whole units, letters as shapes of the figure's font.

A unit is a tenth of a pixel of the figure. Whole numbers keep a move short on the wire.
"""

from collections.abc import Sequence
from typing import Any

import numpy as np
from matplotlib.font_manager import FontProperties, findfont, get_font
from matplotlib.ft2font import LoadFlags
from matplotlib.lines import Line2D
from matplotlib.path import Path
from matplotlib.transforms import Affine2D

from seatwork.live.writing import VERTICES, template, written

UNITS_PER_PIXEL = 10
EM = 1000
LONG_PATH = 400
SHORT_PATH = 24
"""Most vertices that are written one by one; for so few an array costs more than it saves."""


def path_data(path: Path, matrix: np.ndarray) -> str:
    """Write a path as SVG data.

    Parameters
    ----------
    path : matplotlib.path.Path
        Any path; a vertex that is not finite breaks the line.
    matrix : ndarray
        Affine map from the path to units [1], y downwards, shape (3, 3).

    Returns
    -------
    str
        ``d`` attribute in whole units; empty for a path without a finite vertex.
    """
    vertices: Any = path.vertices
    if len(vertices) > LONG_PATH:
        to_pixels = Affine2D(np.diag([1, 1, UNITS_PER_PIXEL]) @ matrix / UNITS_PER_PIXEL)
        simple = bool(path.should_simplify)
        path = path.cleaned(transform=to_pixels, simplify=simple, remove_nans=True)
        vertices = path.vertices
        matrix = np.diag([UNITS_PER_PIXEL, UNITS_PER_PIXEL, 1.0])
    codes: Any = path.codes
    if len(vertices) <= SHORT_PATH:
        return written(vertices.tolist(), None if codes is None else codes.tobytes(), flat(matrix))
    return _written(np.asarray(vertices, float), codes, matrix)


def line_data(line: Line2D, matrix: np.ndarray) -> str:
    """Write the line through the points of a plain line, as `path_data` would write its path."""
    x: Any
    y: Any
    x, y = line.get_data(orig=True)
    if isinstance(y, np.ma.MaskedArray) or line.get_drawstyle() != "default":
        return path_data(line.get_path(), matrix)
    if len(x) <= SHORT_PATH:
        return written(list(zip(plain(x), plain(y), strict=True)), None, flat(matrix))
    points = np.array([x, y], float).T
    if len(points) > LONG_PATH:
        return path_data(line.get_path(), matrix)
    return _written(points, None, matrix)


def flat(matrix: np.ndarray) -> list[float]:
    """Return a map as its six numbers, see `writing`."""
    six: list[float] = matrix[:2].ravel().tolist()
    return six


def plain(numbers: Sequence[float] | np.ndarray) -> Sequence[float]:
    """Return the numbers of a list or of an array as plain floats."""
    if isinstance(numbers, np.ndarray):
        plain: list[float] = numbers.tolist()
        return plain
    return numbers


def _written(vertices: np.ndarray, codes: np.ndarray | None, matrix: np.ndarray) -> str:
    """Write many vertices."""
    finite = np.isfinite(vertices)
    if not finite.all():
        kept = finite.all(axis=1)
        codes, vertices = _broken(codes, kept), vertices[kept]
    units = np.rint(vertices @ matrix[:2, :2].T + matrix[:2, 2]).astype(int)
    form, used = template(len(units), None if codes is None else codes.tobytes())
    return form % tuple((units if used is None else units[list(used)]).ravel().tolist())


def _broken(codes: np.ndarray | None, finite: np.ndarray) -> np.ndarray:
    """Return codes for the finite vertices of a line, a new start after every gap."""
    kept = np.full(len(finite), Path.LINETO, np.uint8) if codes is None else codes.copy()
    starts = finite & ~np.concatenate(([False], finite[:-1]))
    kept[starts] = Path.MOVETO
    broken: np.ndarray = kept[finite]
    return broken


def relative_data(path: Path, scale: float = 1.0) -> str:
    """Write a path with relative commands, so that it can be stamped anywhere.

    Parameters
    ----------
    path : matplotlib.path.Path
        Outline around its own origin, y upwards.
    scale : float
        Units per length of the path [1].

    Returns
    -------
    str
        Data that begins at the current point and is valid after any ``M``.
    """
    parts: list[str] = []
    here = start = np.zeros(2, int)
    for points, code in path.iter_segments(simplify=False, curves=True):
        if code == Path.CLOSEPOLY:
            parts.append("z")
            here = start
            continue
        ends = np.rint(np.reshape(points, (-1, 2)) * (scale, -scale)).astype(int)
        letter = VERTICES[int(code)][0].lower()
        parts.append(letter + " ".join(f"{x} {y}" for x, y in ends - here))
        here = ends[-1]
        start = here if code == Path.MOVETO else start
    return "".join(parts)


class Letters:
    """Shapes and widths of the letters of one font, in thousandths of its size.

    Parameters
    ----------
    font : matplotlib.font_manager.FontProperties
        Family, weight and style; the size does not matter.
    """

    def __init__(self, font: FontProperties) -> None:
        self._file = findfont(font)
        self._known: dict[str, tuple[str, int]] = {}
        self._wide: dict[str, int] = {}

    @classmethod
    def of(cls, family: str, weight: str) -> "Letters":
        """Return the letters of a family, "normal" or "bold"."""
        return cls(FontProperties(family=family, weight=weight))

    @property
    def name(self) -> str:
        """The font's file, to tell one set of letters from another."""
        return str(self._file)

    def width(self, text: str) -> int:
        """Return the length of a line of text [1/1000 em]."""
        try:
            return sum(map(self._wide.__getitem__, text))
        except KeyError:  # a letter not seen before
            return sum(self.shape(letter)[1] for letter in text)

    def shape(self, letter: str) -> tuple[str, int]:
        """Return a letter's outline (relative data) and its advance [1/1000 em]."""
        found = self._known.get(letter)
        if found is None:
            font = get_font(self._file)
            font.set_size(100.0, 72)
            glyph = font.load_char(ord(letter), flags=LoadFlags.NO_HINTING)
            outline = relative_data(Path(*font.get_path()), EM / 100)
            found = outline, round(glyph.linearHoriAdvance / 65536 * EM / 100)
            self._known[letter] = found
            self._wide[letter] = found[1]
        return found
