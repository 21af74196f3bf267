"""The cone at full travel, the travel as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.cones import cone_cut


def draw(question: Stated) -> Drawing:
    """Draw the cone at full travel, the travel as a question mark."""
    return cone_cut(
        question.labels(mouth="diameter", nose="nose_diameter", angle="included_angle", travel="?"),
        "nose",
    )
