"""The head above its seat, not yet let down."""

from typing import Any

from seatwork.drawings.parts.apart import head_over_seat
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.scene import Drawing, present_look
from seatwork.seats import Countersink, Head


def draw(question: Any) -> Drawing:
    """Draw the head above its seat."""
    part = SeatedHead(
        head=Head(sharp_diameter=question.sharp_diameter, included_angle=question.head_angle),
        seat=Countersink(
            diameter=question.sharp_diameter,
            hole_diameter=question.hole_diameter,
            included_angle=question.included_angle,
        ),
    )
    return head_over_seat(part, present_look(question.system))
