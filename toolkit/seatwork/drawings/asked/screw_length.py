"""The screw in guard and frame; where its length runs is the question."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.screws import screw_in_frame


def draw(question: Stated) -> Drawing:
    """Draw the screw in guard and frame; where its length runs is the question."""
    reach = "full" if "full" in question.sizes else "engagement"  # of the first version
    return screw_in_frame(question.labels("thickness", reach, "height"))
