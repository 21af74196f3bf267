"""A sketch of a flat head screw that holds a guard to a frame, for questions."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

AXIS, HALF, FACE, JOINT, UNDER, END = 640.0, 260.0, 370.0, 235.0, 45.0, 110.0
HEAD, SHANK, HOLE, NECK = 120.0, 50.0, 58.0, 290.0
SCREW = {
    "thickness": "thickness of the guard",
    "engagement": "reach into the frame",
    "height": "height of the head",
}


def screw_in_frame(labels: Mapping[str, str]) -> Drawing:
    """Draw a flat head screw, flush in a guard, tapped into the frame behind it.

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
        outer, mouth, hole, thread = (AXIS + side * x for x in (HALF, HEAD + 6.0, HOLE, SHANK))
        neck = NECK + 4.0
        wall = [(outer, FACE), (mouth, FACE), (hole, neck), (hole, JOINT)]
        page.sketch.metal([*wall, (outer, JOINT)])
        page.sketch.edge(wall, [(hole, JOINT), (outer, JOINT)])
        page.sketch.metal([(outer, JOINT), (thread, JOINT), (thread, UNDER), (outer, UNDER)])
        page.sketch.edge([(thread, JOINT), (thread, UNDER), (outer, UNDER)])
        page.sketch.thin([(outer, FACE), (outer, UNDER)])
    half = [(HEAD, FACE), (SHANK, NECK), (SHANK, END)]
    screw = [(AXIS + x, y) for x, y in half] + [(AXIS - x, y) for x, y in reversed(half)]
    page.sketch.steel(screw)
    page.sketch.center((AXIS, FACE + 25.0), (AXIS, UNDER - 20.0))
    right, left = AXIS + HALF + 45.0, AXIS - HALF - 45.0
    page.down("thickness", (JOINT, FACE), right, AXIS + HALF, AXIS + HALF)
    page.down("engagement", (END, JOINT), right, AXIS + SHANK, AXIS + HALF)
    page.down("height", (NECK, FACE), left, AXIS - SHANK, AXIS - HALF)
    return page.finish()
