"""The seat with its limits, the depth as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.cones import cone_cut


def draw(question: Stated) -> Drawing:
    """Draw the seat with its limits, the depth as a question mark."""
    seat = (question.stated("least_diameter"), question.stated("greatest_diameter"))
    hole = (question.stated("least_hole"), question.stated("greatest_hole"))
    limits = {"mouth": " to ".join(seat), "hole": " to ".join(hole)}
    return cone_cut(limits | question.labels(angle="included_angle", depth="?"))
