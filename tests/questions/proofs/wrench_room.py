"""Proof of wrench-room: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Add clearance to the widest thing that goes in."""
    slips = {
        "M13": q.wrench_diameter + 2 * q.clearance,
        "M22": q.across_corners + q.clearance,
        "M22b": q.washer_diameter + q.clearance,
        "M23": q.wrench_diameter,
    }
    return [(q.wrench_diameter + q.clearance, slips)]
