"""The seat in section, its depth as a question mark."""

from typing import Any

from seatwork.drawings.parts.holes import countersink
from seatwork.drawings.scene import Drawing, Look


def draw(question: Any) -> Drawing:
    """Draw the seat in section, its depth as a question mark."""
    return countersink(question.seat(), Look(system=question.system), asked="depth")
