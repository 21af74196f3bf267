"""Finding what a learner's own number cuts, by the id of the question's type."""

from typing import Any

from seatwork.entries.typed import read
from seatwork.errors import SeatworkError
from seatwork.questions.cuts import at_the_machine, cones, flat_seats, limits_and_lengths, prints
from seatwork.questions.cuts.own_cut import Cutter, OwnCut, is_finite
from seatwork.questions.type.parts import NumberPart

CUTTERS: dict[str, Cutter] = {
    "seat-depth": cones.by_depth,
    "edge-travel": cones.by_depth,
    "nose-travel": cones.by_depth,
    "seat-diameter": cones.by_width,
    "spot-depth": cones.spot_depth,
    "sink-below": cones.sink_below,
    "trial-move": cones.trial_move,
    "flush-diameter": cones.flush_diameter,
    "least-head": cones.least_head,
    "oversize-hole": cones.oversize_hole,
    "depth-limits": cones.depth_limits,
    "angle-found": cones.angle_found,
    "two-balls": cones.two_balls,
    "read-note": cones.read_note,
    "standing": cones.standing,
    "lot-of-heads": cones.lot_of_heads,
    "wrong-angle": cones.wrong_angle,
    "center-hole": cones.center_hole,
    "pin-depth": cones.pin_depth,
    "whole-part": cones.whole_part,
    "bore-and-floor": flat_seats.bore_and_floor,
    "bore-depth": flat_seats.bore_depth,
    "bore-diameter": flat_seats.bore_diameter,
    "washer-depth": flat_seats.washer_depth,
    "floor-left": flat_seats.floor_left,
    "deepest-bore": flat_seats.deepest_bore,
    "wrench-room": flat_seats.wrench_room,
    "pilot-size": flat_seats.pilot_size,
    "spotface-depth": flat_seats.spotface_depth,
    "spotface-touch": flat_seats.spotface_touch,
    "spotface-axis": flat_seats.spotface_axis,
    "flange-left": flat_seats.flange_left,
    "boss-clean-up": flat_seats.boss_clean_up,
    "edge-break": flat_seats.edge_break,
    "thread-chamfer": flat_seats.thread_chamfer,
    "print-counterbore": prints.counterbore,
    "print-spotface": prints.spotface,
    "print-thread-seat": prints.thread_seat,
    "print-both-sides": prints.both_sides,
    "print-far-side": prints.far_side,
    "print-blind-tap-drill": prints.blind_tap_drill,
    "print-point-depth": prints.point_depth,
    "print-flush-limits": prints.flush_limits,
    "print-fillet": prints.fillet,
    "print-max-min": prints.max_min,
    "print-slash-stack": prints.slash_stack,
    "print-floor-chamfer": prints.floor_chamfer,
    "print-chamfer-forms": prints.chamfer_forms,
    "spindle-speed": at_the_machine.spindle_speed,
    "cutting-time": at_the_machine.cutting_time,
    "chatter-marks": at_the_machine.chatter_marks,
    "print-limits-aim": limits_and_lengths.limits_aim,
    "gage-ball": limits_and_lengths.gage_ball,
    "clearance-hole": limits_and_lengths.clearance_hole,
    "stop-band": limits_and_lengths.stop_band,
    "depth-error": limits_and_lengths.depth_error,
    "decide": limits_and_lengths.decide,
    "off-center": limits_and_lengths.off_center,
    "tilted-head": limits_and_lengths.tilted_head,
    "screw-length": limits_and_lengths.screw_length,
    "cap-screw-length": limits_and_lengths.cap_screw_length,
}
"""By the id of the type, what cuts a value of it."""

COUNTED = "a count or a name is read off a print or a list; no number of it is cut"
LIMITS = "limits of the title block belong to no one cut"
UNCUT = {
    "print-drill-name": COUNTED,
    "print-pattern-count": COUNTED,
    "print-general-tolerance": LIMITS,
}
"""Types that ask for a number of which nothing comes, and why; choices and orders cut nothing."""


def can_cut(question: Any) -> bool:
    """Tell whether something comes of a number that answers a question."""
    return question.folder is None and question.id in CUTTERS


def own_cut(question: Any, part: int, typed: str) -> OwnCut | None:
    """Return what a number cuts as a learner typed it; None where nothing comes of it.

    Parameters
    ----------
    question : Question
        What was asked.
    part : int
        Number of the part that it answers.
    typed : str
        As typed; it is read as the answer is, never evaluated.
    """
    asked = question.parts[part]
    if not can_cut(question) or not isinstance(asked, NumberPart):
        return None
    try:
        amount = read(typed, asked.measure, question.system).value
        value = asked.measure.inside(amount, question.system)
        if not is_finite(value):
            return None
        found = CUTTERS[question.id](question, part, value)
    except SeatworkError:
        return None
    return found if found.own or found.said else None


def right_cut(question: Any, part: int) -> OwnCut | None:
    """Return what the right answer to a part cuts; None where nothing comes of it."""
    asked = question.parts[part]
    if not can_cut(question) or not isinstance(asked, NumberPart):
        return None
    try:
        found = CUTTERS[question.id](question, part, asked.value)
    except SeatworkError:
        return None
    return found if found.own or found.said else None
