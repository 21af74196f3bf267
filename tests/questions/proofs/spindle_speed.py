"""Proof of spindle-speed: right answer and slips, from nothing of the package."""

import math
from typing import Any


def parts(q: Any) -> list[Any]:
    """Half the drilling speed, at the widest diameter."""
    right = 1000 * q.surface_speed / (math.pi * q.diameter) / 2
    slips = {
        "M28": math.pi * right,
        "M28b": right / 12 if q.system == "inch" else None,
        "M32": right * q.diameter / q.hole_diameter,
        "M33": 2 * right,
        "M33b": right / 2,
    }
    return [(right, slips)]
