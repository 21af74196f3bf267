"""The pad before the work, hole and flat outlined."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.castings import sloped_pad


def draw(question: Stated) -> Drawing:
    """Draw the pad before the work, hole and flat outlined."""
    return sloped_pad({}, cut=False)
