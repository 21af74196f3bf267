"""What comes of one's own number for limits, a gage ball, a hole to pass through, a screw's length.

A sentence says what the number comes to; a head, a pad, a band of good sizes is drawn beside it.
"""

from typing import Any

from seatwork.drawings.views.beside_heads import LeaningPad, LiftedHead
from seatwork.drawings.views.beside_right import DoubtBand
from seatwork.questions.cuts.own_cut import OwnCut, cone_by_width, drawn, words
from seatwork.seats import Countersink, Head, bolting
from seatwork.seats.cones import half_tangent
from seatwork.seats.heads import FLUSH
from seatwork.units import show_angle, show_length


def limits_aim(question: Any, part: int, value: float) -> OwnCut:
    """Cut the seat of a print as wide as a limit, or as the aim, for the head it fits."""
    right = Countersink(
        diameter=question.parts[part].value,
        hole_diameter=question.hole_diameter,
        included_angle=question.included_angle,
    )
    head = Head(sharp_diameter=right.diameter, included_angle=right.included_angle)
    return cone_by_width(right, head, value, question.system)


def gage_ball(question: Any, _part: int, value: float) -> OwnCut:
    """Say whether the ball could stand so high."""
    top = show_length(value, question.system)
    if abs(value - question.value()) <= FLUSH:
        return words(f"With its top {top} above the face the ball lies in its seat.")
    if value > question.value():
        return words(f"With its top {top} above the face the ball would touch nothing.")
    return words(f"With its top {top} above the face the ball would be in the metal.")


def clearance_hole(question: Any, _part: int, value: float) -> OwnCut:
    """Say how the screw goes through a hole so wide."""
    hole, thread = (show_length(size, question.system) for size in (value, question.diameter))
    play = value - question.diameter
    if play <= 0:
        return words(f"The screw of {thread} does not go through a hole of {hole}.")
    left = show_length(play, question.system)
    return words(f"In a hole of {hole} the screw of {thread} has {left} of play in all.")


def stop_band(question: Any, _part: int, value: float) -> OwnCut:
    """Say what a stop so far off does to the diameter."""
    off = 2 * half_tangent(question.included_angle) * value
    wide, stop, asked = (
        show_length(size, question.system) for size in (off, value, question.tolerance_of_diameter)
    )
    return words(f"A stop off by {stop} makes the seat {wide} wider or narrower. Allowed: {asked}.")


def depth_error(question: Any, _part: int, value: float) -> OwnCut:
    """Say how much deeper a seat so much wider is."""
    deep, wide, slipped = (
        show_length(size, question.system)
        for size in (value / 2 / half_tangent(question.included_angle), value, question.error)
    )
    return words(f"A seat {wide} wider is {deep} deeper. The stop slipped {slipped}.")


def decide(question: Any, _part: int, value: float) -> OwnCut:
    """Say what a seat may measure in truth that is passed from such a reading on."""
    low, high, least = (
        show_length(size, question.system)
        for size in (value - question.doubt, value + question.doubt, question.least_diameter)
    )
    said = f"A seat that reads so may measure {low} to {high}. The least allowed is {least}."
    band = DoubtBand(
        least=question.least_diameter,
        greatest=question.greatest_diameter,
        doubt=question.doubt,
        right=question.value(),
        own=value,
    )
    return drawn(band, said)


def off_center(question: Any, _part: int, value: float) -> OwnCut:
    """Say how far beside its hole a seat lies that lifts a head so much."""
    beside, up, offset = (
        show_length(size, question.system)
        for size in (value * half_tangent(question.included_angle), value, question.offset)
    )
    said = f"A head lifted by {up} clears a seat {beside} beside its hole. Cut was {offset}."
    head = LiftedHead(
        offset=question.offset,
        included_angle=question.included_angle,
        right=question.value(),
        own=value,
    )
    return drawn(head, said)


def tilted_head(question: Any, _part: int, value: float) -> OwnCut:
    """Say how far a pad leans that leaves such a gap under a head."""
    gap, wide = (show_length(size, question.system) for size in (value, question.width))
    lean = show_angle(bolting.seat_tilt(gap=value, across=question.width))
    said = f"A gap of {gap} over {wide} is a lean of {lean}."
    return drawn(LeaningPad(width=question.width, right=question.value(), own=value), said)


def screw_length(question: Any, _part: int, value: float) -> OwnCut:
    """Say how far a flat head screw so long, measured over all, goes into the thread."""
    return _reach(question, value, value - question.thickness)


def cap_screw_length(question: Any, _part: int, value: float) -> OwnCut:
    """Say how far a cap screw so long under its head goes into the thread."""
    return _reach(question, value, value - (question.thickness - question.depth))


def _reach(question: Any, value: float, into: float) -> OwnCut:
    long = show_length(value, question.system)
    if into <= 0:
        return words(f"A screw {long} long does not come through the plate: it finds no thread.")
    deep = show_length(into, question.system)
    came = f"A screw {long} long goes {deep} into the frame."
    if question.version == 1:  # it knew how far the screw must reach, not how deep the thread is
        return words(f"{came} Asked for: {show_length(question.engagement, question.system)}.")
    return words(f"{came} Full thread there: {show_length(question.full, question.system)}.")
