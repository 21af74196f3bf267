"""Proof of bore-diameter: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Head and clearance."""
    slips = {
        "M13": q.head_diameter + 2 * q.clearance,
        "M15": q.head_diameter - q.clearance,
        "M23": q.head_diameter,
        "M50": q.diameter + q.clearance,
        "M50b": q.hole_diameter + q.clearance,
    }
    return [(q.head_diameter + q.clearance, slips)]
