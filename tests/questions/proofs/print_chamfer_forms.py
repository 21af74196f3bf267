"""Proof of print-chamfer-forms: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Open the hole by two legs; two sides of 45° make 90°."""
    hole, leg = q.hole_diameter, q.leg
    return [
        ("X 90°", {"M42": "X 45°", "M42b": "X 82°"}),
        (
            hole + leg + leg,
            {
                "M41": hole + leg,
                "M41b": hole + 2 * leg / 2**0.5,
                "M41c": leg,
                "M41d": hole + 4 * leg,
                "M15": hole - 2 * leg,
            },
        ),
    ]
