"""A sketch of the center hole in the end of a shaft, for questions."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

AXIS, END, BROKEN, SHAFT = 640.0, 322.0, 26.0, 260.0
MOUTH, PILOT, DEEP = 152.0, 74.0, 74.0
"""Half of the mouth and of the pilot hole, and how far the pilot hole goes on."""

SLOPE, POINT = 0.5774, 0.6009
"""How far the cone's side leans for each unit down, at 60°; height of a 118° point over half of
its width."""

HOLES = {
    "mouth": "mouth at the end of the shaft",
    "pilot": "pilot hole",
    "angle": "included angle of the cone",
    "depth": "depth of the cone, down to the edge of the pilot hole,",
}


def center_hole(labels: Mapping[str, str]) -> Drawing:
    """Draw a center hole in section, the shaft's end up.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``HOLES``, as they are said; "?" for the one asked for.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = "The end of a shaft with its center hole, in section"
    page = Page(Asked(title=title, names=HOLES, labels=labels))
    floor = END - (MOUTH - PILOT) / SLOPE
    foot = floor - DEEP
    half = [(MOUTH, END), (PILOT, floor), (PILOT, foot), (0.0, foot - PILOT * POINT)]
    hole = [*((AXIS - x, y) for x, y in half), *((AXIS + x, y) for x, y in reversed(half))]
    left, right = AXIS - SHAFT, AXIS + SHAFT
    page.sketch.metal([(left, BROKEN), (left, END), *hole, (right, END), (right, BROKEN)])
    page.sketch.edge([(left, BROKEN), (left, END), *hole, (right, END), (right, BROKEN)])
    page.sketch.edge([hole[0], hole[-1]], [hole[1], hole[-2]], [hole[2], hole[-3]])
    page.sketch.thin([(left, BROKEN), (right, BROKEN)])
    page.sketch.center((AXIS, END + 28.0), (AXIS, BROKEN - 16.0))
    page.across("mouth", (AXIS - MOUTH, AXIS + MOUTH), 385.0, END)
    page.inside("pilot", (AXIS - PILOT, AXIS + PILOT), floor - 26.0, -22.0)
    tip = (AXIS - MOUTH + 34.0 * SLOPE, END - 34.0)
    page.angle("angle", (left - 40.0, END - 120.0), tip)
    page.down("depth", (floor, END), right + 45.0, AXIS + PILOT, right)
    return page.finish()
