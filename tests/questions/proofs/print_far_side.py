"""Proof of print-far-side: right answer and slips, from nothing of the package."""

from math import radians, tan
from typing import Any


def parts(q: Any) -> list[Any]:
    """Turn the part over, and take the cone's depth from the plate."""
    wide, plate = q.diameter - q.hole_diameter, q.thickness
    deep = wide / 2 / tan(radians(q.included_angle / 2))
    return [
        ("the far face", {"M24": "the near face", "M24b": "either face"}),
        (
            plate - deep,
            {
                "M24": deep,
                "M10": plate,
                "M65": plate - deep - deep,
                "M52": plate - wide / 2,
                "M14": plate - wide,
            },
        ),
    ]
