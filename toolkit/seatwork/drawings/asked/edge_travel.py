"""The tool at the edge of the hole, its travel as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.touched_off import touched_off


def draw(question: Stated) -> Drawing:
    """Draw the tool at the edge of the hole, its travel as a question mark."""
    return touched_off(
        question.labels(
            mouth="diameter", hole="hole_diameter", nose="nose_diameter", angle="included_angle",
            travel="?",
        )
    )  # fmt: skip
