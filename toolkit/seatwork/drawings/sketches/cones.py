"""Sketches of cones for questions: a seat, a spot in solid metal, a head that lies below."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page
from seatwork.drawings.strokes.linework import Point

AXIS, FACE, UNDER, HALF = 640.0, 300.0, 62.0, 330.0
MOUTH, SLOPE = 170.0, 0.8693
"""Half of the mouth, and how far a side leans for each unit down: a cone of 82° as drawn."""

SHAPES = {"seat": 92.0, "spot": 0.0, "nose": 46.0}
"""Half width at which the cone ends: at its hole, in its point, at the nose of the tool."""

CONE = {
    "mouth": "diameter at the face",
    "hole": "hole",
    "later": "hole to be drilled later",
    "nose": "nose of the tool",
    "angle": "included angle",
    "depth": "depth of the cone",
    "travel": "travel from the face",
    "error": "deeper than it should be, dashed, by",
    "below": "top of the head below the face",
}


def cone_cut(labels: Mapping[str, str], shape: str = "seat", *, head: bool = False) -> Drawing:
    """Draw a cone cut into a plate, in section.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``CONE``, as they are said; "?" for the one asked for.
    shape : {"seat", "spot", "nose"}
        Whether the cone ends at a hole, in its point, or at the flat nose of a tool.
    head : bool
        Whether a flat head lies in the seat, below the face.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    titles = {
        "seat": "A countersink in section",
        "spot": "A cone cut into solid metal, in section",
        "nose": "A cone cut into solid metal by a tool with a flat nose, in section",
    }
    title = "A flat head in its seat, in section" if head else titles[shape]
    page = Page(Asked(title=title, names=CONE, labels=labels))
    narrow = SHAPES[shape]
    floor = FACE - (MOUTH - narrow) / SLOPE
    _plate(page, shape, floor)
    if head:
        _head(page, floor)
    page.sketch.center((AXIS, FACE + 30.0), (AXIS, UNDER - 22.0))
    mouth = MOUTH + (20.0 if "error" in labels else 0.0)
    page.across("mouth", (AXIS - mouth, AXIS + mouth), 385.0, FACE)
    page.inside("hole", (AXIS - narrow, AXIS + narrow), UNDER + 18.0, 24.0)
    page.across("nose", (AXIS - narrow, AXIS + narrow), UNDER + 30.0, floor)
    page.inside("later", (AXIS - 78.0, AXIS + 78.0), UNDER + 12.0, 0.0)
    page.angle("angle", (AXIS - HALF - 40.0, FACE - 150.0), _on_slope(22.0))
    starts = (AXIS + narrow, AXIS + HALF)
    for name in ("depth", "travel"):
        page.down(name, (floor, FACE), AXIS + HALF + 45.0, *starts)
    _deeper(page, floor)
    page.down("below", (FACE - 42.0, FACE), AXIS - HALF - 45.0, AXIS - 128.0, AXIS - HALF)
    return page.finish()


def _on_slope(depth: float) -> Point:
    """Return a point on the left side of the cone, so far below the face."""
    return AXIS - MOUTH + depth * SLOPE, FACE - depth


def _plate(page: Page, shape: str, floor: float) -> None:
    """Draw the metal round the cone."""
    narrow = SHAPES[shape]
    cone = [(AXIS - MOUTH, FACE), (AXIS - narrow, floor), (AXIS + narrow, floor)]
    cone.append((AXIS + MOUTH, FACE))
    corners = [(AXIS + HALF, FACE), (AXIS + HALF, UNDER), (AXIS - HALF, UNDER), (AXIS - HALF, FACE)]
    sketch = page.sketch
    sketch.metal([*cone, *corners])
    if shape == "seat":
        hole = [(AXIS + side * narrow, y) for side in (-1.0, 1.0) for y in (floor, UNDER)]
        sketch.steel([hole[0], hole[1], hole[3], hole[2]], 2.0, plain=True)
        sketch.edge([corners[2], hole[1]], [hole[3], corners[1]])
    else:
        sketch.edge(corners[1:3])
    if "later" in page.shown:
        for x in (AXIS - 78.0, AXIS + 78.0):
            sketch.hidden([(x, FACE - (MOUTH - 78.0) / SLOPE), (x, UNDER)])
    sketch.edge([corners[3], *cone, corners[0]], [cone[0], cone[3]])
    sketch.thin(corners[:2], corners[2:])


def _deeper(page: Page, floor: float) -> None:
    """Show the same cone cut a little deeper, dashed, and by how much."""
    if "error" not in page.shown:
        return
    wider, deeper = 20.0, 20.0 / SLOPE
    for side in (-1.0, 1.0):
        narrow = AXIS + side * SHAPES["seat"]
        page.sketch.hidden([(AXIS + side * (MOUTH + wider), FACE), (narrow, floor - deeper)])
    start = AXIS + SHAPES["seat"]
    page.down("error", (floor - deeper, floor), AXIS + HALF + 45.0, start, start)


def _head(page: Page, floor: float) -> None:
    """Lay a flat head into the seat, its top below the face."""
    top, shank = FACE - 42.0, 74.0
    wide = MOUTH - 42.0 * SLOPE
    neck = FACE - (MOUTH - shank) / SLOPE
    right = [(wide, top), (shank, neck), (shank, UNDER - 10.0)]
    page.sketch.steel(
        [*((AXIS + x, y) for x, y in right), *((AXIS - x, y) for x, y in reversed(right))]
    )
