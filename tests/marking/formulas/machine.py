"""Speeds, times, notes and the chain of a whole part (see ``cones``)."""

import math
from collections.abc import Sequence
from typing import Any

Parts = list[tuple[Any, dict[str, Any]]]


def T(angle: float) -> float:  # noqa: N802  # the tangent of half an angle, as the trade writes it
    """Tangent of half an angle in degrees."""
    return math.tan(math.radians(angle / 2))


def spindle_speed(q: Any) -> Parts:
    """Half the drilling speed, at the widest diameter."""
    right = 1000 * q.surface_speed / (math.pi * q.diameter) / 2
    slips = {
        "M28": math.pi * right,
        "M28b": right / 12 if q.system == "inch" else None,
        "M32": right * q.diameter / q.hole_diameter,
        "M33": 2 * right,
        "M33b": right / 2,
    }
    return [(right, slips)]


def speed_step(q: Any) -> Parts:
    """Take the next step down from the lower of two speeds."""
    steps = [float(step) for step in q.steps.split(",")]
    held = min(q.wanted, q.limit)
    right = max(step for step in steps if step <= held)
    faster = max(step for step in steps if step <= q.wanted)
    next_up = min((step for step in steps if step > right), default=None)
    slips = {
        "M34": next_up if next_up != faster else None,
        "M34b": q.wanted if q.wanted not in steps else None,
        "M34c": q.limit if q.limit < q.wanted and q.limit not in steps else None,
        "M35": faster if faster != right else None,
    }
    return [(right, slips)]


def cutting_time(q: Any) -> Parts:
    """Divide the turns over the travel by the turns in a second."""
    turns = q.travel / q.feed
    right = turns / (q.speed / 60)
    return [(right, {"M36": turns, "M36b": right / q.flutes, "M36c": right * q.flutes})]


def chatter_marks(q: Any) -> Parts:
    """Multiply the marks of a turn by the turns of a second."""
    return [(q.marks * q.speed / 60, {"M36": q.marks * q.speed, "M36b": q.speed / 60})]


def quieter_cut(q: Any) -> Parts:
    """Ease off, stop, slow down, feed firmly; neither faster, nor more flutes, nor rubbing."""
    slips = {
        "M35": "push through",
        "M46": "speed up",
        "M46b": "more flutes",
        "M46c": "as lightly as possible",
    }
    return [("slow down", slips)]


def read_note(q: Any) -> Parts:
    """Count, hole, seat, angle, each in its place."""
    hole, seat = q.hole_diameter, q.diameter
    return [
        (q.count, {}),
        (hole, {"M13": hole / 2, "M44": seat}),
        (seat, {"M13": seat / 2, "M44": hole}),
        (q.included_angle, {"M01": q.included_angle / 2}),
    ]


# Size asked for -> size picked instead -> slip: along the slope for straight down is M08, down to
# the point for down to the hole's edge (or back) M03, a diameter in it M44, fields swapped.
PICKED = {
    "depth of the cone, face to hole edge": {"apex": "M03", "slant": "M08"},
    "depth to the point of the cone": {"depth": "M03", "slant": "M08"},
    "width of the cone along its slope": {"depth": "M08", "apex": "M08"},
    "diameter at the face": {},
    "diameter of the hole": {},
}
NAMED = dict(zip(PICKED, ("depth", "apex", "slant", "diameter", "hole"), strict=True))


def which_size(q: Any) -> Parts:
    """Find the letter at the size named."""
    letters = dict(zip(q.order.split(","), "ABCDE", strict=True))
    slips: dict[str, Any] = {}
    for size in sorted(set(letters) - {NAMED[q.wanted]}):
        code = PICKED[q.wanted].get(size, "M44")
        slips[code + "bcd"[: sum(key[:3] == code for key in slips)]] = letters[size]
    return [(letters[NAMED[q.wanted]], slips)]


def whole_part(q: Any, own: Sequence[float]) -> Parts:
    """Screw to seat, seat to depth, to speed, to seconds, each from the learner's step before."""
    slope, hole = T(q.included_angle), q.hole_diameter
    wide = q.sharp_diameter + 2 * slope * q.below
    diameter = own[0] if own else wide
    deep = (diameter - hole) / 2 / slope
    depth = own[1] if len(own) > 1 else deep
    turns = 1000 * q.surface_speed / (math.pi * diameter) / 2
    speed = own[2] if len(own) > 2 else turns
    seconds = depth / q.feed / speed * 60
    return [
        (wide, {"M15": q.sharp_diameter - 2 * slope * q.below, "M23": q.sharp_diameter}),
        (
            deep,
            {"M02": 2 * deep, "M03": diameter / 2 / slope, "M04": (diameter - hole) / 2 * slope},
        ),
        (turns, {"M33": 2 * turns, "M33b": turns / 2}),
        (seconds, {"M36": seconds / 60, "M36b": depth / q.feed}),
    ]


FORMULAS = {
    "spindle-speed": spindle_speed,
    "speed-step": speed_step,
    "cutting-time": cutting_time,
    "chatter-marks": chatter_marks,
    "quieter-cut": quieter_cut,
    "read-note": read_note,
    "which-size": which_size,
}
CHAINS = {"whole-part": whole_part}
