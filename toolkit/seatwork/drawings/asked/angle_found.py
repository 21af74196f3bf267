"""The seat in section, its angle as a question mark."""

from typing import Any

from seatwork.drawings.parts.holes import countersink
from seatwork.drawings.scene import Drawing, present_look
from seatwork.seats import Countersink


def draw(question: Any) -> Drawing:
    """Draw the seat in section, its angle as a question mark."""
    seat = Countersink(
        diameter=question.diameter,
        hole_diameter=question.hole_diameter,
        included_angle=question.value(),
    )
    return countersink(seat, present_look(question.system), asked="included_angle")
