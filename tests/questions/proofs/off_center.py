"""Proof of off-center: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """One side of the seat comes closer by the whole offset, and lifts the head."""
    rise = q.offset / T(q.included_angle)
    slips = {
        "M02": 2 * rise,
        "M04": q.offset * T(q.included_angle),
        "M13": rise / 2,
        "M14": q.offset,
        "M17": 0.0,
    }
    return [(rise, slips)]
