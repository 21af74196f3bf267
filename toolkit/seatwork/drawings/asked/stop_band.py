"""The seat, what its depth may be off as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.cones import cone_cut


def draw(question: Stated) -> Drawing:
    """Draw the seat, what its depth may be off as a question mark."""
    return cone_cut(
        {"mouth": f"± {question.stated('tolerance_of_diameter')}", "depth": "± ?"}
        | question.labels(angle="included_angle")
    )
