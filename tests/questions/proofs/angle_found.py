"""Proof of angle-found: right answer and slips, from nothing of the package."""

import math
from typing import Any


def parts(q: Any) -> list[Any]:
    """Included angle from both diameters and the depth."""
    half = (q.diameter - q.hole_diameter) / 2
    slips = {
        "M01": math.degrees(math.atan(half / q.depth)),
        "M02": math.degrees(math.atan(2 * half / q.depth)),
        "M02b": 2 * math.degrees(math.atan(2 * half / q.depth)),
        "M03": 2 * math.degrees(math.atan(q.diameter / 2 / q.depth)),
        "M09": 2 * math.degrees(math.atan(q.depth / half)),
    }
    return [(2 * math.degrees(math.atan(half / q.depth)), slips)]
