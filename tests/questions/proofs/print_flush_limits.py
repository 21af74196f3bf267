"""Proof of print-flush-limits: right answer and slips, from nothing of the package."""

from math import radians, tan
from typing import Any


def parts(q: Any) -> list[Any]:
    """Let the head down to each limit; the cone above it opens on both sides."""
    sharp, slope = q.sharp_diameter, tan(radians(q.included_angle / 2))

    def limit(down: float, other: float, **more: float) -> tuple[float, dict[str, float]]:
        off = {"M15": sharp - 2 * slope * down, "M49": sharp + 2 * slope * other}
        return sharp + slope * down + slope * down, off | more

    low, high = q.least_below, q.greatest_below
    wide = {"M14": sharp + high, "M13": sharp + slope * high, "M07": sharp + 2 * high}
    return [limit(low, high), limit(high, low, **wide)]
