"""A seat in section with letters at its sizes, for asking which size is which."""

from collections.abc import Mapping

import numpy as np

from seatwork.drawings.scene import Drawing, Look, present_look
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Point
from seatwork.drawings.strokes.metal import Window
from seatwork.drawings.strokes.sketch import Sketch
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink

AXIS, FACE, HALF_PLATE, BOTTOM = 640.0, 330.0, 330.0, 52.0
WIDEST, DEEPEST = 460.0, 205.0
"""Most that the seat may take across, and its cone down to the point [page units]."""

ABOVE, BESIDE, INWARD = 388.0, 40.0, 34.0
"""Where the diameter is dimensioned; how far beside the plate, and off the slope, a size is."""

SIZES = {
    "diameter": "from edge to edge of the mouth, in the face",
    "hole": "across the hole, below the cone",
    "depth": "straight down from the face to where the cone meets the hole",
    "apex": "straight down from the face to where the two slopes would meet",
    "slant": "along one slope, from the mouth to the hole",
}


def lettered_seat(
    seat: Countersink, letters: Mapping[str, str], look: Look | None = None
) -> Drawing:
    """Draw a seat in section, a letter in place of each size.

    Parameters
    ----------
    seat : Countersink
        Sizes [mm] and [deg].
    letters : mapping of str to str
        Letter of each size: "diameter", "hole", "depth", "apex" and "slant".
    look : Look, optional
        Palette and size; a lettered drawing has no units.

    Returns
    -------
    Drawing
        No size has its name or its number; the text says from where to where each letter goes.

    Raises
    ------
    SeatworkError
        If a size has no letter.
    """
    for size in SIZES:
        if size not in letters:
            raise SeatworkError(size, "this size has no letter", "give one to each of the five")
    sketch = Sketch({}, look or present_look())
    window = Window(
        axis=AXIS,
        face=FACE,
        left=AXIS - HALF_PLATE,
        right=AXIS + HALF_PLATE,
        bottom=BOTTOM,
        scale=min(WIDEST / seat.diameter, DEEPEST / seat.apex_depth),
    )
    _plate(sketch, seat, window)
    for size, mark in _MARKS.items():
        x, y = mark(sketch, seat, window)
        sketch.write(x, y, letters[size], ha="center", fontweight="bold", fontsize=22.0)
    sketch.finish()
    lines = (f"{letters[size]} {way}" for size, way in SIZES.items())
    return Drawing(sketch.figure, f"A seat in section. {'; '.join(sorted(lines))}.")


def _plate(sketch: Sketch, seat: Countersink, window: Window) -> None:
    """Draw the cut plate, the cone and the hole, and the slopes on to where they meet."""
    wall = window.to_page(profiles.countersink_wall(seat, window.deepest))
    for side in (wall, wall * (-1.0, 1.0) + (2.0 * AXIS, 0.0)):
        outer = AXIS + np.sign(side[0, 0] - AXIS) * HALF_PLATE
        sketch.metal([*side, (outer, BOTTOM), (outer, FACE)])
        sketch.edge(side, [(side[0, 0], FACE), (outer, FACE)])
        sketch.thin([(outer, FACE), (outer, BOTTOM), (side[-1, 0], BOTTOM)])
        sketch.hidden([tuple(side[1]), window.spot(0.0, -seat.apex_depth)])
    (right, low), top = wall[1], wall[0, 0]
    sketch.edge([(2.0 * AXIS - right, low), (right, low)], [(2.0 * AXIS - top, FACE), (top, FACE)])
    sketch.center((AXIS, FACE + 24.0), (AXIS, BOTTOM - 18.0))


def _diameter(sketch: Sketch, seat: Countersink, window: Window) -> Point:
    reach = seat.diameter / 2 * window.scale
    for side in (-1.0, 1.0):
        sketch.work.extension((AXIS + side * reach, FACE), (AXIS + side * reach, ABOVE))
    sketch.work.dimension((AXIS - reach, ABOVE), (AXIS + reach, ABOVE))
    return AXIS, ABOVE + 22.0


def _hole(sketch: Sketch, seat: Countersink, window: Window) -> Point:
    reach, level = seat.hole_diameter / 2 * window.scale, BOTTOM + 22.0
    sketch.work.dimension((AXIS - reach, level), (AXIS + reach, level))
    return AXIS - reach / 2, level + 20.0


def _depth(sketch: Sketch, seat: Countersink, window: Window) -> Point:
    start = window.spot(seat.hole_diameter / 2, -seat.depth)
    return _down(sketch, window, start, window.right + BESIDE, 24.0)


def _apex(sketch: Sketch, seat: Countersink, window: Window) -> Point:
    start = window.spot(0.0, -seat.apex_depth)
    return _down(sketch, window, start, window.left - BESIDE, -24.0)


def _down(sketch: Sketch, window: Window, start: Point, x: float, aside: float) -> Point:
    """Dimension from the face straight down to the level of a point."""
    edge = window.right if x > AXIS else window.left
    sketch.work.extension((edge, FACE), (x, FACE))
    sketch.work.extension(start, (x, start[1]))
    sketch.work.dimension((x, start[1]), (x, FACE))
    return x + aside, (FACE + start[1]) / 2


def _slant(sketch: Sketch, seat: Countersink, window: Window) -> Point:
    """Dimension along the left slope, in the open."""
    top, low = (
        np.array(window.spot(-wide / 2, -deep))
        for wide, deep in ((seat.diameter, 0.0), (seat.hole_diameter, seat.depth))
    )
    along = (low - top) / np.hypot(*(low - top))
    inward = INWARD * np.array([-along[1], along[0]])
    for end in (top, low):
        sketch.work.line(tuple(end + 0.2 * inward), tuple(end + 1.2 * inward))
    sketch.work.dimension(tuple(top + inward), tuple(low + inward))
    x, y = (top + low) / 2 + 1.8 * inward
    return float(x), float(y)


_MARKS = {"diameter": _diameter, "hole": _hole, "depth": _depth, "apex": _apex, "slant": _slant}
