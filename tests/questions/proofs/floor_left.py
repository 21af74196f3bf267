"""Proof of floor-left: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Plate less the depth of the bore."""
    slips = {
        "M15": q.thickness - q.height + q.below,
        "M21": q.thickness - q.below,
        "M23": q.thickness - q.height,
        "M24": q.height + q.below,
    }
    return [(q.thickness - q.height - q.below, slips)]
