"""Outlines as plain lists: what the scenes ask of matplotlib's paths, where there is none."""

import math
from collections.abc import Sequence
from typing import Any

from seatwork.live.writing import CLOSE, CURVE3, CURVE4, LINE, MOVE, STOP
from seatwork.takehome.inside.plain_arrays import Array, asarray


class Path:
    """Vertices and what each is to the line.

    Parameters
    ----------
    vertices : Array or sequence of (float, float)
        The vertices [page units].
    codes : sequence of int, optional
        One for each; without any it is one line.
    closed : bool
        Whether the last vertex closes the line.
    """

    MOVETO, LINETO, CURVE3, CURVE4, CLOSEPOLY, STOP = MOVE, LINE, CURVE3, CURVE4, CLOSE, STOP

    def __init__(self, vertices: Any, codes: Any = None, closed: bool = False) -> None:
        self.vertices: Array = asarray(vertices)
        if codes is None and closed and len(self.vertices):
            codes = [MOVE, *[LINE] * (len(self.vertices) - 2), CLOSE]
        self.codes: Any = None if codes is None else list(codes)

    @property
    def written_codes(self) -> bytes | None:
        """The codes, one byte each."""
        return None if self.codes is None else bytes(self.codes)

    @classmethod
    def make_compound_path(cls, *paths: "Path") -> "Path":
        """Return paths as one."""
        vertices = [row for path in paths for row in path.vertices.rows]
        codes = [
            code
            for path in paths
            for code in path.codes or [MOVE, *[LINE] * (len(path.vertices) - 1)]
        ]
        return cls(Array(vertices), codes)

    @classmethod
    def arc(cls, start: float, end: float) -> "Path":
        """Return an arc of the unit circle as curves [deg, counterclockwise from the right].

        Its handles are Maisonobe's, as matplotlib's are; with others the arc would be the same
        to the eye and not to the letter.
        """
        turn = end - 360 * math.floor((end - start) / 360)
        if end != start and turn <= start:
            turn += 360
        first, last = math.radians(start), math.radians(turn)
        pieces = int(2 ** math.ceil((last - first) / (math.pi / 2)))
        step = (last - first) / pieces
        half = math.tan(step / 2)
        reach = math.sin(step) * (math.sqrt(4.0 + 3.0 * half * half) - 1) / 3.0
        found: list[list[float]] = []
        for piece in range(pieces + 1):
            angle = last if piece == pieces else first + piece * step
            x, y = math.cos(angle), math.sin(angle)
            before, after = [x + reach * y, y - reach * x], [x - reach * y, y + reach * x]
            found += [before, [x, y], after]
        return cls(found[1:-1], [MOVE, *[CURVE4] * (3 * pieces)])

    def get_extents(self) -> "Extents":
        """Return the box round the vertices."""
        return Extents(self.vertices.rows)


class Extents:
    """The box round some points."""

    def __init__(self, rows: Sequence[Sequence[float]]) -> None:
        xs = [row[0] for row in rows]
        self.x0, self.x1 = min(xs), max(xs)

    @property
    def width(self) -> float:
        """How wide it is."""
        return self.x1 - self.x0
