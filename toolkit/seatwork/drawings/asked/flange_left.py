"""The flange, what is left of it as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.castings import sloped_pad


def draw(question: Stated) -> Drawing:
    """Draw the flange, what is left of it as a question mark."""
    return sloped_pad(question.labels("slope", "diameter", "scale", "thickness", left="?"))
