"""Proof of quieter-cut: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Ease off, stop, slow down, feed firmly; neither faster, nor more flutes, nor rubbing."""
    slips = {
        "M35": "push through",
        "M46": "speed up",
        "M46b": "more flutes",
        "M46c": "as lightly as possible",
    }
    return [("slow down", slips)]
