"""Proof of first-cut: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Drill first for a piloted tool; with a rigid one make the flat before the drill comes."""
    clamp, drill, burr = "clamp the casting", "drill the hole", "deburr the hole"
    if "pilot" in q.tool:
        pilot, flat = "put the pilot in", "spotface until"
        right = (clamp, drill, burr, pilot, flat)
        slips = {
            "M48": (clamp, flat, drill, burr, pilot),
            "M48b": (clamp, pilot, drill, burr, flat),
            "M51": (clamp, drill, burr, flat, pilot),
        }
    else:
        flat, spot = "mill the flat", "spot the middle"
        right = (clamp, flat, spot, drill, burr)
        slips = {
            "M48": (clamp, spot, drill, burr, flat),
            "M48b": (clamp, flat, drill, spot, burr),
            "M51": (clamp, spot, flat, drill, burr),
        }
    return [(right, {**slips, "M51b": (right[1], clamp, *right[2:])})]
