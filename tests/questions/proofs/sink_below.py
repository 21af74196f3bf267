"""Proof of sink-below: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """Move the seat down with its head, whatever its angle."""
    slips = {
        "M14": q.depth + q.below / 2 / T(q.included_angle),
        "M14b": q.depth + q.below * 2 * T(q.included_angle),
        "M15": q.depth - q.below,
        "M23": q.depth,
    }
    return [(q.depth + q.below, slips)]
