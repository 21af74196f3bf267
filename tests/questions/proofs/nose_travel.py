"""Proof of nose-travel: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def whole(angle: float) -> float | None:
    """Tangent of the whole angle, None from 89° on, where the slip gives no number."""
    return math.tan(math.radians(angle)) if angle < 89 else None


def through(length: float, ratio: float | None) -> float | None:
    """Length over a ratio, None without one."""
    return length / ratio if ratio else None


def parts(q: Any) -> list[Any]:
    """Travel from the touch of a flat nose on a solid face."""
    wide, nose, angle = q.diameter, q.nose_diameter, q.included_angle
    slips = {
        "M01": through((wide - nose) / 2, whole(angle)),
        "M02": (wide - nose) / T(angle),
        "M04": (wide - nose) / 2 * T(angle),
        "M10": wide / 2 / T(angle),
        "M10b": (wide + nose) / 2 / T(angle),
        "M10c": (wide - nose / 2) / 2 / T(angle),
    }
    return [((wide - nose) / 2 / T(angle), slips)]
