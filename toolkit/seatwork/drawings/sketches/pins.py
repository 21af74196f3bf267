"""A sketch of a gage pin in a seat for questions."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

AXIS, FACE, UNDER, HALF = 640.0, 285.0, 62.0, 290.0
MOUTH, PIN, HOLE, SLOPE = 195.0, 92.0, 48.0, 0.8693
"""Halves of the mouth, the pin and the hole; how far a side leans: a cone of 82° as drawn."""

END, TOP, FLOOR = FACE - (MOUTH - PIN) / SLOPE, 345.0, FACE - (MOUTH - HOLE) / SLOPE
"""Levels of the pin's square end, of its top and of the edge of the hole."""

PINNED = {
    "mouth": "diameter at the face",
    "pin": "gage pin",
    "below": "square end of the pin below the face",
    "angle": "included angle",
}


def gage_pin(labels: Mapping[str, str]) -> Drawing:
    """Draw a gage pin that stops where the cone of a seat is as wide as the pin, in section.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``PINNED``, as they are said; "?" for the one asked for.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    page = Page(Asked(title="A gage pin in a seat, in section", names=PINNED, labels=labels))
    for side in (-1.0, 1.0):
        outer, mouth, wall = (AXIS + side * reach for reach in (HALF, MOUTH, HOLE))
        edge = [(outer, FACE), (mouth, FACE), (wall, FLOOR), (wall, UNDER)]
        page.sketch.metal([*edge, (outer, UNDER)])
        page.sketch.edge(edge, [(wall, UNDER), (outer, UNDER)])
        page.sketch.thin([(outer, FACE), (outer, UNDER)])
    ends = (AXIS - PIN, AXIS + PIN)
    page.sketch.steel([(ends[0], END), (ends[1], END), (ends[1], TOP), (ends[0], TOP)])
    page.sketch.center((AXIS, TOP + 15.0), (AXIS, UNDER - 25.0))
    page.inside("pin", ends, END + 40.0, 26.0)
    page.across("mouth", (AXIS - MOUTH, AXIS + MOUTH), 388.0, FACE)
    page.down("below", (END, FACE), AXIS + HALF + 40.0, ends[1], AXIS + HALF)
    tip = (AXIS - MOUTH + 60.0 * SLOPE, FACE - 60.0)
    page.angle("angle", (AXIS - HALF - 30.0, FACE - 120.0), tip)
    return page.finish()
