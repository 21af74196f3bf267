"""Proof of cutting-time: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Divide the turns over the travel by the turns in a second."""
    turns = q.travel / q.feed
    right = turns / (q.speed / 60)
    return [(right, {"M36": turns, "M36b": right / q.flutes, "M36c": right * q.flutes})]
