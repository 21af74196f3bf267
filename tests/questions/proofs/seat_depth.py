"""Proof of seat-depth: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def whole(angle: float) -> float | None:
    """Tangent of the whole angle, None from 89° on, where the slip gives no number."""
    return math.tan(math.radians(angle)) if angle < 89 else None


def sine(angle: float) -> float:
    """Sine of half an angle in degrees."""
    return math.sin(math.radians(angle / 2))


def through(length: float, ratio: float | None) -> float | None:
    """Length over a ratio, None without one."""
    return length / ratio if ratio else None


def parts(q: Any) -> list[Any]:
    """Half of what the diameters differ, over the tangent of half the angle."""
    half, angle = (q.diameter - q.hole_diameter) / 2, q.included_angle
    radian = math.tan(angle / 2)
    slips = {
        "M01": through(half, whole(angle)),
        "M02": 2 * half / T(angle),
        "M03": q.diameter / 2 / T(angle),
        "M04": half * T(angle),
        "M06": half / radian if radian > 0.01 else None,
        "M07": half / T(90),
        "M08": half / sine(angle),
    }
    return [(half / T(angle), slips)]
