"""The chamfer in section, its depth as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.edges import thread_chamfer


def draw(question: Stated) -> Drawing:
    """Draw the chamfer in section, its depth as a question mark."""
    sizes = question.labels(thread="major", hole="tap_drill", angle="included_angle", depth="?")
    return thread_chamfer({"mouth": f"thread + {question.stated('over')}"} | sizes)
