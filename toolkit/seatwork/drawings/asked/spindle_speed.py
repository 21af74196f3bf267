"""The seat that is cut."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.cones import cone_cut


def draw(question: Stated) -> Drawing:
    """Draw the seat that is cut."""
    return cone_cut(question.labels(mouth="diameter", hole="hole_diameter"))
