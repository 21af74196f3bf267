"""The note as it stands on the print."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.notes import note_on_leader


def draw(question: Stated) -> Drawing:
    """Draw the note as it stands on the print."""
    return note_on_leader(question.text().split(":  ")[1])
