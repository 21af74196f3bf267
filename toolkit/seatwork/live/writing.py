"""Outlines written as SVG path data in whole units, by plain numbers alone.

The live picture and a page's own Python write with the same lines, so that both write the same.
"""

from collections.abc import Sequence
from functools import lru_cache
from itertools import chain, compress

MOVE, LINE, CURVE3, CURVE4, CLOSE, STOP = 1, 2, 3, 4, 79, 0
"""What a vertex is to its path, by matplotlib's codes."""

VERTICES = {MOVE: ("M", 1), LINE: ("L", 1), CURVE3: ("Q", 2), CURVE4: ("C", 3)}
"""The letter of each code, and how many vertices it takes."""

Matrix = Sequence[float]
"""Affine map to units, y downwards: a, b, c, d, e, f of a x + b y + c and d x + e y + f."""


def written(points: Sequence[Sequence[float]], codes: bytes | None, matrix: Matrix) -> str:
    """Write vertices one by one.

    Parameters
    ----------
    points : sequence of (float, float)
        Any unit [-]; a vertex that is not finite breaks the line.
    codes : bytes or None
        One for each vertex; None for a line.
    matrix : sequence of float
        Map from the vertices to units [-].
    """
    finite = [x - x == 0.0 == y - y for x, y in points]  # nothing taken from itself leaves NaN
    if False in finite:
        codes, points = _broken(codes, finite), list(compress(points, finite))
    a, b, c, d, e, f = matrix
    units = [(round(a * x + b * y + c), round(d * x + e * y + f)) for x, y in points]
    form, used = template(len(units), codes)
    if used is not None:
        units = list(compress(units, used))
    return form % tuple(chain.from_iterable(units))


def places(points: Sequence[Sequence[float]], matrix: Matrix) -> list[int]:
    """Return where marks lie, two whole units each; one that is not finite is left out."""
    a, b, c, d, e, f = matrix
    kept = [(x, y) for x, y in points if x - x == 0.0 == y - y]
    return [round(unit) for x, y in kept for unit in (a * x + b * y + c, d * x + e * y + f)]


@lru_cache(maxsize=512)
def template(count: int, codes: bytes | None) -> tuple[str, tuple[bool, ...] | None]:
    """Return the data with a place for every number, and which vertices fill them."""
    if codes is None:
        return ("M" + " ".join(["%d %d"] * count) if count else ""), None
    parts: list[str] = []
    kept, at = [True] * count, 0
    while at < count and codes[at] != STOP:
        if codes[at] == CLOSE:
            kept[at] = False
            parts.append("Z")
            at += 1
        else:
            letter, length = VERTICES[codes[at]]
            parts.append(letter + " ".join(["%d %d"] * length))
            at += length
    kept[at:] = [False] * (count - at)
    return "".join(parts), tuple(kept[:count])


def _broken(codes: bytes | None, finite: list[bool]) -> bytes:
    """Return codes for the finite vertices of a line, a new start after every gap."""
    kept = codes or bytes([LINE]) * len(finite)
    steps = zip(finite, [False, *finite], kept, strict=False)
    return bytes([code if before else MOVE for here, before, code in steps if here])
