"""Proof of thread-chamfer: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """Measure a 90° chamfer from the drilled hole to a little over the thread."""
    mouth = q.major + q.over
    slips = {
        "M02": mouth - q.tap_drill,
        "M03": mouth / 2,
        "M07": (mouth - q.tap_drill) / 2 / T(82),
        "M20": q.over / 2,
        "M48": (q.major - q.tap_drill) / 2,
    }
    return [((mouth - q.tap_drill) / 2, slips)]
