"""Proof of depth-limits: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """Deepest seat: greatest diameter on the least hole."""
    angle = q.included_angle
    slips = {
        "M02": (q.greatest_diameter - q.least_hole) / T(angle),
        "M39": (q.greatest_diameter - q.greatest_hole) / 2 / T(angle),
        "M49": (q.least_diameter - q.greatest_hole) / 2 / T(angle),
        "M49b": (
            (q.greatest_diameter + q.least_diameter) / 2 - (q.greatest_hole + q.least_hole) / 2
        )
        / 2
        / T(angle),
    }
    return [((q.greatest_diameter - q.least_hole) / 2 / T(angle), slips)]
