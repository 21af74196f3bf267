"""Screw, washer and wrench socket in the bore, its diameter as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.bores import screw_in_bore


def draw(question: Stated) -> Drawing:
    """Draw screw, washer and wrench socket in the bore, its diameter as a question mark."""
    return screw_in_bore(
        question.labels(
            head="across_corners",
            washer_wide="washer_diameter",
            wrench="wrench_diameter",
            bore="?",
        ),
        parts=("screw", "washer", "wrench"),
    )
