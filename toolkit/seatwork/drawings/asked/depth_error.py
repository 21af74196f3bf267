"""The cone, and the same cone deeper, its growth as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.cones import cone_cut


def draw(question: Stated) -> Drawing:
    """Draw the cone, and the same cone deeper, its growth as a question mark."""
    return cone_cut({"mouth": "+ ?"} | question.labels("error", angle="included_angle"))
