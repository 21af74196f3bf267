"""A sketch of two trial cuts on scrap and of the stop between them, for questions."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

FACE, UNDER, HALF, HOLE, SHANK, SLOPE = 285.0, 80.0, 150.0, 38.0, 30.0, 0.8693
HEAD, UP, DOWN = 118.0, 36.0, 26.0
"""Half of the head, how far it stands proud and then lies below, as drawn."""

FIRST, ROD, NEXT, NUT = 390.0, 650.0, 950.0, 300.0
"""Places of the first cut, the stop and the next cut; level of the stop before."""

TRIALS = {
    "proud": "head proud on the first scrap",
    "below": "head to lie below",
    "angle": "included angle",
    "move": "the stop is set deeper by",
}


def trial_cuts(labels: Mapping[str, str]) -> Drawing:
    """Draw a head proud on scrap, the head as it is to lie, and the stop between the two.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``TRIALS``, as they are said; "?" for the one asked for.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = "A head in a first cut on scrap, and as it is to lie, in section"
    page = Page(Asked(title=title, names=TRIALS, labels=labels))
    _cut(page, FIRST, UP)
    _cut(page, NEXT, -DOWN)
    left, right = FIRST - HALF, NEXT + HALF
    page.down("proud", (FACE, FACE + UP), left - 28.0, left, FIRST - HEAD)
    page.down("below", (FACE - DOWN, FACE), right + 28.0, NEXT + HEAD, right)
    slope = (FIRST - HEAD + (UP + 35.0) * SLOPE, FACE - 35.0)
    page.angle("angle", (FIRST - HALF - 20.0, 170.0), slope)
    _stop(page)
    return page.finish()


def _cut(page: Page, axis: float, height: float) -> None:
    """Draw a seat with its head so far above the face, in section."""
    mouth = HEAD - height * SLOPE
    floor = FACE - (mouth - HOLE) / SLOPE
    for side in (-1.0, 1.0):
        outer, lip, wall = (axis + side * reach for reach in (HALF, mouth, HOLE))
        edge = [(outer, FACE), (lip, FACE), (wall, floor), (wall, UNDER)]
        page.sketch.metal([*edge, (outer, UNDER)])
        page.sketch.edge(edge, [(wall, UNDER), (outer, UNDER)])
        page.sketch.thin([(outer, FACE), (outer, UNDER)])
    top, neck = FACE + height, FACE + height - (HEAD - SHANK) / SLOPE
    right = [(HEAD, top), (SHANK, neck), (SHANK, UNDER - 15.0)]
    page.sketch.steel(
        [*((axis + x, y) for x, y in right), *((axis - x, y) for x, y in reversed(right))]
    )
    page.sketch.center((axis, FACE + 65.0), (axis, UNDER - 30.0))


def _stop(page: Page) -> None:
    """Draw the stop on its rod as it was, and dashed where it goes."""
    page.sketch.edge([(ROD, 90.0), (ROD, 375.0)])
    deep = NUT - UP - DOWN
    for level, draw in ((NUT, page.sketch.steel), (deep, page.sketch.hidden)):
        corners = [
            (ROD - 36.0, level),
            (ROD + 36.0, level),
            (ROD + 36.0, level + 22.0),
            (ROD - 36.0, level + 22.0),
        ]
        draw([*corners, corners[0]])
    page.down("move", (deep, NUT), ROD + 62.0, ROD + 36.0, ROD + 36.0)
    page.sketch.write(ROD, 62.0, "stop", ha="center")
