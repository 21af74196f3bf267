"""Six signs of prints, large."""

from typing import Any

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.prints import signs_of


def draw(question: Any) -> Drawing:
    """Draw the six signs, large."""
    return signs_of(question.shown)
