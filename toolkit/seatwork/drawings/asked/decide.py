"""The band of good sizes, the lowest reading that passes as a question mark."""

from typing import Any

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.limits import limits_band


def draw(question: Any) -> Drawing:
    """Draw the band; the reading stands apart from it."""
    told = question.labels("reading", "doubt", least="least_diameter", greatest="greatest_diameter")
    return limits_band(told | {"pass": "?"})
