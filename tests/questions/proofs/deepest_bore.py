"""Proof of deepest-bore: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Plate less the floor that must stay."""
    slips = {
        "M12": q.thickness - q.floor - q.drill_point,
        "M15": q.thickness + q.floor,
        "M24": q.floor,
    }
    return [(q.thickness - q.floor, slips)]
