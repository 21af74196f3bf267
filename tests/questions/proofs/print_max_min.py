"""Proof of print-max-min: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Take the nearer of two walls: MAX from above, the floor from below."""
    above, below = q.most, q.thickness - q.least_floor
    words = ("MAX, the depth", "MIN, the floor")
    right, other = words if above < below else words[::-1]
    near, far = sorted((above, below))
    return [
        (right, {"M66": other, "M66b": "both at the same depth"}),
        (
            near,
            {
                "M66": far,
                "M24": q.thickness - near,
                "M10": q.thickness,
                "M44": q.least_floor,
                "M49": near + (far - near) / 2,
            },
        ),
    ]
