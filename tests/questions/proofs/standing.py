"""Proof of standing: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """Lay a head in a seat of its own angle: which way, and how far."""
    off, angle = abs(q.sharp_diameter - q.diameter), q.included_angle
    way, other = ("proud", "below")[:: 1 if q.sharp_diameter > q.diameter else -1]
    slips = {
        "M01": off / 2 / math.tan(math.radians(angle)) if angle < 89 else None,
        "M02": off / T(angle),
        "M04": off / 2 * T(angle),
        "M14": off,
    }
    return [(way, {"M15": other, "M17": "flush"}), (off / 2 / T(angle), slips)]
