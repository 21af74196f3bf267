"""The print with its note, three rows of the drill chart beside it."""

from typing import Any

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.prints import printed


def draw(question: Any) -> Drawing:
    """Draw the print with its note, three rows of the drill chart beside it."""
    return printed(question)
