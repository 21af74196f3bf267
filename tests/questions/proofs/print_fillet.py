"""Proof of print-fillet: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Compare fillet and hole; half of what the fillet is wider is one leg."""
    hole, fillet, thread = q.hole_diameter, q.fillet, q.thread
    past = max(hole, fillet) / 2 - min(hole, fillet) / 2
    slips = {"M20": fillet / 2 - thread / 2, "M13": fillet, "M19": hole / 2 - thread / 2}
    slips["M02"] = past + past
    yes, no = "yes, the fillet is wider", "no, the fillet goes in"
    if hole >= fillet:
        return [(no, {"M23": yes}), (past, slips)]
    return [(yes, {"M23": no}), (past, slips | {"M23": 0.0})]
