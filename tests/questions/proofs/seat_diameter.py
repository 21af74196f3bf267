"""Proof of seat-diameter: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def whole(angle: float) -> float | None:
    """Tangent of the whole angle, None from 89° on, where the slip gives no number."""
    return math.tan(math.radians(angle)) if angle < 89 else None


def parts(q: Any) -> list[Any]:
    """Hole and twice what one side gains over the depth."""
    hole, depth, angle = q.hole_diameter, q.depth, q.included_angle
    slips = {
        "M01": hole + 2 * depth * tangent if (tangent := whole(angle)) else None,
        "M02": hole + depth * T(angle),
        "M03": 2 * depth * T(angle),
        "M04": hole + 2 * depth / T(angle),
        "M07": hole + 2 * depth * T(90),
        "M14": hole + depth,
    }
    return [(hole + 2 * depth * T(angle), slips)]
