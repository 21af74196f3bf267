"""The screw in guard and frame; where its length runs is the question."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.screws import screw_in_frame


def draw(question: Stated) -> Drawing:
    """Draw the screw in guard and frame; where its length runs is the question."""
    return screw_in_frame(question.labels("thickness", "engagement", "height"))
