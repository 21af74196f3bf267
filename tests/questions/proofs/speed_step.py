"""Proof of speed-step: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Take the next step down from the lower of two speeds."""
    steps = [float(step) for step in q.steps.split(",")]
    held = min(q.wanted, q.limit)
    right = max(step for step in steps if step <= held)
    faster = max(step for step in steps if step <= q.wanted)
    next_up = min((step for step in steps if step > right), default=None)
    slips = {
        "M34": next_up if next_up != faster else None,
        "M34b": q.wanted if q.wanted not in steps else None,
        "M34c": q.limit if q.limit < q.wanted and q.limit not in steps else None,
        "M35": faster if faster != right else None,
    }
    return [(right, slips)]
