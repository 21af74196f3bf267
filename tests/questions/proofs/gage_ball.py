"""Proof of gage-ball: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def sine(angle: float) -> float:
    """Sine of half an angle in degrees."""
    return math.sin(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """Top of a ball in a cone."""
    radius, angle = q.ball / 2, q.included_angle
    point = q.diameter / 2 / T(angle)
    center = radius / sine(angle)
    slips = {
        "M01": radius / sine(2 * angle) + radius - point,
        "M05": radius / T(angle) + radius - point,
        "M13": q.ball / sine(angle) + q.ball - point,
        "M45": center - point,
        "M45b": center + radius,
    }
    return [(center + radius - point, slips)]
