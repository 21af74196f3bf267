"""The screw in its bore, the plate left under it as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.bores import screw_in_bore


def draw(question: Stated) -> Drawing:
    """Draw the screw in its bore, the plate left under it as a question mark."""
    return screw_in_bore(question.labels("height", "below", "thickness", floor="?"))
