"""Proof of pilot-size: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Stay a little under the hole it turns in."""
    slips = {
        "M13": q.hole_diameter - 2 * q.clearance,
        "M15": q.hole_diameter + q.clearance,
        "M20": q.diameter - q.clearance,
        "M20b": q.diameter,
        "M23": q.hole_diameter,
    }
    return [(q.hole_diameter - q.clearance, slips)]
