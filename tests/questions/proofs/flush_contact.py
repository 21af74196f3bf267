"""Proof of flush-contact: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Lay a flatter head of the seat's own diameter flush, on a line at its rim."""
    assert q.head_angle > q.included_angle, "a steeper head would stand proud, not flush"
    return [
        ("rim", {"M17": "all along the cone", "M18": "edge of the hole"}),
        ("accepts no seat", {"M17": "it is flush"}),
    ]
