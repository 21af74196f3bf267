"""Proof of print-spotface: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Read the flat off; it is deep enough as soon as it is clean."""
    hole, wide = q.hole_diameter, q.diameter
    return [
        (wide, {"M44": hole, "M13": wide / 2, "M02": (wide - hole) / 2, "M15": wide + hole}),
        (
            "clean all round",
            {
                "M62": "a sixteenth",
                "M44": "as deep as the flat is wide",
                "M62b": "forgot its depth",
            },
        ),
    ]
