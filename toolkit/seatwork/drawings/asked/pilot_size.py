"""The tool over its hole, the pilot as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.bores import pilot_in_hole


def draw(question: Stated) -> Drawing:
    """Draw the tool over its hole, the pilot as a question mark."""
    return pilot_in_hole(question.labels(hole="hole_diameter", pilot="?"))
