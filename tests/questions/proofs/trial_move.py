"""Proof of trial-move: right answer and slips, from nothing of the package."""

from math import radians, tan
from typing import Any


def parts(q: Any) -> list[Any]:
    """Let the head down to flush and then below, the stop with it."""
    down, wide = q.proud + q.below, 2 * tan(radians(q.included_angle / 2))
    return [
        (
            down,
            {
                "M23": q.proud,
                "M15": max(q.proud, q.below) - min(q.proud, q.below),
                "M14": down * wide,
                "M04": down / wide,
                "M49": down + q.below,
            },
        )
    ]
