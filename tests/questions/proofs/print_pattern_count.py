"""Proof of print-pattern-count: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Multiply the count by two flanges and by the parts."""
    count, made = q.count, q.parts_made
    return [
        (
            count * made * 2,
            {
                "M65": count * 2,
                "M65b": count * made,
                "M65c": count,
                "M65d": made * 2,
                "M15": count + made + 2,
            },
        )
    ]
