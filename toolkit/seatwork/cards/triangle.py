"""The triangle of a seat, small, in the corner of its card: across, half the angle, down."""

from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D

from seatwork.cards.lettering import UNITS, width, write
from seatwork.cards.to_scale import PRINT, Place
from seatwork.drawings.parts.triangle_window import bracket
from seatwork.drawings.strokes.linework import arc, joined
from seatwork.drawings.strokes.style import HIDDEN_DASHES, POINTS
from seatwork.seats import Countersink, Triangle
from seatwork.units import show_angle, show_length

HIGH = 1.06
"""What it takes [in]."""

WIDE, DEEP = 78.0, 62.0
"""Most across and down may take [page units]."""

LEFT, ABOVE, FAN = 122.0, 26.0, 20.0
"""Where down stands, what is over the triangle, and the radius of the arc [page units]."""


def draw(axes: Axes, place: Place, seat: Countersink, system: str) -> str:
    """Draw the triangle with its three numbers.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    place : Place
        Where it goes.
    seat : Countersink
        The cone.
    system : {"inch", "metric"}
        Units of the numbers.

    Returns
    -------
    str
        What is written on it.
    """
    its = Triangle(
        wide=seat.diameter, narrow=seat.hole_diameter, included_angle=seat.included_angle
    )
    scale = min(WIDE / its.across, DEEP / its.down)
    left, top = place.left + LEFT, place.top - ABOVE
    right, low = left + its.across * scale, top - its.down * scale
    edge, thin = PRINT.sizes.edge * POINTS, PRINT.sizes.thin * POINTS
    fan = arc((left, low), min(FAN, 0.6 * (top - low)), 90.0, 90.0 - its.half_angle)
    _line(axes, bracket((left, top), (right, top)), 1.6 * edge)
    _line(axes, [(left, top), (left, low)], 1.3 * edge, linestyle=HIDDEN_DASHES)
    _line(axes, joined([fan, np.array([(right, top), (left, low)])]), thin)
    return _written(axes, its, (left, right, low, top), system)


def _written(
    axes: Axes, its: Triangle, sides: tuple[float, float, float, float], system: str
) -> str:
    """Write the three numbers at their lines; return them."""
    left, right, low, top = sides
    across = f"across {show_length(its.across, system)}"
    down = f"down {show_length(its.down, system)}"
    half = f"half of {show_angle(its.included_angle)}: {show_angle(its.half_angle, 2)}"
    write(axes, left - 4.0, top + 13.0, across)
    write(axes, left - 9.0 - width(down) * UNITS, (low + top) / 2 - 5.0, down)
    write(axes, (left + right) / 2 + 12.0, low + 0.25 * (top - low) - 5.0, half)
    return "; ".join((across, half, down))


def _line(axes: Axes, points: Any, weight: float, **looks: Any) -> None:
    x, y = zip(*points, strict=True)
    line = Line2D(x, y, color="black", linewidth=weight, zorder=6.0, **looks)
    line.set_solid_capstyle("butt")
    axes.add_artist(line)
