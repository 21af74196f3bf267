"""The print with its note, its seat dashed, since it lies on the far side."""

from typing import Any

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.prints import printed


def draw(question: Any) -> Drawing:
    """Draw the print with its note, its seat dashed, since it lies on the far side."""
    return printed(question)
