"""A sketch of a countersink whose lips touch the edge of a drilled hole, for questions."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page
from seatwork.drawings.strokes.linework import Point

AXIS, FACE, UNDER, HALF, TOP = 640.0, 262.0, 40.0, 330.0, 352.0
MOUTH, HOLE, NOSE, BODY, SLOPE = 170.0, 92.0, 46.0, 126.0, 0.8693
"""Half widths, and how far a side leans for each unit down: a cone of 82° as drawn."""

TOUCHED = {
    "mouth": "seat wanted, dashed, at the face",
    "hole": "hole",
    "nose": "flat nose of the tool",
    "angle": "included angle",
    "travel": "travel of the nose from there to the dashed line",
}


def touched_off(labels: Mapping[str, str]) -> Drawing:
    """Draw a countersink at the edge of a hole, in section, and the seat that is wanted dashed.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``TOUCHED``, as they are said; "?" for the one asked for.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = "A countersink with its lips at the edge of a hole, in section"
    page = Page(Asked(title=title, names=TOUCHED, labels=labels))
    nose = FACE - (HOLE - NOSE) / SLOPE
    low = nose - (MOUTH - HOLE) / SLOPE
    _plate(page)
    _tool(page, nose)
    _wanted(page, low)
    page.sketch.center((AXIS, TOP + 18.0), (AXIS, UNDER - 18.0))
    page.across("mouth", (AXIS - MOUTH, AXIS + MOUTH), 385.0, FACE)
    page.inside("hole", (AXIS - HOLE, AXIS + HOLE), UNDER + 18.0, 24.0)
    page.inside("nose", (AXIS - NOSE, AXIS + NOSE), nose + 16.0, 24.0)
    page.angle("angle", (AXIS - HALF - 40.0, FACE + 62.0), _side(22.0))
    page.down("travel", (low, nose), AXIS + HALF + 45.0, AXIS + NOSE, AXIS + NOSE)
    return page.finish()


def _side(above: float) -> Point:
    """Return a point on the left side of the tool's cone, so far above the face."""
    return AXIS - HOLE - above * SLOPE, FACE + above


def _plate(page: Page) -> None:
    """Draw the plate with its hole."""
    for side in (-1.0, 1.0):
        outer, wall = AXIS + side * HALF, AXIS + side * HOLE
        edge = [(outer, FACE), (wall, FACE), (wall, UNDER), (outer, UNDER)]
        page.sketch.metal(edge)
        page.sketch.edge(edge)
        page.sketch.thin([(outer, FACE), (outer, UNDER)])


def _tool(page: Page, nose: float) -> None:
    """Draw the tool, its nose down in the hole, its lips on the hole's edge."""
    shoulder = FACE + (BODY - HOLE) / SLOPE
    right = [(NOSE, nose), (BODY, shoulder), (BODY, TOP)]
    page.sketch.steel(
        [*((AXIS + x, y) for x, y in right), *((AXIS - x, y) for x, y in reversed(right))]
    )


def _wanted(page: Page, low: float) -> None:
    """Draw the seat that is wanted, and the nose at its end, dashed."""
    for side in (-1.0, 1.0):
        page.sketch.hidden([(AXIS + side * MOUTH, FACE), (AXIS + side * NOSE, low)])
    page.sketch.hidden([(AXIS - NOSE, low), (AXIS + NOSE, low)])
