"""Proof of screw-length: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Go up through the box, length by length, while the tip stays a pitch off the bottom."""
    eighth, pitch = 25.4 / 8, 25.4 / q.threads
    lengths = [eighth * count for count in range(1, 60)]
    fits = [length for length in lengths if length - q.thickness <= q.full - pitch]
    under_head = [length for length in lengths if length - q.thickness <= q.full - pitch - q.height]
    slips = {"M34": fits[-1] + eighth, "M34b": q.thickness + q.full - pitch, "M24": q.full}
    if under_head and under_head[-1] < fits[-1] - 0.01:
        slips["M47"] = under_head[-1]
    return [(fits[-1], slips)]
