"""A sketch of a straightedge over a head, with two feeler leaves, for questions."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

AXIS, FACE, UNDER, HALF, HOLE, SHANK = 640.0, 230.0, 50.0, 330.0, 52.0, 42.0
HEAD, AMOUNT, BAR, SLOPE = 150.0, 34.0, 44.0, 0.8693
"""Half of the head, how far it lies off the face, height of the straightedge, as drawn."""

LEAVES = {"goes": "leaf that goes", "stops": "leaf that does not go"}
BESIDE = {"goes": "leaves on which it rocks", "stops": "leaves on which it clears the head"}


def feelers(labels: Mapping[str, str], *, proud: bool) -> Drawing:
    """Draw a straightedge over a flat head and say which two leaves were tried.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``LEAVES``, as they are said.
    proud : bool
        Whether the straightedge lies on leaves beside the head, or over the head.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = f"A straightedge {'on two equal leaves beside' if proud else 'over'} a flat head"
    page = Page(Asked(title=title, names=BESIDE if proud else LEAVES, labels=labels))
    height = AMOUNT if proud else -AMOUNT
    _seat(page, height)
    rest = FACE + (AMOUNT + 3.0 if proud else 0.0)
    reach = HALF - 40.0
    page.sketch.steel(
        [
            (AXIS - reach, rest),
            (AXIS + reach, rest),
            (AXIS + reach, rest + BAR),
            (AXIS - reach, rest + BAR),
        ],
        plain=True,
    )
    if proud:
        for side in (-1.0, 1.0):
            inner, outer = AXIS + side * (HEAD + 45.0), AXIS + side * (reach + 40.0)
            page.sketch.steel([(inner, FACE), (outer, FACE), (outer, rest), (inner, rest)])
    _leaves(page)
    return page.finish()


def _leaves(page: Page) -> None:
    """Write which leaves were tried, left and right above the straightedge."""
    for name, place, align in (("goes", 250.0, "center"), ("stops", 1030.0, "center")):
        if name in page.shown:
            page.sketch.write(place, 390.0, page.shown.names[name], ha=align)
            page.write(name, (place, 358.0), align)


def _seat(page: Page, height: float) -> None:
    """Draw the plate, its seat and the head so far above the face, in section."""
    mouth = HEAD - height * SLOPE
    floor = FACE - (mouth - HOLE) / SLOPE
    for side in (-1.0, 1.0):
        outer, lip, wall = (AXIS + side * reach for reach in (HALF, mouth, HOLE))
        edge = [(outer, FACE), (lip, FACE), (wall, floor), (wall, UNDER)]
        page.sketch.metal([*edge, (outer, UNDER)])
        page.sketch.edge(edge, [(wall, UNDER), (outer, UNDER)])
        page.sketch.thin([(outer, FACE), (outer, UNDER)])
    top, neck = FACE + height, FACE + height - (HEAD - SHANK) / SLOPE
    right = [(HEAD, top), (SHANK, neck), (SHANK, UNDER - 12.0)]
    page.sketch.steel(
        [*((AXIS + x, y) for x, y in right), *((AXIS - x, y) for x, y in reversed(right))]
    )
    page.sketch.center((AXIS, FACE - AMOUNT - 10.0), (AXIS, 12.0))
