"""Proof of flush-diameter: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Flush where the theoretical sharp diameter lies in the face."""
    slips = {
        "M03": q.hole_diameter,
        "M13": q.sharp_diameter / 2,
        "M16": q.edge_diameter,
        "M16b": (q.edge_diameter + q.sharp_diameter) / 2,
    }
    return [(q.sharp_diameter, slips)]
