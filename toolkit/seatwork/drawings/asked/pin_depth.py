"""The pin in its seat, the diameter at the face as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.pins import gage_pin


def draw(question: Stated) -> Drawing:
    """Draw the pin in its seat, the diameter at the face as a question mark."""
    return gage_pin(question.labels("pin", "below", angle="included_angle", mouth="?"))
