"""Own cuts of the questions on countersinks: depth, travel, diameter, angle, how a head lies."""

from typing import Any

from seatwork.drawings.views.cut_shapes import CutSeat
from seatwork.questions.cuts.at_the_machine import lip_speed
from seatwork.questions.cuts.own_cut import (
    OwnCut,
    bars,
    cone_by_angle,
    cone_by_depth,
    cone_by_width,
    held,
    thick,
    words,
)
from seatwork.seats import Countersink, Head
from seatwork.seats.cones import half_tangent
from seatwork.seats.faults import Allowed
from seatwork.units import show_length, show_speed


def _flush(seat: Countersink) -> Head:
    """Return the head that lies flush in a seat."""
    return Head(sharp_diameter=seat.diameter, included_angle=seat.included_angle)


def by_depth(question: Any, _part: int, value: float) -> OwnCut:
    """Cut the cone as deep as the answer; a question with ``seat()``."""
    seat = question.seat()
    return cone_by_depth(seat, _flush(seat), value, question.system)


def by_width(question: Any, _part: int, value: float) -> OwnCut:
    """Cut the cone as wide as the answer; a question with ``seat()``."""
    seat = question.seat()
    return cone_by_width(seat, _flush(seat), value, question.system)


def spot_depth(question: Any, _part: int, value: float) -> OwnCut:
    """Spot a cone with a point so deep; its hole is drilled after."""
    seat = question.seat()
    wide = 2 * seat.tangent * max(value, 0.0)
    said = cone_by_width(seat, _flush(seat), wide, question.system)
    if said.own is None and wide <= seat.hole_diameter:
        mouth = show_length(wide, question.system)
        return words(f"The mouth would be ⌀{mouth}: the drill takes it all away, no seat is left.")
    return said


def sink_below(question: Any, _part: int, value: float) -> OwnCut:
    """Cut the seat deeper for a head that was flush at the first depth."""
    tangent = half_tangent(question.included_angle)
    hole = 2 * question.depth * tangent
    head = Head(sharp_diameter=2 * hole, included_angle=question.included_angle)
    right = Countersink.from_depth(
        depth=question.value(), hole_diameter=hole, included_angle=question.included_angle
    )
    allowed = Allowed(below=question.below)
    return cone_by_depth(right, head, value, question.system, allowed=allowed)


def trial_move(question: Any, _part: int, value: float) -> OwnCut:
    """Set the stop deeper by the answer, after a trial that left the head proud."""
    tangent = half_tangent(question.included_angle)
    sharp = 12 * (question.proud + question.below) * tangent
    head = Head(sharp_diameter=sharp, included_angle=question.included_angle)

    def seat(deeper: float) -> Countersink:
        return Countersink(
            diameter=sharp + 2 * tangent * (deeper - question.proud),
            hole_diameter=sharp / 2,
            included_angle=question.included_angle,
        )

    right = seat(question.value())
    found = cone_by_width(
        right,
        head,
        sharp + 2 * tangent * (value - question.proud),
        question.system,
        allowed=Allowed(below=question.below),
    )
    if found.own is None:
        return found
    said = f"Yours is {show_length(value, question.system)} deeper than on the scrap."
    return OwnCut(own=found.own, right=found.right, said=said)


def flush_diameter(question: Any, _part: int, value: float) -> OwnCut:
    """Cut the seat as wide as the answer, for the head of the list, by 82°."""
    head = Head(
        sharp_diameter=question.sharp_diameter,
        included_angle=82.0,
        edge_diameter=question.edge_diameter,
    )
    right = Countersink(
        diameter=question.sharp_diameter,
        hole_diameter=question.hole_diameter,
        included_angle=82.0,
    )
    return cone_by_width(right, head, value, question.system)


def least_head(question: Any, _part: int, value: float) -> OwnCut:
    """Cut the seat as wide as the answer, and let down the least head of the box."""
    right = Countersink(
        diameter=question.value(),
        hole_diameter=question.least_sharp / 2,
        included_angle=question.included_angle,
    )
    head = Head(sharp_diameter=question.least_sharp, included_angle=question.included_angle)
    allowed = Allowed(below=question.below)
    return cone_by_width(right, head, value, question.system, allowed=allowed)


def oversize_hole(question: Any, _part: int, value: float) -> OwnCut:
    """Cut the seat as wide as the answer on the hole that came out too wide."""
    right = Countersink(
        diameter=question.value(),
        hole_diameter=question.drilled,
        included_angle=question.included_angle,
    )
    head = Head(sharp_diameter=question.diameter, included_angle=question.included_angle)
    return cone_by_width(right, head, value, question.system)


def depth_limits(question: Any, _part: int, value: float) -> OwnCut:
    """Cut the least hole so deep, and hold the mouth against the print."""
    right = Countersink(
        diameter=question.greatest_diameter,
        hole_diameter=question.least_hole,
        included_angle=question.included_angle,
    )
    return cone_by_depth(right, _flush(right), value, question.system)


def angle_found(question: Any, _part: int, value: float) -> OwnCut:
    """Cut a cone of the angle found, as wide as the one measured."""
    right = Countersink.from_depth(
        depth=question.depth, hole_diameter=question.hole_diameter, included_angle=question.value()
    )
    return cone_by_angle(right, _flush(right), value, question.system)


def two_balls(question: Any, _part: int, value: float) -> OwnCut:
    """Cut a cone of the angle found, wide enough for both balls."""
    right = Countersink(
        diameter=1.5 * question.large,
        hole_diameter=0.6 * question.small,
        included_angle=question.value(),
    )
    return cone_by_angle(right, _flush(right), value, question.system)


def read_note(question: Any, part: int, value: float) -> OwnCut:
    """Cut the seat of a note with one number read as the answer: hole, seat, angle."""
    right = Countersink(
        diameter=question.diameter,
        hole_diameter=question.hole_diameter,
        included_angle=question.included_angle,
    )
    if part == 2:
        return cone_by_width(right, _flush(right), value, question.system)
    if part == 3:
        return cone_by_angle(right, _flush(right), value, question.system)
    return OwnCut()


def standing(question: Any, part: int, value: float) -> OwnCut:
    """Hold the head where the answer has it, on the side where it is."""
    if part != 1:
        return OwnCut()
    sign = 1.0 if question.diameter < question.sharp_diameter else -1.0
    return _held(question, question.sharp_diameter, question.diameter, sign, value)


def lot_of_heads(question: Any, part: int, value: float) -> OwnCut:
    """Hold the greatest head, or the least, where the answer has it."""
    sharp = question.least_sharp if part else question.greatest_sharp
    return _held(question, sharp, question.diameter, -1.0 if part else 1.0, value)


def _held(question: Any, sharp: float, wide: float, sign: float, value: float) -> OwnCut:
    angle, system = question.included_angle, question.system
    seat = Countersink(diameter=wide, hole_diameter=wide / 2, included_angle=angle)
    head = Head(sharp_diameter=sharp, included_angle=angle)
    part = CutSeat(screw=head, seat=seat, thickness=thick(seat.depth, system))
    way = "proud" if sign > 0 else "below the face"
    said = f"Yours: the head {show_length(value, system)} {way}."
    return held(part, sign * value, part.standing().amount or 0.0, said)


def wrong_angle(question: Any, part: int, value: float) -> OwnCut:
    """Hold the head so far proud as the answer has it."""
    if part != 1:
        return OwnCut()
    seat = question.seat()
    cut = CutSeat(screw=question.head(), seat=seat, thickness=thick(seat.depth, question.system))
    said = f"Yours: the head {show_length(value, question.system)} proud."
    return held(cut, value, question.value(), said)


def center_hole(question: Any, _part: int, value: float) -> OwnCut:
    """Say which mouth a center hole so deep has."""
    mouth = question.pilot + 2 * half_tangent(question.included_angle) * max(value, 0.0)
    return words(f"A cone {_size(question, value)} deep has a mouth of ⌀{_size(question, mouth)}.")


def pin_depth(question: Any, _part: int, value: float) -> OwnCut:
    """Say how far the pin would go into a seat so wide."""
    room = (value - question.pin) / 2
    if room <= 0:
        return words("The pin would not go into such a seat: it is as wide as the seat, or wider.")
    down = _size(question, room / half_tangent(question.included_angle))
    wide = _size(question, value)
    return words(f"In a seat of ⌀{wide} the pin would stop {down} below the face.")


def whole_part(question: Any, part: int, value: float) -> OwnCut:
    """Cut the seat of the hopper plate by the diameter or the depth found."""
    right = Countersink(
        diameter=question.values()[0],
        hole_diameter=question.hole_diameter,
        included_angle=question.included_angle,
    )
    head = Head(sharp_diameter=question.sharp_diameter, included_angle=question.included_angle)
    allowed = Allowed(below=question.below)
    if part > 1:
        return _in_the_chain(question, part, value)
    cut: Any = (cone_by_width, cone_by_depth)[part]
    found: OwnCut = cut(right, head, value, question.system, allowed=allowed)
    return found


def _in_the_chain(question: Any, part: int, value: float) -> OwnCut:
    """Say what a speed or a time of the chain comes to, by the right steps before it."""
    wide, _, speed, seconds = question.values()
    if part == 2:
        lip, right = (lip_speed(turns, wide) for turns in (value, speed))
        runs, drilled = (
            show_speed(rate, question.system) for rate in (lip, question.surface_speed)
        )
        said = f"At {value:.0f} rev/min the lips run {runs}. The drill runs {drilled}."
        return bars(lip, right, said)
    turns = max(value, 0.0) * speed / 60
    said = f"In {value:.1f} s the spindle makes {turns:.1f} turns."
    return bars(turns, seconds * speed / 60, said)


def _size(question: Any, value: float) -> str:
    return show_length(value, question.system)
