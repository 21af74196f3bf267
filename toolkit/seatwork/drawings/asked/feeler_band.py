"""The straightedge and the two leaves that were tried."""

from typing import Any

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.straightedge import feelers


def draw(question: Any) -> Drawing:
    """Draw the straightedge over the head, or on leaves beside it."""
    return feelers(question.labels("goes", "stops"), proud=question.side == "proud")
