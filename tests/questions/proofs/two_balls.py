"""Proof of two-balls: right answer and slips, from nothing of the package."""

import math
from typing import Any


def parts(q: Any) -> list[Any]:
    """Angle from the heights of two balls."""
    radii, tops = (q.large - q.small) / 2, q.large_top - q.small_top
    half = math.degrees(math.asin(radii / (tops - radii)))
    slips = {
        "M09": 180 - 2 * half,
        "M45": half,
        "M45b": 2 * math.degrees(math.atan(radii / (tops - radii))),
        "M45c": 2 * math.degrees(math.asin(radii / tops)),
    }
    return [(2 * half, slips)]
