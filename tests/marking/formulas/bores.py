"""Counterbores, pilots, holes and screw lengths: sums, one function a type (see ``cones``)."""

from typing import Any

Parts = list[tuple[Any, dict[str, Any]]]


def bore_diameter(q: Any) -> Parts:
    """Head and clearance."""
    slips = {
        "M13": q.head_diameter + 2 * q.clearance,
        "M15": q.head_diameter - q.clearance,
        "M23": q.head_diameter,
        "M50": q.diameter + q.clearance,
        "M50b": q.hole_diameter + q.clearance,
    }
    return [(q.head_diameter + q.clearance, slips)]


def wrench_room(q: Any) -> Parts:
    """Add clearance to the widest thing that goes in."""
    slips = {
        "M13": q.wrench_diameter + 2 * q.clearance,
        "M22": q.across_corners + q.clearance,
        "M22b": q.washer_diameter + q.clearance,
        "M23": q.wrench_diameter,
    }
    return [(q.wrench_diameter + q.clearance, slips)]


def bore_depth(q: Any) -> Parts:
    """Head height and what is free above."""
    slips = {
        "M13": q.height + 2 * q.below,
        "M15": q.height - q.below,
        "M21": q.diameter + q.below,
        "M23": q.height,
    }
    return [(q.height + q.below, slips)]


def washer_depth(q: Any) -> Parts:
    """Washer, head and what is free above."""
    slips = {
        "M15": q.height + q.washer - q.below,
        "M21": q.washer + q.below,
        "M22": q.height + q.below,
        "M23": q.height + q.washer,
    }
    return [(q.height + q.washer + q.below, slips)]


def floor_left(q: Any) -> Parts:
    """Plate less the depth of the bore."""
    slips = {
        "M15": q.thickness - q.height + q.below,
        "M21": q.thickness - q.below,
        "M23": q.thickness - q.height,
        "M24": q.height + q.below,
    }
    return [(q.thickness - q.height - q.below, slips)]


def deepest_bore(q: Any) -> Parts:
    """Plate less the floor that must stay."""
    slips = {
        "M12": q.thickness - q.floor - q.drill_point,
        "M15": q.thickness + q.floor,
        "M24": q.floor,
    }
    return [(q.thickness - q.floor, slips)]


def pilot_size(q: Any) -> Parts:
    """Stay a little under the hole it turns in."""
    slips = {
        "M13": q.hole_diameter - 2 * q.clearance,
        "M15": q.hole_diameter + q.clearance,
        "M20": q.diameter - q.clearance,
        "M20b": q.diameter,
        "M23": q.hole_diameter,
    }
    return [(q.hole_diameter - q.clearance, slips)]


def clearance_hole(q: Any) -> Parts:
    """Take the column of the fit; tap drill, screw size and the other columns are slips."""
    columns = {"close": q.close, "normal": q.normal, "loose": q.loose}
    right = columns.pop(q.fit)
    first, second = columns.values()
    return [(right, {"M19": q.tap_drill, "M20": q.diameter, "M50": first, "M50b": second})]


def screw_length(q: Any) -> Parts:
    """Measure a flat head screw overall."""
    slips = {
        "M15": q.thickness + q.engagement + q.height,
        "M24": q.thickness,
        "M47": q.thickness + q.engagement - q.height,
    }
    return [(q.thickness + q.engagement, slips)]


def cap_screw_length(q: Any) -> Parts:
    """Measure a cap screw under its head, from the floor of the bore."""
    slips = {
        "M15": q.thickness + q.depth + q.engagement,
        "M24": q.thickness - q.depth,
        "M24b": q.depth + q.engagement,
        "M47": q.thickness + q.engagement,
    }
    return [(q.thickness - q.depth + q.engagement, slips)]


FORMULAS = {
    "bore-diameter": bore_diameter,
    "wrench-room": wrench_room,
    "bore-depth": bore_depth,
    "washer-depth": washer_depth,
    "floor-left": floor_left,
    "deepest-bore": deepest_bore,
    "pilot-size": pilot_size,
    "clearance-hole": clearance_hole,
    "screw-length": screw_length,
    "cap-screw-length": cap_screw_length,
}
