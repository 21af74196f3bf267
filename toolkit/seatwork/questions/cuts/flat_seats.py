"""Own cuts of the questions on counterbores, spotfaces and broken edges."""

from math import sqrt
from typing import Any

from seatwork.drawings.views.cut_shapes import CutSeat
from seatwork.questions.cuts.own_cut import OwnCut, beside, thick, words
from seatwork.seats import Chamfer, Counterbore, Spotface
from seatwork.seats.cones import half_tangent
from seatwork.seats.faults import Allowed, CapScrew
from seatwork.units import show_length

CLEARANCE = 1.06
"""Hole over thread, where the question names no hole [-]. Common practice, no source."""

SOCKET, HEX = 1.5, 1.73
"""Head over thread: of a socket head cap screw, and of a hexagon across its corners [-]. From
memory."""

AROUND = 1.1
"""Counterbore over head, where the question names no width [-]. Common practice, no source."""


def bored(
    question: Any, screw: CapScrew, sizes: tuple[float, float, float], value: float, **more: Any
) -> OwnCut:
    """Counterbore so deep; `sizes` are width, hole and the right depth [mm]."""
    wide, hole, depth = sizes
    system = question.system
    thickness = more.pop("thickness", None) or thick(depth, system)

    def cut(deep: float) -> CutSeat:
        seat = Counterbore(diameter=wide, depth=deep, hole_diameter=hole)
        return CutSeat(screw=screw, seat=seat, thickness=thickness, **more)

    def own() -> CutSeat | str:
        if not value > 0:
            return "With no depth nothing is cut."
        if value > 1.5 * thickness:
            plate = show_length(thickness, system)
            return f"{show_length(value, system)} deep, in a plate {plate} thick: it goes through."
        return cut(value)

    return beside(cut(depth), own, f"Yours is {show_length(value, system)} deep.")


def bore_depth(question: Any, _part: int, value: float) -> OwnCut:
    """Counterbore so deep for a hexagon cap screw."""
    thread = question.diameter
    screw = CapScrew(head_diameter=HEX * thread, head_height=question.height, diameter=thread)
    sizes = (AROUND * screw.head_diameter, CLEARANCE * thread, question.value())
    return bored(question, screw, sizes, value, allowed=Allowed(sunk=question.below))


def washer_depth(question: Any, _part: int, value: float) -> OwnCut:
    """Counterbore so deep for a socket head cap screw on its washer, the two drawn as one."""
    thread = question.height  # the head of a socket head cap screw is as high as its thread
    screw = CapScrew(
        head_diameter=SOCKET * thread,
        head_height=question.height + question.washer,
        diameter=thread,
    )
    sizes = (1.2 * screw.head_diameter, CLEARANCE * thread, question.value())
    return bored(question, screw, sizes, value, allowed=Allowed(sunk=question.below))


def floor_left(question: Any, _part: int, value: float) -> OwnCut:
    """Counterbore so deep that the answer is left under the head."""
    thread = question.height
    screw = CapScrew(head_diameter=SOCKET * thread, head_height=question.height, diameter=thread)
    depth = question.height + question.below
    own = question.thickness - value
    sizes = (AROUND * screw.head_diameter, CLEARANCE * thread, depth)
    left = show_length(value, question.system)
    plate = show_length(question.thickness, question.system)
    if own <= 0:
        return words(f"{left} left of a plate {plate} thick: then nothing is cut.")
    found = bored(
        question, screw, sizes, own, thickness=question.thickness,
        allowed=Allowed(sunk=question.below),
    )  # fmt: skip
    deep = show_length(own, question.system)
    said = f"To leave {left}, you bore {deep} deep."
    return OwnCut(own=found.own, right=found.right, said=said)


def bore_and_floor(question: Any, part: int, value: float) -> OwnCut:
    """Counterbore by the depth, by the floor left under it, or deeper by so much."""
    depth, _, more = question.values()
    thread, plate = question.diameter, question.thickness
    screw = CapScrew(head_diameter=HEX * thread, head_height=question.height, diameter=thread)
    own = (value, plate - value, depth + value)[part]
    allowed = Allowed(sunk=question.below)
    if part == 2:
        depth += more
        allowed = Allowed(sunk=plate, floor=question.least_floor * 0.999)
    if own <= 0:
        system = question.system
        left, whole = show_length(value, system), show_length(plate, system)
        return words(f"{left} left of a plate {whole} thick: then nothing is cut.")
    sizes = (AROUND * screw.head_diameter, CLEARANCE * thread, depth)
    return bored(question, screw, sizes, own, thickness=plate, allowed=allowed)


def deepest_bore(question: Any, _part: int, value: float) -> OwnCut:
    """Counterbore so deep, and look at the floor."""
    depth = question.value()
    thread = depth / 1.2
    screw = CapScrew(head_diameter=SOCKET * thread, head_height=depth, diameter=thread)
    sizes = (AROUND * screw.head_diameter, CLEARANCE * thread, depth)
    allowed = Allowed(sunk=question.thickness, floor=question.floor * 0.999)
    return bored(question, screw, sizes, value, thickness=question.thickness, allowed=allowed)


def bore_diameter(question: Any, _part: int, value: float) -> OwnCut:
    """Counterbore so wide for a socket head cap screw."""
    system, thread = question.system, question.diameter
    screw = CapScrew(head_diameter=question.head_diameter, head_height=thread, diameter=thread)
    depth = 1.05 * thread
    thickness = thick(depth, system)

    def cut(wide: float) -> CutSeat:
        seat = Counterbore(diameter=wide, depth=depth, hole_diameter=question.hole_diameter)
        return CutSeat(screw=screw, seat=seat, thickness=thickness)

    def own() -> CutSeat | str:
        if value <= question.hole_diameter:
            return "No counterbore: it is no wider than the hole, so nothing is cut."
        return cut(value)

    return beside(cut(question.value()), own, f"Yours is ⌀{show_length(value, system)}.")


def wrench_room(question: Any, _part: int, value: float) -> OwnCut:
    """Say whether the wrench goes into a counterbore so wide."""
    wide, over = show_length(value, question.system), question.wrench_diameter - value
    if over > 0:
        more = show_length(over, question.system)
        return words(f"In a bore of ⌀{wide} the wrench socket does not go: it is {more} wider.")
    play = show_length(-over / 2, question.system)
    return words(f"In a bore of ⌀{wide} the wrench socket has {play} of room to each side.")


def pilot_size(question: Any, _part: int, value: float) -> OwnCut:
    """Say how a pilot so wide runs in the hole."""
    wide, play = show_length(value, question.system), question.hole_diameter - value
    if value <= 0:
        return words("That is no pilot at all.")
    if play <= 0:
        return words(f"A pilot of ⌀{wide} does not go into the hole.")
    return words(f"A pilot of ⌀{wide} has {show_length(play, question.system)} of play in all.")


def spotface_depth(question: Any, part: int, value: float) -> OwnCut:
    """Spotface by its travel, or by the depth found at the axis."""
    own = value if part == 1 else value + question.travel - question.at_axis
    return _faced(question, question.travel, own, question.scale)


def spotface_touch(question: Any, _part: int, value: float) -> OwnCut:
    """Spotface so far below the first touch."""
    return _faced(question, question.value(), value, question.scale)


def spotface_axis(question: Any, _part: int, value: float) -> OwnCut:
    """Spotface so far below the sloped face at the axis."""
    half = question.diameter / 2 * half_tangent(2 * question.slope)
    return _faced(question, 2 * half, value + half, 0.0)


def _faced(question: Any, right: float, own: float, scale: float, **more: Any) -> OwnCut:
    """Face a sloped pad; `right` and `own` are travels from the first touch [mm]."""
    system, wide, hole = question.system, question.diameter, question.hole_diameter
    clean = wide * half_tangent(2 * question.slope)
    thickness = more.pop("thickness", None) or thick(right + hole, system)
    thread = hole / CLEARANCE
    screw = CapScrew(
        head_diameter=(hole + 2 * wide) / 3, head_height=0.65 * thread, diameter=thread
    )

    def cut(depth: float) -> CutSeat:
        seat = Spotface(diameter=wide, hole_diameter=hole)
        allowed = Allowed(sunk=max(scale, 0.05) * 1.01)
        return CutSeat(
            screw=screw, seat=seat, thickness=thickness, depth=depth, clean=clean, allowed=allowed
        )

    def make() -> CutSeat | str:
        if not own > 0:
            return "That is above the first touch: nothing is cut."
        if own > thickness + clean:
            plate = show_length(thickness, system)
            return f"That goes through a pad {plate} thick."
        return cut(own)

    return beside(cut(right), make, f"Yours is {show_length(own, system)} below the first touch.")


def flange_left(question: Any, _part: int, value: float) -> OwnCut:
    """Say how far the cut would go into the low side."""
    deep, left = question.thickness - value, show_length(value, question.system)
    if deep < 0:
        return words(f"{left} left is more than the flange had there.")
    cut = show_length(deep, question.system)
    return words(f"If {left} is left, the cut goes {cut} into the low side.")


def boss_clean_up(question: Any, _part: int, value: float) -> OwnCut:
    """Say how wide the flat on a round boss is at such a depth."""
    radius = question.boss_diameter / 2
    if not 0 < value < radius:
        return words("That is outside the half of the boss: no flat comes of it.")
    flat = show_length(2 * sqrt(radius**2 - (radius - value) ** 2), question.system)
    asked = show_length(question.diameter, question.system)
    deep = show_length(value, question.system)
    return words(f"At {deep} below the crown the flat is {flat} across. Asked: {asked}.")


def edge_break(question: Any, _part: int, value: float) -> OwnCut:
    """Break the mouth of a hole so wide, under the head of a cap screw."""
    return broken(question, question.value(), value)


def broken(question: Any, right: float, value: float) -> OwnCut:
    """Break the mouth of a hole so wide; `right` is the mouth asked for [mm]."""
    hole, system = question.hole_diameter, question.system
    thread = hole / CLEARANCE
    screw = CapScrew(head_diameter=SOCKET * thread, head_height=thread, diameter=thread)
    thickness = thick(thread, system)

    def cut(wide: float) -> CutSeat:
        seat = Chamfer(leg=(wide - hole) / 2, included_angle=90.0)
        return CutSeat(screw=screw, seat=seat, thickness=thickness, hole_diameter=hole)

    def own() -> CutSeat | str:
        if value <= hole:
            return "No wider than the hole: the edge is not broken."
        return cut(value)

    return beside(cut(right), own, f"Yours is ⌀{show_length(value, system)} wide.")


def thread_chamfer(question: Any, _part: int, value: float) -> OwnCut:
    """Say how wide the mouth of a chamfer so deep is, beside the thread."""
    mouth = question.tap_drill + 2 * half_tangent(question.included_angle) * max(value, 0.0)
    system = question.system
    wide, major = show_length(mouth, system), show_length(question.major, system)
    deep = show_length(value, system)
    lack = " The tap raises a burr at the face." if mouth <= question.major else ""
    return words(f"A chamfer {deep} deep is ⌀{wide} wide; the thread has ⌀{major}.{lack}")
