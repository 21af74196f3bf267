"""The empty bore, its depth as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.bores import screw_in_bore


def draw(question: Stated) -> Drawing:
    """Draw the empty bore, its depth as a question mark."""
    return screw_in_bore(question.labels("thickness", "floor", depth="?"), parts=())
