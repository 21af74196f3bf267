"""Screw and washer in the bore, its depth as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.bores import screw_in_bore


def draw(question: Stated) -> Drawing:
    """Draw screw and washer in the bore, its depth as a question mark."""
    return screw_in_bore(
        question.labels("height", "washer", "below", depth="?"), parts=("screw", "washer")
    )
