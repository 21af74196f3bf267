"""Proof of cap-screw-length: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Measure a cap screw under its head, from the floor of the bore."""
    slips = {
        "M15": q.thickness + q.depth + q.engagement,
        "M24": q.thickness - q.depth,
        "M24b": q.depth + q.engagement,
        "M47": q.thickness + q.engagement,
    }
    return [(q.thickness - q.depth + q.engagement, slips)]
