"""The print with its note, the lines of the title block in its corner."""

from typing import Any

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.prints import printed


def draw(question: Any) -> Drawing:
    """Draw the print with its note, the lines of the title block in its corner."""
    return printed(question)
