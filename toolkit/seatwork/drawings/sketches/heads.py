"""Sketches of flat heads for questions: over their seat, not let down, and beside its axis."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

AXIS, HALF, FACE, UNDER, HOLE = 640.0, 300.0, 170.0, 40.0, 78.0
MOUTH, SLOPE = 150.0, 0.8693
"""Half of the mouth, and how far a side leans for each unit down: a cone of 82° as drawn."""

TOP, RIM, SHARP, EDGE = 345.0, 18.0, 150.0, 134.0
"""Top of the head, height of its rim, half of its sharp and of its real edge."""

HEADS = {
    "sharp": "theoretical sharp diameter of the head",
    "edge": "edge of the head",
    "angle": "included angle of head and seat",
    "mouth": "seat at the face",
    "hole": "hole",
    "below": "the head may lie below the face by",
}
BESIDE = {
    "offset": "axis of the seat beside the axis of the hole",
    "angle": "included angle",
}


def head_over_seat(labels: Mapping[str, str], wide: float = 1.0) -> Drawing:
    """Draw a flat head over a seat of its own angle, its cone drawn on to a sharp corner.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``HEADS``, as they are said; "?" for the one asked for.
    wide : float
        Mouth of the seat over the sharp diameter of the head, where both are told [-]; the
        difference is drawn larger than it is, 10 % at the least.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = "A flat head over its seat, not let down"
    page = Page(Asked(title=title, names=HEADS, labels=labels))
    mouth = MOUTH * (1.0 if wide == 1.0 else max(wide, 1.1) if wide > 1.0 else min(wide, 0.9))
    _seat(page, AXIS, mouth=mouth)
    neck = TOP - (SHARP - 66.0) / SLOPE
    half = [(EDGE, TOP), (EDGE, TOP - RIM), (66.0, neck), (66.0, FACE + 48.0)]
    head = [(AXIS + x, y) for x, y in half] + [(AXIS - x, y) for x, y in reversed(half)]
    page.sketch.steel(head)
    for side in (-1.0, 1.0):
        page.sketch.hidden(
            [(AXIS + side * EDGE, TOP), (AXIS + side * SHARP, TOP), (AXIS + side * EDGE, TOP - RIM)]
        )
    page.sketch.center((AXIS, TOP + 20.0), (AXIS, UNDER - 15.0))
    page.across("sharp", (AXIS - SHARP, AXIS + SHARP), 392.0, TOP)
    page.inside("edge", (AXIS - EDGE, AXIS + EDGE), TOP - 30.0, 0.0)
    page.inside("mouth", (AXIS - mouth, AXIS + mouth), FACE + 22.0, 0.0)
    page.inside("hole", (AXIS - HOLE, AXIS + HOLE), UNDER + 16.0, 0.0)
    page.angle("angle", (AXIS - HALF - 30.0, FACE - 60.0), (AXIS - mouth + 22.0, FACE - 25.0))
    if "below" in labels:
        page.write("below", (AXIS + HALF + 25.0, FACE), "left", "at most ", " below")
    return page.finish()


def seat_beside_axis(labels: Mapping[str, str]) -> Drawing:
    """Draw a seat that was cut beside the axis of its hole.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``BESIDE``, as they are said.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = "A seat cut beside the axis of its hole, in section"
    page = Page(Asked(title=title, names=BESIDE, labels=labels))
    shift = 34.0
    _seat(page, AXIS, shift)
    page.sketch.center((AXIS, FACE + 90.0), (AXIS, UNDER - 15.0))
    page.sketch.center((AXIS + shift, FACE + 90.0), (AXIS + shift, FACE - 130.0))
    page.across("offset", (AXIS, AXIS + shift), FACE + 110.0, FACE + 96.0, sign="")
    page.angle(
        "angle", (AXIS - HALF - 30.0, FACE - 60.0), (AXIS + shift - MOUTH + 22.0, FACE - 25.0)
    )
    return page.finish()


def _seat(page: Page, axis: float, shift: float = 0.0, mouth: float = MOUTH) -> None:
    """Draw a plate with a hole and a seat, its axis shifted."""
    floor = FACE - (mouth - HOLE) / SLOPE
    for side in (-1.0, 1.0):
        outer, rim, wall = axis + side * HALF, axis + shift + side * mouth, axis + side * HOLE
        low = floor - side * shift / SLOPE
        edge = [(outer, FACE), (rim, FACE), (wall, low), (wall, UNDER)]
        page.sketch.metal([*edge, (outer, UNDER)])
        page.sketch.edge(edge, [(wall, UNDER), (outer, UNDER)])
        page.sketch.thin([(outer, FACE), (outer, UNDER)])
    page.sketch.edge([(axis + shift - mouth, FACE), (axis + shift + mouth, FACE)])
