"""Proof of spotface-axis: right answer and slips, from nothing of the package."""

import math
from typing import Any


def rise(q: Any) -> float:
    """How much a sloped pad rises for each unit across."""
    return math.tan(math.radians(q.slope))


def parts(q: Any) -> list[Any]:
    """From the low edge, where the cut is just whole, half a cutter to the axis."""
    slips = {
        "M13": q.diameter / 4 * rise(q),
        "M25": q.diameter * rise(q),
        "M26": q.hole_diameter / 2 * rise(q),
    }
    return [(q.diameter / 2 * rise(q), slips)]
