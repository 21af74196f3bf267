"""Proof of print-point-depth: right answer and slips, from nothing of the package."""

from math import radians, tan
from typing import Any


def parts(q: Any) -> list[Any]:
    """Let the point, a cone of 118°, go below the full diameter."""
    deep, radius, slope = q.depth, q.diameter / 2, tan(radians(q.point_angle / 2))
    return [
        (
            deep + radius / slope,
            {
                "M10": deep,
                "M15": deep - radius / slope,
                "M07": deep + radius,
                "M02": deep + q.diameter / slope,
                "M04": deep + radius * slope,
            },
        )
    ]
