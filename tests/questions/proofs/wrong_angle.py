"""Proof of wrong-angle: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """Let a steeper head ride the hole, a flatter one in too small a seat its rim."""
    head, seat = T(q.head_angle), T(q.included_angle)
    at_hole = (q.head_diameter - q.hole_diameter) / 2 / head
    at_hole -= (q.diameter - q.hole_diameter) / 2 / seat
    wider = q.head_diameter - q.diameter
    if q.head_angle < q.included_angle:
        points = q.head_diameter / 2 / head - q.diameter / 2 / seat
        slips = {"M02": 2 * at_hole, "M03": points, "M17": 0.0}
        return [("narrow end", {"M17": "all along", "M18": "wide end"}), (at_hole, slips)]
    slips = {"M07": wider / 2 / seat, "M14": wider, "M17": 0.0, "M18": at_hole}
    return [("wide end", {"M17": "all along", "M18": "narrow end"}), (wider / 2 / head, slips)]
