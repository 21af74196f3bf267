"""The head over its seat, the seat as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.heads import head_over_seat


def draw(question: Stated) -> Drawing:
    """Draw the head over its seat, the seat as a question mark."""
    return head_over_seat(
        question.labels(
            sharp="sharp_diameter", edge="edge_diameter", hole="hole_diameter", mouth="?"
        )
    )
