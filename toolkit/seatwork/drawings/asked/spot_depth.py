"""The cone in solid metal, its depth as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.cones import cone_cut


def draw(question: Stated) -> Drawing:
    """Draw the cone in solid metal, its depth as a question mark."""
    return cone_cut(
        question.labels(mouth="diameter", later="hole_diameter", angle="included_angle", depth="?"),
        "spot",
    )
