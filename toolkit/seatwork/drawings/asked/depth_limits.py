"""The seat with its limits, the depth as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.cones import cone_cut


def draw(question: Stated) -> Drawing:
    """Draw the seat with its limits, the depth as a question mark."""
    return cone_cut(
        {
            "mouth": f"{question.said('least_diameter')} to {question.said('greatest_diameter')}",
            "hole": f"{question.said('least_hole')} to {question.said('greatest_hole')}",
        }
        | question.labels(angle="included_angle", depth="?")
    )
