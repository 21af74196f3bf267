"""A head of the box over its seat."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.heads import head_over_seat


def draw(question: Stated) -> Drawing:
    """Draw a head of the box over its seat."""
    return head_over_seat(
        {"sharp": f"{question.stated('least_sharp')} to {question.stated('greatest_sharp')}"}
        | question.labels(mouth="diameter", angle="included_angle")
    )
