"""A sketch of a flat head screw that holds a guard to a frame, for questions."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

AXIS, HALF, FACE, JOINT, UNDER, END = 640.0, 260.0, 370.0, 235.0, 25.0, 128.0
THREADED, DRILLED, POINT = 98.0, 74.0, 50.0
"""Levels of the end of the full thread, of the drilled hole and of its point."""

HEAD, SHANK, HOLE, NECK = 120.0, 50.0, 58.0, 290.0
SCREW = {
    "thickness": "thickness of the guard",
    "engagement": "reach into the frame",
    "full": "full thread in the frame",
    "height": "height of the head",
}


def screw_in_frame(labels: Mapping[str, str]) -> Drawing:
    """Draw a flat head screw, flush in a guard, tapped blind into the frame behind it.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``SCREW``, as they are said. The length of the screw has
        no dimension: from where to where it runs is what is asked.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = "A flat head screw holds a guard to a tapped frame, in section"
    page = Page(Asked(title=title, names=SCREW, labels=labels))
    for side in (-1.0, 1.0):
        _guard(page, side)
        _frame(page, side)
    half = [(HEAD, FACE), (SHANK, NECK), (SHANK, END)]
    screw = [(AXIS + x, y) for x, y in half] + [(AXIS - x, y) for x, y in reversed(half)]
    page.sketch.steel(screw)
    page.sketch.center((AXIS, FACE + 25.0), (AXIS, UNDER - 8.0))
    right, left = AXIS + HALF + 45.0, AXIS - HALF - 45.0
    page.down("thickness", (JOINT, FACE), right, AXIS + HALF, AXIS + HALF)
    page.down("engagement", (END, JOINT), right, AXIS + SHANK, AXIS + HALF)
    page.down("full", (THREADED, JOINT), right, AXIS + SHANK, AXIS + HALF)
    page.down("height", (NECK, FACE), left, AXIS - SHANK, AXIS - HALF)
    return page.finish()


def _guard(page: Page, side: float) -> None:
    """Draw one side of the guard, its seat and its hole."""
    outer, mouth, hole = (AXIS + side * x for x in (HALF, HEAD + 6.0, HOLE))
    wall = [(outer, FACE), (mouth, FACE), (hole, NECK + 4.0), (hole, JOINT)]
    page.sketch.metal([*wall, (outer, JOINT)])
    page.sketch.edge(wall, [(hole, JOINT), (outer, JOINT)])
    page.sketch.thin([(outer, FACE), (outer, JOINT)])


def _frame(page: Page, side: float) -> None:
    """Draw one side of the frame with its blind thread, the drilled hole and its point."""
    outer, thread, drilled = (AXIS + side * x for x in (HALF, SHANK, SHANK - 9.0))
    bore = [(drilled, JOINT), (drilled, DRILLED), (AXIS, POINT)]
    page.sketch.metal([(outer, JOINT), *bore, (AXIS, UNDER), (outer, UNDER)])
    page.sketch.edge([(drilled, END), *bore[1:]], [(drilled, DRILLED), (AXIS, DRILLED)])
    page.sketch.edge([(AXIS, UNDER), (outer, UNDER)], [(drilled, THREADED), (thread, THREADED)])
    page.sketch.thin([(thread, END), (thread, THREADED)], [(outer, JOINT), (outer, UNDER)])
