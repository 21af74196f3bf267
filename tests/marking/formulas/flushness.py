"""Heads in seats: right answers and slips, one function a question type (see ``cones``)."""

import math
from typing import Any

Parts = list[tuple[Any, dict[str, Any]]]


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def flush_diameter(q: Any) -> Parts:
    """Flush where the theoretical sharp diameter lies in the face."""
    slips = {
        "M03": q.hole_diameter,
        "M13": q.sharp_diameter / 2,
        "M16": q.edge_diameter,
        "M16b": (q.edge_diameter + q.sharp_diameter) / 2,
    }
    return [(q.sharp_diameter, slips)]


def standing(q: Any) -> Parts:
    """Lay a head in a seat of its own angle: which way, and how far."""
    off, angle = abs(q.sharp_diameter - q.diameter), q.included_angle
    way, other = ("proud", "below")[:: 1 if q.sharp_diameter > q.diameter else -1]
    slips = {
        "M01": off / 2 / math.tan(math.radians(angle)) if angle < 89 else None,
        "M02": off / T(angle),
        "M04": off / 2 * T(angle),
        "M14": off,
    }
    return [(way, {"M15": other, "M17": "flush"}), (off / 2 / T(angle), slips)]


def sink_below(q: Any) -> Parts:
    """Move the seat down with its head, whatever its angle."""
    slips = {
        "M14": q.depth + q.below / 2 / T(q.included_angle),
        "M14b": q.depth + q.below * 2 * T(q.included_angle),
        "M15": q.depth - q.below,
        "M23": q.depth,
    }
    return [(q.depth + q.below, slips)]


def least_head(q: Any) -> Parts:
    """Find the widest seat in which the least head is low enough."""
    wider = 2 * T(82) * q.below
    slips = {
        "M14": q.least_sharp + q.below,
        "M14b": q.least_sharp + 2 * q.below,
        "M15": q.least_sharp - wider,
        "M49": q.greatest_sharp + wider,
    }
    return [(q.least_sharp + wider, slips)]


def lot_of_heads(q: Any) -> Parts:
    """Greatest head proud, least head below, in one seat."""
    spread = (q.greatest_sharp - q.least_sharp) / 2 / T(82)
    return [
        (off / 2 / T(82), {"M02": off / T(82), "M14": off, "M49": spread})
        for off in (q.greatest_sharp - q.diameter, q.diameter - q.least_sharp)
    ]


def wrong_angle(q: Any) -> Parts:
    """Let a steeper head ride the hole, a flatter one in too small a seat its rim."""
    head, seat = T(q.head_angle), T(q.included_angle)
    at_hole = (q.head_diameter - q.hole_diameter) / 2 / head
    at_hole -= (q.diameter - q.hole_diameter) / 2 / seat
    wider = q.head_diameter - q.diameter
    if q.head_angle < q.included_angle:
        points = q.head_diameter / 2 / head - q.diameter / 2 / seat
        slips = {"M02": 2 * at_hole, "M03": points, "M17": 0.0}
        return [("narrow end", {"M17": "all along", "M18": "wide end"}), (at_hole, slips)]
    slips = {"M07": wider / 2 / seat, "M14": wider, "M17": 0.0, "M18": at_hole}
    return [("wide end", {"M17": "all along", "M18": "narrow end"}), (wider / 2 / head, slips)]


def flush_contact(q: Any) -> Parts:
    """Lay a flatter head of the seat's own diameter flush, on a line at its rim."""
    assert q.head_angle > q.included_angle, "a steeper head would stand proud, not flush"
    return [
        ("rim", {"M17": "all along the cone", "M18": "edge of the hole"}),
        ("accepts no seat", {"M17": "it is flush"}),
    ]


def off_center(q: Any) -> Parts:
    """One side of the seat comes closer by the whole offset, and lifts the head."""
    rise = q.offset / T(q.included_angle)
    slips = {
        "M02": 2 * rise,
        "M04": q.offset * T(q.included_angle),
        "M13": rise / 2,
        "M14": q.offset,
        "M17": 0.0,
    }
    return [(rise, slips)]


def oversize_hole(q: Any) -> Parts:
    """Touched off on a wider hole, the same travel makes a seat as much wider."""
    grown = q.drilled - q.hole_diameter
    slips = {
        "M12": q.diameter,
        "M13": q.diameter + 2 * grown,
        "M14": q.diameter + 2 * T(q.included_angle) * grown,
        "M15": q.diameter - grown,
    }
    return [(q.diameter + grown, slips)]


FORMULAS = {
    "flush-diameter": flush_diameter,
    "standing": standing,
    "sink-below": sink_below,
    "least-head": least_head,
    "lot-of-heads": lot_of_heads,
    "wrong-angle": wrong_angle,
    "flush-contact": flush_contact,
    "off-center": off_center,
    "oversize-hole": oversize_hole,
}
