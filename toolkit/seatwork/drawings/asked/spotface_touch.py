"""The pad, the travel as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.castings import sloped_pad


def draw(question: Stated) -> Drawing:
    """Draw the pad, the travel as a question mark."""
    return sloped_pad(
        question.labels("slope", "diameter", hole="hole_diameter", scale="scale", touch="?")
    )
