"""The print with its note, the bore from above."""

from typing import Any

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.prints import printed


def draw(question: Any) -> Drawing:
    """Draw the print with its note, the bore from above."""
    return printed(question)
