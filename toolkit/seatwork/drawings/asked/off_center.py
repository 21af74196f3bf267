"""The seat beside the axis of its hole."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.heads import seat_beside_axis


def draw(question: Stated) -> Drawing:
    """Draw the seat beside the axis of its hole."""
    return seat_beside_axis(question.labels("offset", angle="included_angle"))
