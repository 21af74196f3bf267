"""The end of the shaft, the depth of the cone as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.shaft_ends import center_hole


def draw(question: Stated) -> Drawing:
    """Draw the end of the shaft, the depth of the cone as a question mark."""
    return center_hole(question.labels("mouth", "pilot", angle="included_angle", depth="?"))
