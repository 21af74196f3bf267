"""The screw in its bore, its depth and the plate left as question marks."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.bores import screw_in_bore


def draw(question: Stated) -> Drawing:
    """Draw the screw in its bore, its depth and the plate left as question marks."""
    return screw_in_bore(
        question.labels("height", "below", "thickness", thread="diameter", depth="?", floor="?")
    )
