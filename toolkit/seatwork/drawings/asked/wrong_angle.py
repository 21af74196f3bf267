"""The head above its seat, not yet let down."""

from typing import Any

from seatwork.drawings.parts.apart import head_over_seat
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.scene import Drawing, present_look


def draw(question: Any) -> Drawing:
    """Draw the head above its seat."""
    part = SeatedHead(head=question.head(), seat=question.seat())
    return head_over_seat(part, present_look(question.system))
