"""Proof of chatter-marks: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Multiply the marks of a turn by the turns of a second."""
    return [(q.marks * q.speed / 60, {"M36": q.marks * q.speed, "M36b": q.speed / 60})]
