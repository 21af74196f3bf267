"""Proof of flange-left: right answer and slips, from nothing of the package."""

import math
from typing import Any


def rise(q: Any) -> float:
    """How much a sloped pad rises for each unit across."""
    return math.tan(math.radians(q.slope))


def parts(q: Any) -> list[Any]:
    """At the low side only the allowance for scale is cut."""
    slips = {
        "M23": q.thickness,
        "M24": q.scale,
        "M25": q.thickness - q.diameter * rise(q) - q.scale,
        "M25b": q.thickness - q.diameter / 2 * rise(q) - q.scale,
    }
    return [(q.thickness - q.scale, slips)]
