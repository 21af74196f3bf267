"""Where the triangle stands on its page and how large, and the outlines round it."""

from dataclasses import replace

import numpy as np

from seatwork.drawings.parts.triangle_part import TrianglePart
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Points, joined
from seatwork.drawings.strokes.metal import BELOW_BREAK, Window
from seatwork.seats import Countersink

HEIGHT = 460.0
"""Height of the page [page units]: low enough to stand above a question's box."""

AXIS, FACE, HALF, BOTTOM = 390.0, 306.0, 280.0, 42.0
WIDE, DEEP, HIGH = 210.0, 240.0, 128.0
"""Most the cone may take to one side, down and above the face [page units]."""

BALL_AXIS = 320.0
"""Where a ball has its axis, so that across is named beside it [page units]."""

EDGE, ACROSS, DOWN, PROUD = 420.0, 150.0, 165.0, 84.0
"""Where down stands when the triangle is drawn large, and the most it takes [page units]."""

LARGE = (190.0, 245.0, 250.0)
"""Most the slips take then to the left of it, to the right, and down [page units]."""

CUT_OFF = 250.0
"""Where a folded section is cut off on the left if its axis lies farther out [page units]."""

TICK = 9.0
"""Half the height of the ticks at the ends of across [page units]."""


def window_of(part: TrianglePart) -> Window:
    """Return the piece of page for a part: the whole section, or its triangle drawn large."""
    if part.holds == "a ball":
        return window_at(BALL_AXIS, _scale(part))
    if not is_large(part):
        return window_at(AXIS, _scale(part))
    scale = _large_scale(part)
    return window_at(EDGE - part.triangle.narrow / 2 * scale, scale)


def window_at(axis: float, scale: float) -> Window:
    """Return the piece of page with its axis at a spot."""
    return Window(
        axis=axis, face=FACE, left=AXIS - HALF, right=AXIS + HALF, bottom=BOTTOM, scale=scale
    )


def is_large(part: TrianglePart) -> bool:
    """Tell whether the triangle is drawn large: once the whole angle need not be seen."""
    return part.folded and (part.holds == "a head" or (part.shows("half") and part.step > 2))


def _scale(part: TrianglePart) -> float:
    """Page units per mm at which the cone to its point, what it holds and the slips fit."""
    its = part.triangle
    sides = [part.seat.diameter / 2, its.wide / 2]
    sides += [(start + across) * WIDE / HALF for _, start, across, _ in part.ghosts]
    depths = [its.to_the_point - part.top, *(down for *_, down in part.ghosts)]
    highs = [part.top, part.ball_top if part.holds == "a ball" else 0.0, 1e-6]
    return min(WIDE / max(sides), DEEP / max(depths), HIGH / max(highs))


def _large_scale(part: TrianglePart) -> float:
    """Page units per mm at which the triangle and the slips beside it fit."""
    its, start = part.triangle, part.triangle.narrow / 2
    left, right, deep = LARGE
    bounds = [ACROSS / its.across, (PROUD if part.proud else DOWN) / its.down]
    for _, at, across, down in part.ghosts:
        bounds += [right / (at + across - start), deep / down]
        bounds += [left / (start - at)] if start > at else []
    return min(bounds)


def wall(seat: Countersink, lowest: float) -> Points:
    """Give the right wall of the cone and its hole, down to a height below the face [mm]."""
    if seat.depth < -lowest:
        return profiles.countersink_wall(seat, lowest)
    return np.array([(seat.diameter / 2, 0.0), (seat.diameter_at(-lowest) / 2, lowest)])


def head(part: TrianglePart, window: Window) -> Points:
    """Give the right side of a flat head, its cone on the cone of the seat [mm]."""
    held = part.held or 0.0
    top = part.triangle.down if part.proud else -part.triangle.down
    shank = 0.86 * part.seat.hole_diameter
    cone = replace(part.seat, diameter=held, hole_diameter=shank)
    lowest = window.deepest - BELOW_BREAK / window.scale
    return np.asarray(wall(cone, lowest - top) + np.array([0.0, top]))


def bracket(start: tuple[float, float], end: tuple[float, float]) -> Points:
    """Give a heavy line with a tick at each end."""
    ticks = [np.array([(x, y - TICK), (x, y + TICK)]) for x, y in (start, end)]
    return joined([ticks[0], np.array([start, end]), ticks[1]])
