"""Proof of feeler-band: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Bound the amount by the leaf that goes from below and by the next from above."""
    unit, places = ("in", 3) if q.system == "inch" else ("mm", 2)
    scale = 25.4 if q.system == "inch" else 1.0
    thin, thick = (f"{size / scale:.{places}f} {unit}" for size in (q.goes, q.stops))
    other = {"below": "proud", "proud": "below"}[q.side]
    right = f"between {thin} and {thick} {q.side}"
    return [
        (
            right,
            {
                "M49": f"{thin} {q.side}",
                "M49b": f"{thick} {q.side}",
                "M60": f"{q.side} by just the middle of the two leaves",
                "M15": f"between {thin} and {thick} {other}",
            },
        )
    ]
