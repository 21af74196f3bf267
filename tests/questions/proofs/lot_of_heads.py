"""Proof of lot-of-heads: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """Greatest head proud, least head below, in one seat."""
    spread = (q.greatest_sharp - q.least_sharp) / 2 / T(82)
    return [
        (off / 2 / T(82), {"M52": off / 2, "M02": off / T(82), "M14": off, "M49": spread})
        for off in (q.greatest_sharp - q.diameter, q.diameter - q.least_sharp)
    ]
