"""Proof of oversize-hole: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """Touched off on a wider hole, the same travel makes a seat as much wider."""
    grown = q.drilled - q.hole_diameter
    slips = {
        "M12": q.diameter,
        "M13": q.diameter + 2 * grown,
        "M14": q.diameter + 2 * T(q.included_angle) * grown,
        "M15": q.diameter - grown,
    }
    return [(q.diameter + grown, slips)]
