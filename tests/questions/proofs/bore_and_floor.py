"""Proof of bore-and-floor: right answer and slips, from nothing of the package."""

from collections.abc import Sequence
from typing import Any


def parts(q: Any, own: Sequence[float] = ()) -> list[Any]:
    """Head and what lies over it make the bore; the plate less the bore is the floor."""
    deep = q.below + q.height
    cut = own[0] if own else deep
    floor = q.thickness - cut
    left = own[1] if len(own) > 1 else floor
    return [
        (
            deep,
            {
                "M23": q.height,
                "M15": q.height - q.below,
                "M21": q.below + q.diameter,
                "M13": deep + q.below,
            },
        ),
        (floor, {"M24": cut, "M15": q.thickness + cut}),
        (
            left - q.least_floor if left > q.least_floor else 0.0,
            {"M24": q.thickness - q.least_floor, "M15": left + q.least_floor},
        ),
    ]
