"""Proof of center-hole: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def sine(angle: float) -> float:
    """Sine of half an angle in degrees."""
    return math.sin(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """Measure the 60° cone of a center hole."""
    half = (q.mouth - q.pilot) / 2
    slips = {
        "M02": 2 * half / T(60),
        "M03": q.mouth / 2 / T(60),
        "M04": half * T(60),
        "M07": half / T(82),
        "M08": half / sine(60),
    }
    return [(half / T(60), slips)]
