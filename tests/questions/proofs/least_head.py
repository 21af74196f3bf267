"""Proof of least-head: right answer and slips, from nothing of the package."""

import math
from typing import Any


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def parts(q: Any) -> list[Any]:
    """Find the widest seat in which the least head is low enough."""
    wider = 2 * T(82) * q.below
    slips = {
        "M14": q.least_sharp + q.below,
        "M14b": q.least_sharp + 2 * q.below,
        "M15": q.least_sharp - wider,
        "M49": q.greatest_sharp + wider,
    }
    return [(q.least_sharp + wider, slips)]
