"""Proof of edge-break: right answer and slips, from nothing of the package."""

import math
from typing import Any


def parts(q: Any) -> list[Any]:
    """Add the greatest break on both sides of the hole."""
    slips = {
        "M15": q.hole_diameter - 2 * q.greatest,
        "M41": q.hole_diameter + q.greatest,
        "M41b": q.hole_diameter + math.sqrt(2) * q.greatest,
        "M49": q.hole_diameter + 2 * q.least,
    }
    return [(q.hole_diameter + 2 * q.greatest, slips)]
