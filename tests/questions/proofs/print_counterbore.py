"""Proof of print-counterbore: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Read the bore and its depth off, and take the depth from the plate."""
    hole, wide, deep, plate = q.hole_diameter, q.diameter, q.depth, q.thickness
    return [
        (wide, {"M44": hole, "M13": wide / 2}),
        (deep, {"M44": wide, "M24": plate - deep}),
        (
            plate - deep,
            {
                "M24": deep,
                "M44": plate - wide,
                "M44b": plate - hole,
                "M15": plate + deep,
                "M65": plate - deep - deep,
            },
        ),
    ]
