"""The head over its seat; which way it lies is the question."""

from typing import Any

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.heads import head_over_seat


def draw(question: Any) -> Drawing:
    """Draw the head over its seat, the wider of the two wider; how it lies is the question."""
    return head_over_seat(
        question.labels(sharp="sharp_diameter", mouth="diameter", angle="included_angle"),
        wide=question.diameter / question.sharp_diameter,
    )
