"""A head of the box over its seat, the seat as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.heads import head_over_seat


def draw(question: Stated) -> Drawing:
    """Draw a head of the box over its seat, the seat as a question mark."""
    return head_over_seat(
        {"sharp": f"{question.stated('least_sharp')} to {question.stated('greatest_sharp')}"}
        | question.labels("below", angle="included_angle", mouth="?")
    )
