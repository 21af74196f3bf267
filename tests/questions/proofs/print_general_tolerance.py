"""Proof of print-general-tolerance: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Take the line with as many places as the size, down and up."""
    size = q.diameter
    own, other = (q.fine, q.coarse) if q.is_fine else (q.coarse, q.fine)

    def limit(way: int) -> tuple[float, dict[str, float]]:
        return (
            size + way * own,
            {
                "M50": size + way * other,
                "M63": size + way * (own + own),
                "M49": size - way * own,
                "M63b": size,
                "M63c": size + way * own / 2,
            },
        )

    return [limit(-1), limit(1)]
