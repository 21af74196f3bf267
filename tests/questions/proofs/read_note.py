"""Proof of read-note: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Count, hole, seat, angle, each in its place."""
    hole, seat = q.hole_diameter, q.diameter
    return [
        (q.count, {}),
        (hole, {"M13": hole / 2, "M44": seat}),
        (seat, {"M13": seat / 2, "M44": hole}),
        (q.included_angle, {"M01": q.included_angle / 2}),
    ]
