"""Sketches of the edge of a hole for questions: broken, or chamfered before it is tapped."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

AXIS, FACE, UNDER, WALL, LEG, HALF = 640.0, 285.0, 70.0, 120.0, 52.0, 270.0
WALLS, MOUTHS = (AXIS - WALL, AXIS + WALL), (AXIS - WALL - LEG, AXIS + WALL + LEG)
EDGE = {
    "leg": "break along each face",
    "hole": "hole",
    "mouth": "mouth in the face",
}
CHAMFER = {
    "thread": "thread to come",
    "hole": "drilled hole",
    "mouth": "mouth of the chamfer",
    "angle": "included angle",
    "depth": "depth of the chamfer",
}


def broken_edge(labels: Mapping[str, str]) -> Drawing:
    """Draw a hole with its edge broken, in section.

    Parameters
    ----------
    labels : mapping of str to str
        All sizes by the names of ``EDGE``, as they are said; "?" for the one asked for.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    page = Page(Asked(title="A hole with its edge broken, in section", names=EDGE, labels=labels))
    _plate(page)
    page.across("mouth", MOUTHS, 385.0, FACE)
    page.inside("hole", WALLS, UNDER + 30.0, 26.0)
    page.sketch.work.extension((WALLS[0], FACE - LEG), (WALLS[0], FACE + 40.0))
    page.sketch.work.dimension((MOUTHS[0], FACE + 40.0), (WALLS[0], FACE + 40.0))
    page.write("leg", (MOUTHS[0] - 60.0, FACE + 40.0), "right")
    page.down("leg", (FACE - LEG, FACE), AXIS + HALF + 40.0, WALLS[1], MOUTHS[1])
    return page.finish()


def thread_chamfer(labels: Mapping[str, str]) -> Drawing:
    """Draw the chamfer of a hole to be tapped, the thread to come dashed, in section.

    Parameters
    ----------
    labels : mapping of str to str
        All sizes by the names of ``CHAMFER``, as they are said; "?" for the one asked for.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = "A drilled hole with its chamfer, not yet tapped, in section"
    page = Page(Asked(title=title, names=CHAMFER, labels=labels))
    _plate(page)
    threads = (WALLS[0] - 22.0, WALLS[1] + 22.0)
    for x in threads:
        page.sketch.hidden([(x, FACE - LEG + 22.0), (x, UNDER)])
    page.across("thread", threads, 42.0, UNDER)
    page.inside("hole", WALLS, UNDER + 30.0, 26.0)
    page.across("mouth", MOUTHS, 385.0, FACE)
    page.angle("angle", (AXIS - HALF - 40.0, FACE - 90.0), (WALLS[0] - LEG / 2, FACE - LEG / 2))
    page.down("depth", (FACE - LEG, FACE), AXIS + HALF + 40.0, WALLS[1], MOUTHS[1])
    return page.finish()


def _plate(page: Page) -> None:
    """Draw the plate on both sides of a hole with a chamfer at its mouth."""
    for side in (-1.0, 1.0):
        outer, mouth, wall = (AXIS + side * reach for reach in (HALF, WALL + LEG, WALL))
        slope = [(outer, FACE), (mouth, FACE), (wall, FACE - LEG), (wall, UNDER)]
        page.sketch.metal([*slope, (outer, UNDER)])
        page.sketch.edge(slope, [(wall, UNDER), (outer, UNDER)])
        page.sketch.thin([(outer, FACE), (outer, UNDER)])
    page.sketch.edge([(x, FACE) for x in MOUTHS], [(x, FACE - LEG) for x in WALLS])
    page.sketch.center((AXIS, FACE + 30.0), (AXIS, UNDER - 25.0))
