"""The ball in its seat, its top above the face as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.balls import gage_balls


def draw(question: Stated) -> Drawing:
    """Draw the ball in its seat, its top above the face as a question mark."""
    return gage_balls(
        question.labels(
            mouth="diameter", hole="hole_diameter", angle="included_angle", ball="ball", top="?"
        )
    )
