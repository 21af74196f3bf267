"""Proof of screw-length: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Measure a flat head screw overall."""
    slips = {
        "M15": q.thickness + q.engagement + q.height,
        "M24": q.thickness,
        "M47": q.thickness + q.engagement - q.height,
    }
    return [(q.thickness + q.engagement, slips)]
