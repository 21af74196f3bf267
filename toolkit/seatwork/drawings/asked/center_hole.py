"""The seat in section, the size asked for as a question mark."""

from typing import Any

from seatwork.drawings.parts.holes import countersink
from seatwork.drawings.scene import Drawing, present_look


def draw(question: Any) -> Drawing:
    """Draw the seat in section, the size asked for as a question mark."""
    return countersink(question.cone(), present_look(question.system), asked="depth")
