"""A sketch of gage balls in a seat for questions."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page
from seatwork.drawings.strokes.linework import arc

FACE, UNDER, MOUTH, HOLE, HALF = 235.0, 62.0, 150.0, 66.0, 215.0
SLOPE, SINE = 0.8693, 0.6561
"""How far a side leans for each unit down, and along the slope: a cone of 82° as drawn."""

POINT = FACE - MOUTH / SLOPE
SMALL, LARGE = 96.0, 122.0
"""Radii of the balls as drawn: the small one just lies on the cone, not on the hole's edge."""

BALLS = {
    "mouth": "diameter at the face",
    "hole": "hole",
    "angle": "included angle",
    "ball": "ball",
    "top": "top of the ball above the face",
    "small": "small ball",
    "small_top": "top of the small ball above the face",
    "large": "large ball",
    "large_top": "top of the large ball above the face",
}


def gage_balls(labels: Mapping[str, str]) -> Drawing:
    """Draw a gage ball in a seat, or two, one after the other.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``BALLS``, as they are said; "?" for the one asked for.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    two = "small" in labels
    title = f"{'Two gage balls, one after the other,' if two else 'A gage ball'} in a seat"
    page = Page(Asked(title=title, names=BALLS, labels=labels))
    if two:
        _seat(page, 430.0, SMALL, "small", "small_top")
        _seat(page, 930.0, LARGE, "large", "large_top")
    else:
        _seat(page, 640.0, LARGE, "ball", "top")
        page.inside("hole", (640.0 - HOLE, 640.0 + HOLE), UNDER + 14.0, 0.0)
    axis = 430.0 if two else 640.0
    tip = (axis - MOUTH + 30.0 * SLOPE, FACE - 30.0)
    page.angle("angle", (axis - HALF - 28.0, FACE - 130.0), tip)
    if "mouth" in labels:
        page.across("mouth", (axis - MOUTH, axis + MOUTH), 390.0, FACE)
    return page.finish()


def _seat(page: Page, axis: float, radius: float, ball: str, top: str) -> None:
    """Draw a seat with a ball in it, and how far the ball stands above the face."""
    sketch, center = page.sketch, POINT + radius / SINE
    floor = POINT + HOLE / SLOPE
    for side in (-1.0, 1.0):
        outer, mouth, wall = (axis + side * reach for reach in (HALF, MOUTH, HOLE))
        edge = [(outer, FACE), (mouth, FACE), (wall, floor), (wall, UNDER)]
        sketch.metal([*edge, (outer, UNDER)])
        sketch.edge(edge, [(wall, UNDER), (outer, UNDER)])
        sketch.thin([(outer, FACE), (outer, UNDER)])
    sketch.steel(arc((axis, center), radius, 0.0, 360.0))
    sketch.center((axis, center + radius + 18.0), (axis, UNDER - 20.0))
    page.inside(ball, (axis - radius, axis + radius), center, 0.0)
    page.down(top, (FACE, center + radius), axis + HALF - 30.0, axis + MOUTH, axis)
