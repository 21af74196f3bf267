"""Proof of first-cut: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Spot and drill first for a piloted tool; with a rigid one the flat comes before the drill."""
    clamp, drill, burr = "clamp the casting", "drill the hole", "deburr the hole"
    if "pilot" in q.tool:
        spot, pilot, flat = "spot the sloped pad", "put the pilot in", "spotface until"
        right = (clamp, spot, drill, burr, pilot, flat)
        slips = {
            "M48": (clamp, flat, spot, drill, burr, pilot),
            "M48b": (clamp, spot, pilot, drill, burr, flat),
            "M48c": (clamp, drill, spot, burr, pilot, flat),
            "M51": (clamp, spot, drill, burr, flat, pilot),
        }
    else:
        spot, flat = "spot the middle", "mill the flat"
        right = (clamp, flat, spot, drill, burr)
        slips = {
            "M48": (clamp, spot, drill, burr, flat),
            "M48b": (clamp, flat, drill, spot, burr),
            "M51": (clamp, spot, flat, drill, burr),
        }
    return [(right, {**slips, "M51b": (right[1], clamp, *right[2:])})]
