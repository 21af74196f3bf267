"""A sketch of a cap screw in its counterbore for questions."""

from collections.abc import Collection, Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

AXIS, HALF, FACE, UNDER = 640.0, 240.0, 340.0, 125.0
END, THREADED, DRILLED, POINT, BACK = 75.0, 58.0, 44.0, 29.0, 8.0
"""Levels in a frame: end of the screw, of its thread, of the drilled hole and of its point."""

FLOOR, TOP, HEAD = 205.0, 312.0, 225.0
"""Levels of the floor of the bore, of the head's top, and of its underside on a washer."""

BORE, WRENCH, WASHER, HEAD_HALF, HOLE, SHANK = 150.0, 132.0, 118.0, 96.0, 58.0, 48.0
BORES = {
    "bore": "diameter of the bore",
    "wrench": "wrench socket",
    "washer_wide": "washer",
    "head": "width of the head",
    "hole": "hole",
    "thread": "thread",
    "below": "top of the head below the face",
    "height": "height of the head",
    "washer": "thickness of the washer",
    "depth": "depth of the bore",
    "floor": "plate left under the bore",
    "thickness": "thickness of the plate",
    "engagement": "reach into the frame",
    "full": "full thread in the frame",
    "length": "length under the head",
}
PILOT = {"hole": "hole", "pilot": "pilot"}


def screw_in_bore(labels: Mapping[str, str], parts: Collection[str] = ("screw",)) -> Drawing:
    """Draw a plate with a counterbore in section, and what lies in it.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``BORES``, as they are said; "?" for the one asked for.
    parts : collection of str
        Any of "screw", "washer", "wrench" and "frame"; an empty bore without them.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = f"A counterbore in section{' with ' + ', '.join(parts) if parts else ', empty'}"
    page = Page(Asked(title=title, names=BORES, labels=labels))
    seat = HEAD if "washer" in parts else FLOOR
    _plate(page, "frame" in parts)
    if "screw" in parts:
        _screw(page, seat, END if "frame" in parts else UNDER - 30.0)
    if "washer" in parts:
        for side in (-1.0, 1.0):
            inner, outer = AXIS + side * HOLE, AXIS + side * WASHER
            page.sketch.steel([(inner, FLOOR), (outer, FLOOR), (outer, HEAD), (inner, HEAD)])
    if "wrench" in parts:
        _wrench(page)
    page.sketch.center((AXIS, FACE + 40.0), (AXIS, 4.0 if "frame" in parts else 25.0))
    _widths(page)
    _heights(page, seat)
    return page.finish()


def pilot_in_hole(labels: Mapping[str, str]) -> Drawing:
    """Draw a counterbore tool, its pilot in the hole that guides it, in section.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``PILOT``, as they are said; "?" for the one asked for.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = "A counterbore tool with its pilot in the hole, in section"
    page = Page(Asked(title=title, names=PILOT, labels=labels))
    face, low = 230.0, 110.0
    for side in (-1.0, 1.0):
        outer, hole = AXIS + side * HALF, AXIS + side * HOLE
        page.sketch.metal([(outer, face), (hole, face), (hole, low), (outer, low)])
        page.sketch.edge([(outer, face), (hole, face), (hole, low), (outer, low)])
        page.sketch.thin([(outer, face), (outer, low)])
    tool = [(WRENCH, 360.0), (WRENCH, face + 22.0), (SHANK, face + 22.0), (SHANK, low + 30.0)]
    page.sketch.steel(
        [*((AXIS + x, y) for x, y in tool), *((AXIS - x, y) for x, y in reversed(tool))]
    )
    page.sketch.center((AXIS, 385.0), (AXIS, 70.0))
    page.across("hole", (AXIS - HOLE, AXIS + HOLE), 55.0, low)
    page.inside("pilot", (AXIS - SHANK, AXIS + SHANK), face - 40.0, 0.0)
    return page.finish()


def _plate(page: Page, framed: bool) -> None:
    """Draw the plate with bore and hole and, under it, the tapped frame."""
    for side in (-1.0, 1.0):
        outer, bore, hole = (AXIS + side * reach for reach in (HALF, BORE, HOLE))
        wall = [(outer, FACE), (bore, FACE), (bore, FLOOR), (hole, FLOOR), (hole, UNDER)]
        page.sketch.metal([*wall, (outer, UNDER)])
        page.sketch.edge(wall, [(hole, UNDER), (outer, UNDER)])
        page.sketch.thin([(outer, FACE), (outer, UNDER)])
        if framed:
            _frame(page, side)
    page.sketch.edge([(AXIS - BORE, FACE), (AXIS + BORE, FACE)])
    page.sketch.edge([(AXIS - HOLE, FLOOR), (AXIS + HOLE, FLOOR)])


def _frame(page: Page, side: float) -> None:
    """Draw one side of the frame with its blind thread, the drilled hole and its point."""
    outer, thread, drilled = (AXIS + side * reach for reach in (HALF, SHANK, SHANK - 9.0))
    bore = [(drilled, DRILLED), (AXIS, POINT)]
    page.sketch.metal([(outer, UNDER), (drilled, UNDER), *bore, (AXIS, BACK), (outer, BACK)])
    page.sketch.edge([(drilled, END), *bore], [(drilled, DRILLED), (AXIS, DRILLED)])
    page.sketch.edge([(drilled, THREADED), (thread, THREADED)])
    page.sketch.thin([(thread, END), (thread, THREADED)])
    page.sketch.thin([(outer, UNDER), (outer, BACK), (AXIS, BACK)])


def _screw(page: Page, seat: float, end: float) -> None:
    page.sketch.steel(
        [
            (AXIS - HEAD_HALF, TOP),
            (AXIS + HEAD_HALF, TOP),
            (AXIS + HEAD_HALF, seat),
            (AXIS + SHANK, seat),
            (AXIS + SHANK, end),
            (AXIS - SHANK, end),
            (AXIS - SHANK, seat),
            (AXIS - HEAD_HALF, seat),
        ]
    )


def _wrench(page: Page) -> None:
    """Outline the wrench socket over the head."""
    for side in (-1.0, 1.0):
        outer, inner = AXIS + side * WRENCH, AXIS + side * (HEAD_HALF + 4.0)
        low = HEAD + 6.0
        page.sketch.hidden([(outer, FACE + 28.0), (outer, low), (inner, low), (inner, FACE + 28.0)])


def _widths(page: Page) -> None:
    """Dimension what goes across, from the bore above down to the hole below."""
    page.across("bore", (AXIS - BORE, AXIS + BORE), 388.0, FACE)
    page.inside("wrench", (AXIS - WRENCH, AXIS + WRENCH), FACE + 14.0, 0.0)
    page.inside("head", (AXIS - HEAD_HALF, AXIS + HEAD_HALF), 270.0, 0.0, sign="")
    page.across("washer_wide", (AXIS - WASHER, AXIS + WASHER), 55.0, FLOOR)
    page.across("hole", (AXIS - HOLE, AXIS + HOLE), 55.0, UNDER)
    page.across("thread", (AXIS - SHANK, AXIS + SHANK), 55.0, UNDER - 30.0)


def _heights(page: Page, seat: float) -> None:
    """Dimension what goes down: the head on the left, the plate on the right."""
    left, right, far = AXIS - HALF - 45.0, AXIS + HALF + 45.0, AXIS + HALF + 190.0
    head, edge, hole = AXIS - HEAD_HALF, AXIS + HALF, AXIS + BORE
    page.down("below", (TOP, FACE), left, head, AXIS - HALF)
    page.down("height", (seat, TOP), left, head, head)
    page.down("washer", (FLOOR, HEAD), left, AXIS - WASHER, head)
    page.down("depth", (FLOOR, FACE), right, hole, edge)
    page.down("floor", (UNDER, FLOOR), right, edge, hole)
    page.down("thickness", (UNDER, FACE), far, edge, edge)
    page.down("engagement", (END, UNDER), right, AXIS + SHANK, edge)
    page.down("full", (THREADED, UNDER), right, AXIS + SHANK, edge)
    page.down("length", (END, seat), left, AXIS - SHANK, head)
