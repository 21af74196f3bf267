"""The seat on the oversize hole, its diameter as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.cones import cone_cut


def draw(question: Stated) -> Drawing:
    """Draw the seat on the oversize hole, its diameter as a question mark."""
    return cone_cut(question.labels(hole="drilled", angle="included_angle", mouth="?"))
