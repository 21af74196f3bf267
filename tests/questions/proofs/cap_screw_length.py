"""Proof of cap-screw-length: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Go up through the box, length by length, while the tip stays a pitch off the bottom."""
    eighth, pitch = 25.4 / 8, 25.4 / q.threads
    lengths = [eighth * count for count in range(1, 90)]

    def longest(clamped: float) -> float:
        return max(length for length in lengths if length - clamped <= q.full - pitch)

    right = longest(q.thickness - q.depth)
    slips = {
        "M34": right + eighth,
        "M34b": q.thickness - q.depth + q.full - pitch,
        "M15": longest(q.thickness + q.depth),
        "M24": q.thickness - q.depth,
        "M24b": longest(q.depth),
        "M47": longest(q.thickness),
    }
    return [(right, slips)]
