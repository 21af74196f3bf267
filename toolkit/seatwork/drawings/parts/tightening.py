"""Outlines of what goes into a counterbore: its cutter, a screw, a washer, a wrench socket."""

from dataclasses import dataclass

import numpy as np
from matplotlib.path import Path

from seatwork.drawings.strokes.linework import BREAK, Points, joined
from seatwork.drawings.strokes.metal import Window
from seatwork.drawings.strokes.profiles import left_and_right, whole

CHAMFERED = 0.12
"""Share of a hexagon head's height that is drawn as its chamfer; no measured size."""

INSIDE, KEY_DEEP, STEM, SHANK = 1.35, 0.5, 0.55, 0.45
"""Drawn, not measured: how deep a socket is inside [head heights], how deep a key goes into a
head [head heights], how thick the stem of a pilot is [pilots], a cutter's shank [bodies]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Bolt:
    """A screw with a flat underside.

    Parameters
    ----------
    head : float
        Diameter of the head, of a hexagon across its corners [mm].
    height : float
        Height of the head [mm].
    shank : float
        Diameter of the shank [mm].
    key : float, optional
        Width of the hex key that turns it [mm]; None for a hexagon head.
    """

    head: float
    height: float
    shank: float
    key: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Ring:
    """A washer: outside, hole and thickness [mm]."""

    outside: float
    hole: float
    thickness: float


def bolt(screw: Bolt, window: Window, *, seat: float, low: float) -> Path:
    """Outline a screw whose head lies on `seat` [mm] and whose shank ends at `low` [mm]."""
    top, half = seat + screw.height, screw.head / 2
    bevel = CHAMFERED * screw.height
    right = [
        (half - bevel, top),
        (half, top - bevel),
        (half, seat),
        (screw.shank / 2, seat),
        (screw.shank / 2, low),
    ]
    return _outline(window.to_page(whole(np.array(right))))


def bolt_lines(screw: Bolt, window: Window, seat: float) -> Points:
    """Lines on a hexagon head between its faces, a corner to each side [page units]."""
    if screw.key is not None:
        return BREAK
    bevel = CHAMFERED * screw.height
    at = screw.head / 4
    line = np.array([(at, seat), (at, seat + screw.height - bevel)])
    return joined([window.to_page(side) for side in left_and_right(line)])


def washer(ring: Ring, window: Window, floor: float) -> Path:
    """Outline a washer in section, both halves, lying on `floor` [mm]."""
    top, out, hole = floor + ring.thickness, ring.outside / 2, ring.hole / 2
    right = np.array([(hole, floor), (hole, top), (out, top), (out, floor)])
    both = [window.to_page(side) for side in left_and_right(right)]
    return Path.make_compound_path(*(_outline(half) for half in both))


def socket(screw: Bolt, outside: float, window: Window, *, rests: float, top: float) -> Path:
    """Outline a wrench socket in section: it rests at `rests` [mm], is broken off at `top`.

    `top` is in page units.
    """
    inner, outer = screw.head / 2 * 1.02, outside / 2
    roof = rests + INSIDE * screw.height
    inside = np.array([(inner, roof), (inner, rests), (outer, rests)])
    left, right = (window.to_page(side) for side in left_and_right(inside))
    high = np.array([(window.spot(outer, 0.0)[0], top), (window.spot(-outer, 0.0)[0], top)])
    return broken(np.concatenate([left[::-1], right]), high)


def key(screw: Bolt, window: Window, *, seat: float, top: float) -> tuple[Path, Points]:
    """Outline a hex key above a head, broken off at `top` [page units]; and its hidden end."""
    half, face = (screw.key or 0.0) / 2, seat + screw.height
    low = face - KEY_DEEP * screw.height
    right = np.array([(half, face)])
    sides = [window.to_page(side)[0] for side in left_and_right(right)]
    high = np.array([(sides[1][0], top), (sides[0][0], top)])
    hidden = window.to_page(whole(np.array([(half, face), (half, low)])))
    return broken(np.array(sides), high), hidden


def cutter(
    body: float,
    pilot: float,
    window: Window,
    *,
    floor: float,
    low: float,
    tops: tuple[float, float],
) -> Path:
    """Outline a counterbore with its pilot, standing on `floor` [mm], broken off above.

    `low` is where the pilot ends [mm], `tops` where body and shank end [page units].
    """
    lower = np.array([(body / 2, floor), (pilot / 2, floor), (pilot / 2, low)])
    down, up = (window.to_page(side) for side in left_and_right(lower))
    shoulder, top = tops
    axis, out = window.axis, window.scale * body / 2
    shank = SHANK * out
    left = np.array([(axis - shank, shoulder), (axis - out, shoulder)])
    right = np.array([(axis + out, shoulder), (axis + shank, shoulder)])
    ends = np.array([(axis + shank, top), (axis - shank, top)])
    return broken(np.concatenate([left, down, up[::-1], right]), ends)


def flutes(body: float, window: Window, *, floor: float, shoulder: float) -> Points:
    """Slanted lines on a cutter's body [page units]."""
    half, low = window.scale * body / 2, window.spot(0.0, floor)[1]
    starts = window.axis + half * np.array([-0.55, 0.25])
    lean = 0.5 * half
    return joined([np.array([(x, low), (x + lean, shoulder)]) for x in starts])


def stem(pilot: float, window: Window, *, floor: float, shoulder: float) -> Points:
    """Hidden lines of a removable pilot's stem inside the cutter [page units]."""
    half = window.scale * STEM * pilot / 2
    low, axis = window.spot(0.0, floor)[1], window.axis
    high = low + 0.7 * (shoulder - low)
    return np.array(
        [(axis - half, low), (axis - half, high), (axis + half, high), (axis + half, low)]
    )


def _outline(points: Points) -> Path:
    return Path(np.concatenate([points, points[:1]]), closed=True)


def broken(points: Points, ends: Points) -> Path:
    """Close an outline with an S of two curves, from `ends`' first to its second [page units]."""
    start, end = ends
    middle, dip = (start + end) / 2, np.array([0.0, 12.0])
    curve = np.array([start, (start + middle) / 2 - dip, middle, (middle + end) / 2 + dip, end])
    codes = [Path.MOVETO, *[Path.LINETO] * len(points), *[Path.CURVE3] * 4, Path.CLOSEPOLY]
    return Path(np.concatenate([points, curve, points[:1]]), codes)
