"""Proof of depth-error: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def whole(angle: float) -> float | None:
    """Tangent of the whole angle, None from 89° on, where the slip gives no number."""
    return math.tan(math.radians(angle)) if angle < 89 else None


def parts(q: Any) -> list[Any]:
    """Find what an error of depth does to the diameter."""
    slips = {
        "M01": 2 * q.error * tangent if (tangent := whole(q.included_angle)) else None,
        "M02": q.error * T(q.included_angle),
        "M04": 2 * q.error / T(q.included_angle),
        "M14": q.error,
        "M14b": 2 * q.error,
    }
    return [(2 * q.error * T(q.included_angle), slips)]
