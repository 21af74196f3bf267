"""Cones: right answers and slips by the trigonometry itself, one function a question type.

A function gives one pair for each part of the question: what is right, and what each known
slip gives, by its code. Where a code stands for two thoughts the second key has a letter more.
Nothing here comes from the package.
"""

import math
from typing import Any

Parts = list[tuple[Any, dict[str, Any]]]


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def whole(angle: float) -> float | None:
    """Tangent of the whole angle, None from 89° on, where the slip gives no number."""
    return math.tan(math.radians(angle)) if angle < 89 else None


def sine(angle: float) -> float:
    """Sine of half an angle in degrees."""
    return math.sin(math.radians(angle / 2))


def through(length: float, ratio: float | None) -> float | None:
    """Length over a ratio, None without one."""
    return length / ratio if ratio else None


def seat_depth(q: Any) -> Parts:
    """Half of what the diameters differ, over the tangent of half the angle."""
    half, angle = (q.diameter - q.hole_diameter) / 2, q.included_angle
    radian = math.tan(angle / 2)
    slips = {
        "M01": through(half, whole(angle)),
        "M02": 2 * half / T(angle),
        "M03": q.diameter / 2 / T(angle),
        "M04": half * T(angle),
        "M06": half / radian if radian > 0.01 else None,
        "M07": half / T(90),
        "M08": half / sine(angle),
    }
    return [(half / T(angle), slips)]


def seat_diameter(q: Any) -> Parts:
    """Hole and twice what one side gains over the depth."""
    hole, depth, angle = q.hole_diameter, q.depth, q.included_angle
    slips = {
        "M01": hole + 2 * depth * tangent if (tangent := whole(angle)) else None,
        "M02": hole + depth * T(angle),
        "M03": 2 * depth * T(angle),
        "M04": hole + 2 * depth / T(angle),
        "M07": hole + 2 * depth * T(90),
        "M14": hole + depth,
    }
    return [(hole + 2 * depth * T(angle), slips)]


def spot_depth(q: Any) -> Parts:
    """Measure a cone in solid metal, down to its point."""
    half, angle = q.diameter / 2, q.included_angle
    slips = {
        "M01": through(half, whole(angle)),
        "M02": 2 * half / T(angle),
        "M04": half * T(angle),
        "M08": half / sine(angle),
        "M48": (q.diameter - q.hole_diameter) / 2 / T(angle),
    }
    return [(half / T(angle), slips)]


def nose_travel(q: Any) -> Parts:
    """Travel from the touch of a flat nose on a solid face."""
    wide, nose, angle = q.diameter, q.nose_diameter, q.included_angle
    slips = {
        "M01": through((wide - nose) / 2, whole(angle)),
        "M02": (wide - nose) / T(angle),
        "M04": (wide - nose) / 2 * T(angle),
        "M10": wide / 2 / T(angle),
        "M10b": (wide + nose) / 2 / T(angle),
        "M10c": (wide - nose / 2) / 2 / T(angle),
    }
    return [((wide - nose) / 2 / T(angle), slips)]


def edge_travel(q: Any) -> Parts:
    """Travel from the touch of the lips on the edge of the hole."""
    half, angle = (q.diameter - q.hole_diameter) / 2, q.included_angle
    slips = {
        "M01": through(half, whole(angle)),
        "M02": 2 * half / T(angle),
        "M03": q.diameter / 2 / T(angle),
        "M04": half * T(angle),
        "M11": (q.diameter - q.nose_diameter) / 2 / T(angle),
    }
    return [(half / T(angle), slips)]


def depth_error(q: Any) -> Parts:
    """Find what an error of depth does to the diameter."""
    slips = {
        "M01": 2 * q.error * tangent if (tangent := whole(q.included_angle)) else None,
        "M02": q.error * T(q.included_angle),
        "M04": 2 * q.error / T(q.included_angle),
        "M14": q.error,
        "M14b": 2 * q.error,
    }
    return [(2 * q.error * T(q.included_angle), slips)]


def stop_band(q: Any) -> Parts:
    """Find what a tolerance of the diameter leaves to the depth stop."""
    band, angle = q.tolerance_of_diameter, q.included_angle
    slips = {
        "M01": through(band / 2, whole(angle)),
        "M02": band / T(angle),
        "M04": band * 2 * T(angle),
        "M14": band,
        "M14b": band / 2,
    }
    return [(band / 2 / T(angle), slips)]


def depth_limits(q: Any) -> Parts:
    """Deepest seat: greatest diameter on the least hole."""
    angle = q.included_angle
    slips = {
        "M02": (q.greatest_diameter - q.least_hole) / T(angle),
        "M39": (q.greatest_diameter - q.greatest_hole) / 2 / T(angle),
        "M49": (q.least_diameter - q.greatest_hole) / 2 / T(angle),
        "M49b": (
            (q.greatest_diameter + q.least_diameter) / 2 - (q.greatest_hole + q.least_hole) / 2
        )
        / 2
        / T(angle),
    }
    return [((q.greatest_diameter - q.least_hole) / 2 / T(angle), slips)]


def center_hole(q: Any) -> Parts:
    """Measure the 60° cone of a center hole."""
    half = (q.mouth - q.pilot) / 2
    slips = {
        "M02": 2 * half / T(60),
        "M03": q.mouth / 2 / T(60),
        "M04": half * T(60),
        "M07": half / T(82),
        "M08": half / sine(60),
    }
    return [(half / T(60), slips)]


def thread_chamfer(q: Any) -> Parts:
    """Measure a 90° chamfer from the drilled hole to a little over the thread."""
    mouth = q.major + q.over
    slips = {
        "M02": mouth - q.tap_drill,
        "M03": mouth / 2,
        "M07": (mouth - q.tap_drill) / 2 / T(82),
        "M20": q.over / 2,
        "M48": (q.major - q.tap_drill) / 2,
    }
    return [((mouth - q.tap_drill) / 2, slips)]


def angle_found(q: Any) -> Parts:
    """Included angle from both diameters and the depth."""
    half = (q.diameter - q.hole_diameter) / 2
    slips = {
        "M01": math.degrees(math.atan(half / q.depth)),
        "M02": math.degrees(math.atan(2 * half / q.depth)),
        "M02b": 2 * math.degrees(math.atan(2 * half / q.depth)),
        "M03": 2 * math.degrees(math.atan(q.diameter / 2 / q.depth)),
        "M09": 2 * math.degrees(math.atan(q.depth / half)),
    }
    return [(2 * math.degrees(math.atan(half / q.depth)), slips)]


def gage_ball(q: Any) -> Parts:
    """Top of a ball in a cone."""
    radius, angle = q.ball / 2, q.included_angle
    point = q.diameter / 2 / T(angle)
    center = radius / sine(angle)
    slips = {
        "M01": radius / sine(2 * angle) + radius - point,
        "M05": radius / T(angle) + radius - point,
        "M13": q.ball / sine(angle) + q.ball - point,
        "M45": center - point,
        "M45b": center + radius,
    }
    return [(center + radius - point, slips)]


def two_balls(q: Any) -> Parts:
    """Angle from the heights of two balls."""
    radii, tops = (q.large - q.small) / 2, q.large_top - q.small_top
    half = math.degrees(math.asin(radii / (tops - radii)))
    slips = {
        "M09": 180 - 2 * half,
        "M45": half,
        "M45b": 2 * math.degrees(math.atan(radii / (tops - radii))),
        "M45c": 2 * math.degrees(math.asin(radii / tops)),
    }
    return [(2 * half, slips)]


FORMULAS = {
    "seat-depth": seat_depth,
    "seat-diameter": seat_diameter,
    "spot-depth": spot_depth,
    "nose-travel": nose_travel,
    "edge-travel": edge_travel,
    "depth-error": depth_error,
    "stop-band": stop_band,
    "depth-limits": depth_limits,
    "center-hole": center_hole,
    "thread-chamfer": thread_chamfer,
    "angle-found": angle_found,
    "gage-ball": gage_ball,
    "two-balls": two_balls,
}
