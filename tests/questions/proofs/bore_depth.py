"""Proof of bore-depth: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Head height and what is free above."""
    slips = {
        "M13": q.height + 2 * q.below,
        "M15": q.height - q.below,
        "M21": q.diameter + q.below,
        "M23": q.height,
    }
    return [(q.height + q.below, slips)]
