"""A seat in section, drawn to a standard scale, with the bar that proves the scale."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon, Rectangle

from seatwork.cards.lettering import SIZE, UNITS, width, write
from seatwork.drawings import profiles
from seatwork.drawings.linework import Linework, Points, joined, linework_patches
from seatwork.drawings.metal import BELOW_BREAK, Window, draw_metal
from seatwork.drawings.style import CENTER_DASHES, PALETTES, POINTS, Sizes, Style
from seatwork.errors import SeatworkError
from seatwork.quantities import INCH
from seatwork.seats import Counterbore, Countersink
from seatwork.units import show_angle, show_length, show_number

SCALES = (20.0, 10.0, 5.0, 2.0, 1.0, 0.5, 0.2, 0.1)
"""Scales of ISO 5455, and 20:1; largest first."""

MM = UNITS / INCH
PRINT = Style(
    colors=PALETTES["print"],
    sizes=Sizes(text=SIZE, large=16.0, edge=2.6, thin=1.1, contact=3.0, arrow=11.0, hatch=11.0),
)
BARS = {
    "metric": (0.5, 1, 2, 5, 10, 20, 50),
    "inch": tuple(INCH * part for part in (0.025, 0.05, 0.1, 0.25, 0.5, 1.0, 2.0)),
}
SIDE = 118.0
ABOVE, BELOW = 68.0, 66.0
PLATE = 34.0
RISE = 26.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """What the section shows.

    Parameters
    ----------
    diameter, hole_diameter, depth : float
        Sizes drawn [mm]; diameter and depth are those of a plain hole where there is no seat.
    wall : ndarray
        Outline right of the axis, from the face down, its last corner at any depth [mm].
    cone : Countersink or None
        Cone whose included angle is dimensioned.
    dimensioned : bool
        Whether diameter and depth are written on it.
    """

    diameter: float
    hole_diameter: float
    depth: float
    wall: Points
    cone: Countersink | None = None
    dimensioned: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """A rectangle on the page [1/100 in], origin of the page at the lower left."""

    left: float
    top: float
    wide: float
    high: float


def of_countersink(seat: Countersink) -> Shown:
    """Return what to show of a countersink."""
    return Shown(
        diameter=seat.diameter,
        hole_diameter=seat.hole_diameter,
        depth=seat.depth,
        wall=profiles.countersink_wall(seat, -2 * seat.depth),
        cone=seat,
    )


def of_counterbore(seat: Counterbore, *, dimensioned: bool = True) -> Shown:
    """Return what to show of a counterbore."""
    return Shown(
        diameter=seat.diameter,
        hole_diameter=seat.hole_diameter,
        depth=seat.depth,
        wall=profiles.counterbore_wall(seat, -2 * seat.depth),
        dimensioned=dimensioned,
    )


def of_hole(diameter: float) -> Shown:
    """Return what to show of a plain hole [mm]."""
    half = diameter / 2
    wall = np.array([(half, 0.0), (half, -diameter)])
    return Shown(diameter=diameter, hole_diameter=diameter, depth=0.0, wall=wall, dimensioned=False)


def pick_scale(shown: Shown, place: Place) -> float:
    """Return the largest standard scale at which the section fits its place [-].

    Raises
    ------
    SeatworkError
        If the seat is too large for the smallest scale.
    """
    wide = (place.wide - SIDE - 2 * PLATE) / MM
    deep = (place.high - ABOVE - BELOW - RISE) / MM
    for scale in SCALES:
        if shown.diameter * scale <= wide and shown.depth * scale <= deep:
            return scale
    raise SeatworkError(
        f"{shown.diameter:.4g} mm", "it is too large for the drawing on a card", "check the note"
    )


def draw(axes: Axes, place: Place, shown: Shown, system: str) -> str:
    """Draw the section to scale, dimensioned, with its scale bar.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    place : Place
        Where it goes.
    shown : Shown
        What to show.
    system : {"inch", "metric"}
        Units of the dimensions.

    Returns
    -------
    str
        What is written on it.
    """
    scale = pick_scale(shown, place)
    half = min((place.wide - SIDE) / 2, shown.diameter * scale * MM / 2 + 2.2 * PLATE)
    window = Window(
        axis=place.left + 6.0 + half,
        face=place.top - ABOVE,
        left=place.left + 6.0,
        right=place.left + 6.0 + 2 * half,
        bottom=place.top - place.high + BELOW,
        scale=scale * MM,
    )
    draw_metal(axes, PRINT, window)
    _edges(axes, shown, window)
    work = Linework(PRINT.sizes)
    said = [*_dimensions(axes, work, shown, window, system), _bar(axes, window, scale, system)]
    for patch, path in zip(linework_patches(axes, PRINT), (work.lines, work.heads), strict=True):
        patch.set_path(path)
        patch.set_zorder(6.0)
    return "; ".join(said)


def _edges(axes: Axes, shown: Shown, window: Window) -> None:
    """Cut the hole out of the metal and draw every visible edge."""
    wall = shown.wall.copy()
    wall[-1, 1] = window.deepest - BELOW_BREAK / window.scale
    opening = window.to_page(profiles.whole(wall))
    axes.add_artist(Polygon(opening, facecolor="white", linewidth=0, zorder=2.0))
    wall[-1, 1] = window.deepest
    across = [np.array([(-x, y), (x, y)]) for x, y in shown.wall[1:-1] if y < 0.0]
    lines = [window.to_page(line) for line in (*profiles.left_and_right(wall), *across)]
    face = np.array([(window.left, window.face), (window.right, window.face)])
    edge = PRINT.sizes.edge * POINTS
    axes.add_artist(Line2D(*joined([*lines, face]).T, color="black", linewidth=edge, zorder=2.5))
    middle = np.array([(window.axis, window.face + 14), (window.axis, window.bottom - 10)])
    thin: dict[str, Any] = {"linewidth": PRINT.sizes.thin * POINTS, "linestyle": CENTER_DASHES}
    axes.add_artist(Line2D(*middle.T, color="black", zorder=3.5, **thin))


def _dimensions(axes: Axes, work: Linework, shown: Shown, window: Window, system: str) -> list[str]:
    said = [_hole(axes, work, shown, window, system)]
    if not shown.dimensioned:
        return said
    return [*said, *_seat(axes, work, shown, window, system)]


def _seat(axes: Axes, work: Linework, shown: Shown, window: Window, system: str) -> list[str]:
    line = window.face + 34.0
    ends = [window.spot(side * shown.diameter / 2, 0.0) for side in (-1, 1)]
    for end in ends:
        work.extension(end, (end[0], line))
    work.dimension(*((x, line) for x, _ in ends))
    across = f"⌀ {show_length(shown.diameter, system)}"
    if shown.cone is not None:
        across += f" X {show_angle(shown.cone.included_angle)}"
    _middled(axes, window.axis, line + 9.0, across, left=window.left)
    floor = window.spot(shown.hole_diameter / 2, -shown.depth)
    beside = window.right + 16.0
    work.extension((window.right, window.face), (beside, window.face))
    work.extension(floor, (beside, floor[1]))
    work.dimension((beside, floor[1]), (beside, window.face))
    deep = f"↧ {show_length(shown.depth, system)}"
    write(axes, beside + 9.0, (window.face + floor[1]) / 2 - 5.0, deep)
    return [across, deep]


def _hole(axes: Axes, work: Linework, shown: Shown, window: Window, system: str) -> str:
    ends = [window.spot(side * shown.hole_diameter / 2, window.deepest) for side in (-1, 1)]
    line = window.bottom - 20.0
    for end in ends:
        work.extension(end, (end[0], line))
    work.dimension(*((x, line) for x, _ in ends))
    said = f"hole ⌀ {show_length(shown.hole_diameter, system)}"
    half = shown.hole_diameter / 2 * window.scale
    right = window.axis + half + (10.0 if 2 * half > 3 * PRINT.sizes.arrow else 30.0)
    write(axes, right, line - 5.0, said)
    return said


def _middled(axes: Axes, x: float, y: float, words: str, *, left: float) -> None:
    start = max(left, x - width(words) * UNITS / 2)
    write(axes, start, y, words)


def _bar(axes: Axes, window: Window, scale: float, system: str) -> str:
    """Draw the scale bar: a round length of the part, half of it filled."""
    fits = [length for length in BARS[system] if length * window.scale <= 120.0]
    length = fits[-1] if fits else BARS[system][0]
    long, low = length * window.scale, window.bottom - BELOW + 6.0
    for start, color in ((0.0, "black"), (0.5, "white")):
        corner = (window.left + start * long, low)
        half = Rectangle(corner, long / 2, 9.0, facecolor=color, edgecolor="black", linewidth=0.8)
        half.set_zorder(7.0)
        axes.add_artist(half)
    ratio = f"{scale:g}:1" if scale >= 1 else f"1:{1 / scale:g}"
    unit_name = "in" if system == "inch" else "mm"
    shown = show_number(length / INCH if system == "inch" else length, 3)
    said = f"{shown} {unit_name}, scale {ratio}"
    write(axes, window.left + long + 8.0, low, said)
    return said
