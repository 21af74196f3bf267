"""The head below the face, the new depth as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.cones import cone_cut


def draw(question: Stated) -> Drawing:
    """Draw the head below the face, the new depth as a question mark."""
    return cone_cut(question.labels("below", angle="included_angle", depth="?"), head=True)
