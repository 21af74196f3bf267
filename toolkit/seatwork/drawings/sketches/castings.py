"""Sketches of spotfaces on castings for questions: a sloped pad, a round boss."""

from collections.abc import Mapping

import numpy as np

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page
from seatwork.drawings.strokes.linework import arc

LEFT, LOW_RIM, AXIS, HIGH_RIM, RIGHT = 420.0, 580.0, 780.0, 980.0, 1140.0
FLAT, UNDER, SKIN, WALL = 205.0, 75.0, 30.0, 82.0
"""Level of the flat and of the underside, allowance for scale, half a hole."""

RISE, DRAFT = 0.22, 12.4
"""The slope as drawn: its rise for each unit across, and its angle in degrees."""

PAD = {
    "slope": "draft of the face",
    "diameter": "spotface",
    "hole": "hole",
    "scale": "cut deeper than clean, at the low side",
    "axis": "from the sloped face down to the flat, at the axis",
    "touch": "travel of the cutter from its first touch on the high side",
    "thickness": "flange at the low side before the cut",
    "left": "flange left there",
}
BOSS = {
    "boss": "diameter of the boss",
    "diameter": "width of the flat",
    "depth": "from the crown down to the flat",
}


def sloped_pad(labels: Mapping[str, str], *, cut: bool = True) -> Drawing:
    """Draw a sloped pad with its spotface in section.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``PAD``, as they are said; "?" for the one asked for.
    cut : bool
        Whether hole and spotface are cut; else they are only outlined.

    Returns
    -------
    Drawing
        With a scale allowance, the flat lies that much under the low side of the face.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    title = "A sloped pad with its spotface in section"
    title = title if cut else "A sloped pad with hole and flat outlined, in section"
    page = Page(Asked(title=title, names=PAD, labels=labels))
    skin = SKIN if "scale" in labels else 0.0
    _pad(page, skin, cut)
    page.across("diameter", (LOW_RIM, HIGH_RIM), 395.0, _face(HIGH_RIM, skin))
    page.inside("hole", (AXIS - WALL, AXIS + WALL), UNDER + 20.0, 24.0)
    _slope(page, skin)
    page.down("axis", (FLAT, _face(AXIS, skin)), LOW_RIM - 110.0, LOW_RIM, AXIS)
    page.down("touch", (FLAT, _face(HIGH_RIM, skin)), AXIS + 130.0, AXIS + 130.0, HIGH_RIM)
    page.down("left", (UNDER, FLAT), LEFT - 40.0, LEFT, LOW_RIM)
    page.down("thickness", (UNDER, FLAT + skin), LEFT - 110.0, LEFT, LOW_RIM)
    if skin:
        _skin(page, LOW_RIM - 55.0)
    return page.finish()


def _face(x: float, skin: float) -> float:
    """Return the level of the sloped face."""
    return FLAT + skin + RISE * (x - LOW_RIM)


def _pad(page: Page, skin: float, cut: bool) -> None:
    """Draw the metal on both sides of the hole, and what was or will be cut away."""
    sketch = page.sketch
    ends = [(x, _face(x, skin)) for x in (LEFT, LOW_RIM, HIGH_RIM, RIGHT)]
    floor = [(LOW_RIM, FLAT), (AXIS - WALL, FLAT)], [(AXIS + WALL, FLAT), (HIGH_RIM, FLAT)]
    walls = [[(AXIS + side, FLAT), (AXIS + side, UNDER)] for side in (-WALL, WALL)]
    edges = [[ends[1], *floor[0]], [*floor[1], ends[2]], [floor[0][1], floor[1][0]], *walls]
    if cut:
        left, right = [*ends[:2], *floor[0], walls[0][1], (LEFT, UNDER)], [*floor[1], *ends[2:]]
        sketch.metal(left)
        sketch.metal([*right, (RIGHT, UNDER), walls[1][1]])
        sketch.edge(ends[:2], ends[2:], *edges)
        sketch.hidden(ends[1:3])
    else:
        sketch.metal([ends[0], ends[3], (RIGHT, UNDER), (LEFT, UNDER)])
        sketch.edge([ends[0], ends[3]])
        sketch.hidden(*edges)
    sketch.edge([(LEFT, UNDER), (RIGHT, UNDER)])
    sketch.thin([ends[0], (LEFT, UNDER)], [ends[3], (RIGHT, UNDER)])
    sketch.center((AXIS, _face(AXIS, skin) + 45.0), (AXIS, UNDER - 25.0))


def _skin(page: Page, x: float) -> None:
    """Dimension the allowance for scale at the low side, its label above the face."""
    for level in (FLAT, FLAT + SKIN):
        page.sketch.work.extension((LOW_RIM, level), (x, level))
    page.sketch.work.dimension((x, FLAT), (x, FLAT + SKIN))
    page.write("scale", (x, FLAT + SKIN + 62.0), "center")


def _slope(page: Page, skin: float) -> None:
    """Mark the slope at the high end of the face, against a level line."""
    if "slope" not in page.shown:
        return
    apex = (RIGHT, _face(RIGHT, skin))
    page.sketch.thin([apex, (RIGHT - 140.0, apex[1])], arc(apex, 125.0, 180.0, 180.0 + DRAFT))
    page.write("slope", (RIGHT - 62.0, apex[1] + 24.0), "center")


def round_boss(labels: Mapping[str, str]) -> Drawing:
    """Draw a round boss with the flat of a spotface across its side, in section.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``BOSS``, as they are said; "?" for the one asked for.

    Returns
    -------
    Drawing
        The arc that was cut away is dashed.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    page = Page(Asked(title="A round boss, spotfaced, in section", names=BOSS, labels=labels))
    middle, level, radius, half, wall = 640.0, 178.0, 170.0, 118.0, 34.0
    flat = level + float(np.sqrt(radius**2 - half**2))
    turn = float(np.degrees(np.arcsin(half / radius)))
    under = arc((middle, level), radius, 90.0 + turn, 450.0 - turn)
    page.sketch.metal(under)
    low = level - float(np.sqrt(radius**2 - wall**2))
    reach = float(np.degrees(np.arcsin(wall / radius)))
    hole = [(middle + side, y) for side in (-wall, wall) for y in (flat, low)]
    page.sketch.steel([hole[0], hole[1], hole[3], hole[2]], 2.0, plain=True)
    page.sketch.edge(
        arc((middle, level), radius, 90.0 + turn, 270.0 - reach),
        arc((middle, level), radius, 270.0 + reach, 450.0 - turn),
        [(middle - half, flat), (middle + half, flat)],
    )
    page.sketch.hidden(arc((middle, level), radius, 90.0 - turn, 90.0 + turn))
    page.sketch.center((middle, level + radius + 22.0), (middle, level - radius - 6.0))
    page.across("diameter", (middle - half, middle + half), 392.0, flat)
    page.down("depth", (flat, level + radius), middle + 240.0, middle + half, middle)
    ends = (middle - radius, middle + radius)
    page.inside("boss", ends, level - 40.0, 0.0)
    return page.finish()
