"""The seat in section, a letter at each size."""

from typing import Any

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.lettered import lettered_seat
from seatwork.seats import Countersink


def draw(question: Any) -> Drawing:
    """Draw the seat in section, a letter at each size."""
    seat = Countersink(
        diameter=question.diameter,
        hole_diameter=question.hole_diameter,
        included_angle=question.included_angle,
    )
    return lettered_seat(seat, question.letters)
