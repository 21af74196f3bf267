"""Proof of washer-depth: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Washer, head and what is free above."""
    slips = {
        "M15": q.height + q.washer - q.below,
        "M21": q.washer + q.below,
        "M22": q.height + q.below,
        "M23": q.height + q.washer,
    }
    return [(q.height + q.washer + q.below, slips)]
