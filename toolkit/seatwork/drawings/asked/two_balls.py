"""Both balls in the seat, its angle as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.balls import gage_balls


def draw(question: Stated) -> Drawing:
    """Draw both balls in the seat, its angle as a question mark."""
    return gage_balls(question.labels("small", "small_top", "large", "large_top", angle="?"))
