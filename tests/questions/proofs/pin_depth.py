"""Proof of pin-depth: right answer and slips, from nothing of the package."""

from math import radians, tan
from typing import Any


def parts(q: Any) -> list[Any]:
    """From the pin's end up to the face the cone opens by the tangent on each side."""
    side = q.below * tan(radians(q.included_angle) / 2)
    return [
        (
            q.pin + side + side,
            {
                "M07": q.pin + 2 * q.below,
                "M13": q.pin + side,
                "M14": q.pin + q.below,
                "M15": q.pin - 2 * side,
                "M45": 2 * side,
            },
        )
    ]
