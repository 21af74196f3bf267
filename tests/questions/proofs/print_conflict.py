"""Proof of print-conflict: right answer and slips, from nothing of the package."""

from typing import Any

FAULTS = {
    "angle": "not that of the screw",
    "hole": "smaller than its hole",
    "thread": "deeper than its drill",
    "plate": "deeper than the plate",
    "no angle": "has no angle",
    "two sizes": "two diameters",
}


def parts(q: Any) -> list[Any]:
    """See what fights, and ask."""
    shown = q.faults.split("; ")
    others = [name for name in shown if name not in (q.fight, "nothing")]
    slips = {f"M62{'abc'[number]}": FAULTS[name] for number, name in enumerate(others)}
    return [
        (FAULTS[q.fight], slips | {"M64": "nothing, it can be cut"}),
        (
            "ask, and write down",
            {"M64": "cut it as printed", "M64b": "as you think", "M64c": "halfway"},
        ),
    ]
