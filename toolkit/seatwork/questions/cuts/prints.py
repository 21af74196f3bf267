"""Own cuts of the questions that read a print."""

from typing import Any

from seatwork.questions.cuts.flat_seats import CLEARANCE, SOCKET, bored, broken
from seatwork.questions.cuts.own_cut import OwnCut, cone_by_depth, cone_by_width, words
from seatwork.seats import Countersink, Head
from seatwork.seats.faults import Allowed, CapScrew
from seatwork.units import show_length

UNDER = 0.55
"""Hole over head of a flat head screw, where the note has no hole [-]. From memory."""

UNDER_FACE = 0.25
"""Top of the head below the face, where the note gives a bore and no screw [mm]. Common
practice, no source."""

HEAD, BORE, FLOOR = 0, 1, 2
"""Parts of the question on a counterbore: its width, its depth, what it leaves."""


def _cone(question: Any, depth: float) -> OwnCut:
    """Cut the noted seat so deep, with the head that lies flush in it."""
    seat = Countersink(
        diameter=question.diameter,
        hole_diameter=question.hole_diameter,
        included_angle=question.included_angle,
    )
    head = Head(sharp_diameter=seat.diameter, included_angle=seat.included_angle)
    return cone_by_depth(seat, head, depth, question.system, thickness=question.thickness)


def far_side(question: Any, _part: int, value: float) -> OwnCut:
    """Cut the cone from the far face up to where it was said to begin."""
    found = _cone(question, question.thickness - value)
    begins = show_length(value, question.system)
    said = f"A cone that begins {begins} below the near face. {found.said}"
    return OwnCut(own=found.own, right=found.right, said=said)


def both_sides(question: Any, _part: int, value: float) -> OwnCut:
    """Cut one of two equal cones that leave so much between them."""
    found = _cone(question, (question.thickness - value) / 2)
    left = show_length(value, question.system)
    said = f"Two cones that leave {left} between them; one is drawn. {found.said}"
    return OwnCut(own=found.own, right=found.right, said=said)


def flush_limits(question: Any, part: int, value: float) -> OwnCut:
    """Cut the seat so wide, and let the head down in it."""
    below = (question.least_below, question.greatest_below)[part]
    sharp = question.sharp_diameter
    seat = Countersink(
        diameter=sharp + question.growth(below),
        hole_diameter=UNDER * sharp,
        included_angle=question.included_angle,
    )
    head = Head(sharp_diameter=sharp, included_angle=question.included_angle)
    allowed = Allowed(below=question.greatest_below)
    return cone_by_width(seat, head, value, question.system, allowed=allowed)


def _bore(question: Any, value: float, wide: float, depth: float, **more: Any) -> OwnCut:
    """Bore so deep for a socket head cap screw whose top would lie flush, or a little below."""
    hole = question.hole_diameter
    thread = hole / CLEARANCE
    high = max(depth - UNDER_FACE, depth / 2)
    screw = CapScrew(head_diameter=SOCKET * thread, head_height=high, diameter=thread)
    allowed = more.pop("allowed", Allowed(sunk=UNDER_FACE * 1.1))
    return bored(question, screw, (wide, hole, depth), value, allowed=allowed, **more)


def counterbore(question: Any, part: int, value: float) -> OwnCut:
    """Bore as wide, as deep, or so that as much is left as the answer says."""
    system = question.system
    if part == HEAD:
        hole = show_length(question.hole_diameter, system)
        ring = show_length((value - question.hole_diameter) / 2, system)
        if value <= question.hole_diameter:
            return words(f"No wider than the hole of {hole}: nothing is cut.")
        return words(f"A bore of ⌀{show_length(value, system)} leaves a ring of {ring} to sit on.")
    deep = question.thickness - value if part == FLOOR else value
    if deep <= 0:
        return words("Then nothing is cut.")
    more = {"thickness": question.thickness}
    return _bore(question, deep, question.diameter, question.depth, **more)


def max_min(question: Any, _part: int, value: float) -> OwnCut:
    """Bore so deep, and look at the floor."""
    allowed = Allowed(sunk=question.thickness, floor=question.least_floor * 0.999)
    more = {"thickness": question.thickness, "allowed": allowed}
    return _bore(question, value, question.diameter, question.deepest, **more)


def slash_stack(question: Any, part: int, value: float) -> OwnCut:
    """Bore so deep; of a width nothing is said."""
    if part != FLOOR:
        return OwnCut()
    return _bore(question, value, question.diameter, question.depth)


def chamfer_forms(question: Any, _part: int, value: float) -> OwnCut:
    """Break the mouth of the hole so wide."""
    return broken(question, question.mouth, value)


def _said(question: Any, value: float) -> str:
    return show_length(value, question.system)


def spotface(question: Any, _part: int, value: float) -> OwnCut:
    """Say what a flat so wide leaves round the hole."""
    ring = (value - question.hole_diameter) / 2
    if ring <= 0:
        return words("No wider than the hole: no flat is left for the head.")
    return words(f"A flat of ⌀{_said(question, value)} leaves {_said(question, ring)} to sit on.")


def thread_seat(question: Any, part: int, value: float) -> OwnCut:
    """Say what a drill or a thread so deep, or a chamfer so deep, comes to."""
    deep = _said(question, value)
    if part < FLOOR:
        kind = ("drill", "thread")[part]
        over = question.drilled - value if part else value - question.threaded
        if over <= 0:
            return words(f"With the {kind} {deep} deep no room is left under the thread.")
        return words(f"With the {kind} {deep} deep, {_said(question, over)} is left under it.")
    mouth = question.drill + 2 * max(value, 0.0)
    wide, major = _said(question, mouth), _said(question, question.major)
    lack = " The tap raises a burr at the face." if mouth <= question.major else ""
    return words(f"A chamfer {deep} deep is ⌀{wide} wide; the thread has ⌀{major}.{lack}")


def point_depth(question: Any, _part: int, value: float) -> OwnCut:
    """Say how deep the hole is full width if its point ends there."""
    full = value - question.point
    if full <= 0:
        return words("Then only the point of the drill is in the part.")
    asked = question.stated("depth")
    return words(
        f"With its point there, the hole is full width {_said(question, full)} deep. "
        f"The note says {asked}."
    )


def blind_tap_drill(question: Any, _part: int, value: float) -> OwnCut:
    """Say what a drill so deep leaves for the lead of the tap."""
    left = value - question.threaded
    lead = _said(question, question.lead * question.pitch)
    if left <= 0:
        return words(f"Nothing is left under the thread; the lead of the tap takes {lead}.")
    return words(f"{_said(question, left)} is left under the thread; the lead takes {lead}.")


def floor_chamfer(question: Any, _part: int, value: float) -> OwnCut:
    """Say where such an end of the chamfer lies from the floor of the bore."""
    deeper, floor = value - question.depth, question.stated("depth")
    if deeper <= 0:
        return words(f"That is not below the floor of the bore, which lies at {floor}.")
    wide = question.hole_diameter + 2 * deeper
    return words(
        f"That is {_said(question, deeper)} below the floor, so ⌀{_said(question, wide)} wide. "
        f"The note says {question.stated('mouth')}."
    )


def fillet(question: Any, _part: int, value: float) -> OwnCut:
    """Say how wide a mouth such a leg makes beside the fillet."""
    mouth = _said(question, question.hole_diameter + 2 * max(value, 0.0))
    reach = _said(question, question.fillet)
    return words(f"A leg so wide makes a mouth of ⌀{mouth}. The fillet reaches ⌀{reach}.")
