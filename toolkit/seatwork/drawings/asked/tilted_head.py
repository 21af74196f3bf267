"""A hex head laid on a leaning pad, its gap as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.leaning import leaning_pad


def draw(question: Stated) -> Drawing:
    """Draw the head before it is tightened; what the bolt does then is not seen."""
    return leaning_pad(question.labels("width", "slope") | {"gap": "?"})
