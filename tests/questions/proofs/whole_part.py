"""Proof of whole-part: right answer and slips, from nothing of the package."""

import math
from collections.abc import Sequence
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def parts(q: Any, own: Sequence[float] = ()) -> list[Any]:
    """Screw to seat, seat to depth, to speed, to seconds, each from the learner's step before."""
    slope, hole = T(q.included_angle), q.hole_diameter
    wide = q.sharp_diameter + 2 * slope * q.below
    diameter = own[0] if own else wide
    deep = (diameter - hole) / 2 / slope
    depth = own[1] if len(own) > 1 else deep
    turns = 1000 * q.surface_speed / (math.pi * diameter) / 2
    speed = own[2] if len(own) > 2 else turns
    seconds = depth / q.feed / speed * 60
    return [
        (wide, {"M15": q.sharp_diameter - 2 * slope * q.below, "M23": q.sharp_diameter}),
        (
            deep,
            {"M02": 2 * deep, "M03": diameter / 2 / slope, "M04": (diameter - hole) / 2 * slope},
        ),
        (turns, {"M33": 2 * turns, "M33b": turns / 2}),
        (seconds, {"M36": seconds / 60, "M36b": depth / q.feed}),
    ]
