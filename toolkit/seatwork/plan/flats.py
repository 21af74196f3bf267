"""Plans of flat seats: counterbores and spotfaces."""

from dataclasses import replace

from seatwork import notes
from seatwork.hardware import Screw
from seatwork.plan import sentences
from seatwork.plan.bearing import check_bears
from seatwork.plan.bounds import bounds_of
from seatwork.plan.checking import check_flat
from seatwork.plan.counterbores import pilot, size_counterbore, size_spotface
from seatwork.plan.faces import check_flange, clean_up_sizes, clean_up_stops
from seatwork.plan.lengths import check_length, screw_length
from seatwork.plan.order import Order, by_hand, seat_cutting
from seatwork.plan.outlooks import outlook
from seatwork.plan.place import Place
from seatwork.plan.plans import SeatPlan
from seatwork.plan.readings import bore_readings, face_readings
from seatwork.plan.records import Check, Given
from seatwork.plan.resolving import stated
from seatwork.plan.room import SOLID, check_passes, check_pilot, check_room, check_seated
from seatwork.plan.stops import depth_stop, flat_stops
from seatwork.plan.under_head import check_corner, check_fillet, fillet_sizes
from seatwork.quantities import INCH
from seatwork.seats import Counterbore, Spotface
from seatwork.seats.under_head import floor_leg
from seatwork.shop.choosing.choosing import Choice

EVEN = 1e-6  # mm
WIDER = INCH / 4  # mm; a spotface that only needs room is not cut wider by more (judgement)


def counterbore_plan(note: notes.Counterbore, place: Place, order: Order) -> SeatPlan:
    """Plan a counterbore with its pilot."""
    hole, screw = place.at_cut(note.side, "the counterbore"), place.screw
    sized = size_counterbore(
        note, hole=hole, screw=screw, system=order.system, rules=order.shop.rules
    )
    cutting, best = seat_cutting(
        order,
        sized.seat,
        name="counterbore",
        why=sentences.COUNTERBORE,
        hole_diameter=hole.value,
        bounds=bounds_of(sized.sizes[0], system=order.system, rules=order.shop.rules),
    )
    return SeatPlan(
        title=f"counterbore for {screw.name}" if screw else "counterbore",
        kind="counterbore",
        count=place.count,
        screw=screw,
        sizes=(place.hole("the counterbore"), *sized.sizes, *fillet_sizes(screw)),
        shape=sized.seat,
        operations=(cutting, by_hand("break the edge", _edge_words(screw, hole, place, order))),
        stops=flat_stops(sized.seat, sized.sizes[1], order=order, best=best),
        readings=bore_readings(sized, system=order.system, rules=order.shop.rules),
        checks=(
            *_through(place, hole, order),
            *_for_screw(sized.seat, screw, order),
            *(check_fillet(screw, hole, order, broken=place.floor_break) if screw else ()),
            *check_corner(note, sized.sizes[0], hole, screw, order),
            check_pilot(sized.seat, screw, order),
            *check_flat(sized.seat.diameter, sized.seat.depth, hole.value, order),
        ),
        outlook=outlook(sized.seat, best, order),
        advice=screw_length(screw, sized.seat, order) if screw else (),
    )


def _edge_words(screw: Screw | None, hole: Given, place: Place, order: Order) -> str:
    """Say which edges are broken: the floor's too, where the fillet under the head needs it."""
    wanted = next(iter(fillet_sizes(screw)), None)
    if wanted is None or place.floor_break is not None or wanted.value <= hole.value:
        return sentences.BREAK_EDGE
    leg = floor_leg(hole_diameter=hole.value, clear_diameter=wanted.value)
    return sentences.FLOOR_EDGE.format(
        edge=sentences.BREAK_EDGE,
        across=order.show_length(wanted.value),
        leg=order.show_length(leg),
    )


def _through(place: Place, hole: Given, order: Order) -> tuple[Check, ...]:
    """Look at whether the screw goes through its plain hole, and its head does not."""
    if place.thread is not None:
        return ()
    passes = check_passes(hole.value, place.screw, order)
    return (*passes, *check_bears(place.hole("the screw"), place.screw, order))


def _for_screw(seat: Counterbore, screw: Screw | None, order: Order) -> tuple[Check, ...]:
    if screw is None:
        return ()
    return (*check_room(seat, screw, order), *check_length(screw, seat, order))


def spotface_plan(note: notes.Spotface, place: Place, order: Order) -> SeatPlan:
    """Plan a spotface: before the hole with an unpiloted tool, after it with a piloted one."""
    hole = place.at_cut(note.side, "the spotface")
    seat, across = size_spotface(note, hole=hole, screw=place.screw)
    if note.diameter is None:
        seat, across = _from_crib(seat, across, order)
    cutting, best = seat_cutting(
        order,
        seat,
        name="spotface",
        why=sentences.FACE_AFTER,
        hole_diameter=hole.value,
        bounds=bounds_of(across, system=order.system, rules=order.shop.rules),
    )
    if best is not None and not _is_piloted(best) and note.side != "far":
        cutting = replace(cutting.because(sentences.FACE_FIRST), before_hole=True)
    return SeatPlan(
        title=f"spotface for {place.screw.name}" if place.screw else "spotface",
        kind="spotface",
        count=place.count,
        screw=place.screw,
        sizes=(
            place.hole("the spotface"),
            across,
            pilot(hole, order.shop.rules),
            *_stated_depths(note),
            *clean_up_sizes(note, seat, order),
        ),
        shape=seat,
        operations=(cutting,),
        stops=depth_stop(note, order=order, best=best) or clean_up_stops(note, seat, order, best),
        readings=face_readings(across, system=order.system, rules=order.shop.rules),
        checks=(
            *_through(place, hole, order),
            *check_seated(seat, place.screw, order),
            *check_flat(seat.diameter, None, hole.value, order),
            *check_flange(note, order),
        ),
        outlook=outlook(seat, best, order),
        advice=_face_advice(note, seat, place, order),
    )


def _from_crib(seat: Spotface, across: Given, order: Order) -> tuple[Spotface, Given]:
    """Take the least cutter of the crib that gives the room wanted, where the note has no size."""
    room = across.value
    bodies = {one.body_diameter or 0.0 for one in order.shop.cutters if one.kind in SOLID}
    for body in sorted(one for one in bodies if room - EVEN <= one <= room + WIDER):
        wide = replace(seat, diameter=body)
        best = order.choices(wide, seat.hole_diameter).best
        if best is not None and best.tool.cutter.body_diameter == body:
            source = f"{across.source}; at least {order.show_length(room)}, the crib's next wider"
            return wide, replace(across, value=body, source=source)
    return seat, across


def _face_advice(
    note: notes.Spotface, seat: Spotface, place: Place, order: Order
) -> tuple[str, ...]:
    scale = "spotface.scale_allowance"
    skin = order.show_length(order.shop.rules.number(scale))
    depth = (
        () if note.depth else (sentences.NO_DEPTH, sentences.SCALE.format(skin=skin, rule=scale))
    )
    return (*depth, *(screw_length(place.screw, seat, order) if place.screw else ()))


def _is_piloted(best: Choice) -> bool:
    return best.tool.pilot_diameter is not None


def _stated_depths(note: notes.Spotface) -> tuple[Given, ...]:
    depth = (stated(note.depth, "depth from the face"),) if note.depth else ()
    left = (stated(note.left, "flange to be left"),) if note.left else ()
    return (*depth, *left)
