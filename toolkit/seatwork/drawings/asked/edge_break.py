"""The broken edge, the mouth as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.edges import broken_edge


def draw(question: Stated) -> Drawing:
    """Draw the broken edge, the mouth as a question mark."""
    leg = f"{question.stated('least')} to {question.stated('greatest')}"
    return broken_edge({"leg": leg, "hole": question.stated("hole_diameter"), "mouth": "?"})
