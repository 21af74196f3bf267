"""Proof of spotface-touch: right answer and slips, from nothing of the package."""

import math
from typing import Any


def rise(q: Any) -> float:
    """How much a sloped pad rises for each unit across."""
    return math.tan(math.radians(q.slope))


def parts(q: Any) -> list[Any]:
    """From the high edge across the whole cutter, and under the scale."""
    slips = {
        "M23": q.diameter * rise(q),
        "M25": q.diameter / 2 * rise(q) + q.scale,
        "M25b": q.scale,
        "M26": q.hole_diameter * rise(q) + q.scale,
    }
    return [(q.diameter * rise(q) + q.scale, slips)]
