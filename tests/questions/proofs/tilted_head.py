"""Proof of tilted-head: right answer and slips, from nothing of the package."""

import math
from typing import Any


def parts(q: Any) -> list[Any]:
    """Let the pad fall by the whole width over the whole slope; then the shank bends."""
    slope = math.radians(q.slope)
    gap = q.width * math.tan(slope)
    slips = {"M25": gap / 2, "M65": 2 * gap, "M04": q.width / math.tan(slope)}
    bends = {"M66": "pulls the pad square", "M66b": "the gap closes", "M66c": "works loose"}
    return [(gap, slips), ("the shank bends", bends)]
