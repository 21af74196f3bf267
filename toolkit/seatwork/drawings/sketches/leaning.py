"""A sketch of a hex head laid on a leaning pad, not tightened, for questions."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

LEFT, RIGHT, UNDER = 330.0, 810.0, 40.0
"""Ends and underside of the pad as drawn."""

AXIS, HALF, SHANK, WALL = 640.0, 170.0, 60.0, 70.0
"""Axis of the hole, halves of head, shank and hole."""

SEAT, TALL, FALL = 195.0, 110.0, 0.14
"""Underside and height of the head, and how steep the pad is drawn: steeper than it is [-]."""

LEANING = {
    "width": "across the flats of the head",
    "slope": "the pad leans from square to the hole",
    "gap": "gap under the open side",
}


def leaning_pad(labels: Mapping[str, str]) -> Drawing:
    """Draw a head laid on a leaning pad: one side touches, the other is open.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``LEANING``, as they are said; "?" for the one asked for.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = "A hex head laid on a leaning pad, not tightened"
    page = Page(Asked(title=title, names=LEANING, labels=labels))
    sketch = page.sketch
    for inner, outer in ((AXIS - WALL, LEFT), (AXIS + WALL, RIGHT)):
        face = [(outer, _face(outer)), (inner, _face(inner))]
        sketch.metal([*face, (inner, UNDER), (outer, UNDER)])
        sketch.edge([*face, (inner, UNDER)])
    top, ends = SEAT + TALL, (AXIS - HALF, AXIS + HALF)
    shank = [(AXIS - SHANK, UNDER), (AXIS + SHANK, UNDER), (AXIS + SHANK, SEAT)]
    sketch.steel([*shank, (AXIS - SHANK, SEAT)])
    sketch.steel([(ends[0], SEAT), (ends[1], SEAT), (ends[1], top), (ends[0], top)])
    sketch.edge(*([(AXIS + x, SEAT), (AXIS + x, top)] for x in (-HALF / 2, HALF / 2)))
    sketch.center((AXIS, UNDER - 18.0), (AXIS, top + 24.0))
    page.across("width", ends, top + 46.0, top, sign="")
    page.down("gap", (_face(ends[1]), SEAT), ends[1] + 60.0, ends[1], ends[1])
    sketch.hidden([(LEFT - 130.0, _face(LEFT)), (LEFT, _face(LEFT))])
    sketch.hidden([(LEFT - 130.0, _face(LEFT - 130.0)), (LEFT, _face(LEFT))])
    page.write("slope", (LEFT - 145.0, (_face(LEFT) + _face(LEFT - 130.0)) / 2), "right")
    return page.finish()


def _face(x: float) -> float:
    """Return the level of the pad, which the head touches on its left."""
    return SEAT - FALL * (x - (AXIS - HALF))
