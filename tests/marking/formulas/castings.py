"""Spotfaces and broken edges: right answers and slips, one function a type (see ``cones``)."""

import math
from typing import Any

Parts = list[tuple[Any, dict[str, Any]]]


def rise(q: Any) -> float:
    """How much a sloped pad rises for each unit across."""
    return math.tan(math.radians(q.slope))


def spotface_axis(q: Any) -> Parts:
    """From the low edge, where the cut is just whole, half a cutter to the axis."""
    slips = {
        "M13": q.diameter / 4 * rise(q),
        "M25": q.diameter * rise(q),
        "M26": q.hole_diameter / 2 * rise(q),
    }
    return [(q.diameter / 2 * rise(q), slips)]


def spotface_touch(q: Any) -> Parts:
    """From the high edge across the whole cutter, and under the scale."""
    slips = {
        "M23": q.diameter * rise(q),
        "M25": q.diameter / 2 * rise(q) + q.scale,
        "M25b": q.scale,
        "M26": q.hole_diameter * rise(q) + q.scale,
    }
    return [(q.diameter * rise(q) + q.scale, slips)]


def flange_left(q: Any) -> Parts:
    """At the low side only the allowance for scale is cut."""
    slips = {
        "M23": q.thickness,
        "M24": q.scale,
        "M25": q.thickness - q.diameter * rise(q) - q.scale,
        "M25b": q.thickness - q.diameter / 2 * rise(q) - q.scale,
    }
    return [(q.thickness - q.scale, slips)]


def arc(radius: float, half_chord: float) -> float | None:
    """Height of an arc over half a chord, None where there is none."""
    return radius - math.sqrt(radius**2 - half_chord**2) if half_chord < radius else None


def boss_clean_up(q: Any) -> Parts:
    """From the crown of a round boss down to the flat."""
    radius, half = q.boss_diameter / 2, q.diameter / 2
    slips = {
        "M13": arc(radius, q.diameter),
        "M13b": arc(q.boss_diameter, half),
        "M13c": q.diameter**2 / radius,
        "M24": math.sqrt(radius**2 - half**2),
    }
    return [(arc(radius, half), slips)]


def edge_break(q: Any) -> Parts:
    """Add the greatest break on both sides of the hole."""
    slips = {
        "M15": q.hole_diameter - 2 * q.greatest,
        "M41": q.hole_diameter + q.greatest,
        "M41b": q.hole_diameter + math.sqrt(2) * q.greatest,
        "M49": q.hole_diameter + 2 * q.least,
    }
    return [(q.hole_diameter + 2 * q.greatest, slips)]


def first_cut(q: Any) -> Parts:
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


FORMULAS = {
    "spotface-axis": spotface_axis,
    "spotface-touch": spotface_touch,
    "flange-left": flange_left,
    "boss-clean-up": boss_clean_up,
    "edge-break": edge_break,
    "first-cut": first_cut,
}
