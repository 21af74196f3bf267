"""Proof of print-both-sides: right answer and slips, from nothing of the package."""

from math import radians, tan
from typing import Any


def parts(q: Any) -> list[Any]:
    """Take both cones from the plate."""
    wide, plate = q.diameter - q.hole_diameter, q.thickness
    deep = wide / 2 / tan(radians(q.included_angle / 2))
    return [
        ("two", {"M65": "one", "M65b": "four"}),
        (
            plate - deep - deep,
            {
                "M65": plate - deep,
                "M24": deep + deep,
                "M52": plate - wide,
                "M14": plate - wide - wide,
                "M10": plate,
            },
        ),
    ]
