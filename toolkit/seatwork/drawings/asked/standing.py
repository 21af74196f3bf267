"""The head over its seat; which way it lies is the question."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.heads import head_over_seat


def draw(question: Stated) -> Drawing:
    """Draw the head over its seat; which way it lies is the question."""
    return head_over_seat(
        question.labels(sharp="sharp_diameter", mouth="diameter", angle="included_angle")
    )
