"""Two cuts on scrap, the move of the stop as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.trials import trial_cuts


def draw(question: Stated) -> Drawing:
    """Draw both heads and the stop, its move as a question mark."""
    return trial_cuts(question.labels("proud", "below", angle="included_angle", move="?"))
