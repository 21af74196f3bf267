"""Proof of print-floor-chamfer: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Count the chamfer from the floor of the bore; at 90° it is as deep as one side is wide."""
    deep, side = q.depth, q.mouth / 2 - q.hole_diameter / 2
    return [
        (
            deep + side,
            {
                "M24": side,
                "M23": deep,
                "M02": deep + side + side,
                "M15": deep - side,
                "M03": deep + q.mouth / 2,
            },
        )
    ]
