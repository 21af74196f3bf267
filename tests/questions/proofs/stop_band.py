"""Proof of stop-band: right answer and slips, from nothing of the package."""

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
    """Find what a tolerance of the diameter leaves to the depth stop."""
    band, angle = q.tolerance_of_diameter, q.included_angle
    slips = {
        "M01": through(band / 2, whole(angle)),
        "M02": band / T(angle),
        "M04": band * 2 * T(angle),
        "M14": band,
        "M14b": band / 2,
    }
    return [(band / 2 / T(angle), slips)]
