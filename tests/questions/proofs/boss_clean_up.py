"""Proof of boss-clean-up: right answer and slips, from nothing of the package."""

import math
from typing import Any


def arc(radius: float, half_chord: float) -> float | None:
    """Height of an arc over half a chord, None where there is none."""
    return radius - math.sqrt(radius**2 - half_chord**2) if half_chord < radius else None


def parts(q: Any) -> list[Any]:
    """From the crown of a round boss down to the flat."""
    radius, half = q.boss_diameter / 2, q.diameter / 2
    slips = {
        "M13": arc(radius, q.diameter),
        "M13b": arc(q.boss_diameter, half),
        "M13c": q.diameter**2 / radius,
        "M24": math.sqrt(radius**2 - half**2),
    }
    return [(arc(radius, half), slips)]
