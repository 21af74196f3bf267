"""The cone from above with its marks."""

from typing import Any

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.marks import marked_cone


def draw(question: Any) -> Drawing:
    """Draw the cone from above with its marks."""
    return marked_cone(round(question.marks))
