"""Proof of spotface-depth: right answer and slips, from nothing of the package."""

import math
from typing import Any


def rise(q: Any) -> float:
    """How much a sloped pad rises for each unit across."""
    return math.tan(math.radians(q.slope))


def parts(q: Any) -> list[Any]:
    """From the high edge across the whole cutter, from the axis half of it, then the scale."""
    whole, skin = q.diameter * rise(q), q.scale
    return [
        ("high side", {"M25": "low side", "M25b": "edge of the hole"}),
        (
            whole + skin,
            {
                "M23": whole,
                "M25": whole / 2 + skin,
                "M25b": skin,
                "M26": q.hole_diameter * rise(q) + skin,
            },
        ),
        (
            whole / 2 + skin,
            {
                "M25": whole + skin,
                "M23": whole / 2,
                "M26": q.hole_diameter * rise(q) / 2 + skin,
                "M13": whole / 4 + skin,
            },
        ),
    ]
