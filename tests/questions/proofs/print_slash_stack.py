"""Proof of print-slash-stack: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Read bore and depth before the stroke, the hole behind it."""
    hole, wide, deep = q.hole_diameter, q.diameter, q.depth
    unit = 25.4 if q.system == "inch" else 1.0
    return [
        (hole, {"M44": wide, "M44b": deep}),
        (wide, {"M44": hole, "M13": wide / 2}),
        (
            deep,
            {
                "M44": hole,
                "M44b": wide,
                "M38": deep * 10,
                "M28": (wide / unit) * (deep / unit) * unit,
                "M13": deep / 2,
            },
        ),
    ]
