"""The pad with its spotface; from where its depth is measured is not marked."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.castings import sloped_pad


def draw(question: Stated) -> Drawing:
    """Draw the pad with its spotface; from where its depth is measured is not marked."""
    return sloped_pad(question.labels("slope", "diameter", hole="hole_diameter", scale="scale"))
