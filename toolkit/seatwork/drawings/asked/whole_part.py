"""The head in its seat, the first two steps as question marks."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.cones import cone_cut


def draw(question: Stated) -> Drawing:
    """Draw the head in its seat, the first two steps as question marks."""
    return cone_cut(
        question.labels("below", angle="included_angle", mouth="?", depth="?"), head=True
    )
