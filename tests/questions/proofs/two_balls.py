"""Proof of two-balls: right answer and slips, from nothing of the package."""

import math
from typing import Any


def parts(q: Any) -> list[Any]:
    """Angle from the heights of two balls."""
    radii, tops = (q.large - q.small) / 2, q.large_top - q.small_top
    half = math.degrees(math.asin(radii / (tops - radii)))
    slips = {
        "M45": half,
        "M45b": 2 * math.degrees(math.atan(radii / (tops - radii))),
        "M45c": 2 * math.degrees(math.asin(radii / tops)),
    }
    if abs(90 - 2 * half) > 0.5:  # a right angle is the same from the axis and from the face
        slips["M09"] = 180 - 2 * half
    return [(2 * half, slips)]
