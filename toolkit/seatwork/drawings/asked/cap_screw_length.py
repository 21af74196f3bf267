"""The screw in the frame, its length as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.bores import screw_in_bore


def draw(question: Stated) -> Drawing:
    """Draw the screw in the frame, its length as a question mark."""
    reach = "full" if "full" in question.sizes else "engagement"  # of the first version
    labels = question.labels("thickness", "depth", reach, length="?")
    return screw_in_bore(labels, parts=("screw", "frame"))
