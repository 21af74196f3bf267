"""The order of work at one hole: drilled once, near side first, tapped last, turned over once."""

from collections.abc import Sequence
from dataclasses import replace

from seatwork import notes
from seatwork.plan import sentences
from seatwork.plan.blind import bottom_checks, bottom_sizes, bottom_stops
from seatwork.plan.boring import bore_readings, bore_sizes, check_bored
from seatwork.plan.order import Order, by_hand
from seatwork.plan.place import Place, deep_from_face, drill_hole, far_side
from seatwork.plan.plans import SeatPlan
from seatwork.plan.reaming import (
    ream_advice,
    ream_checks,
    ream_readings,
    ream_sizes,
    ream_step,
)
from seatwork.plan.records import Given, Operation
from seatwork.plan.sides import Cut
from seatwork.plan.threads import tap_step

RANKS = ("spotface", "counterbore", "countersink", "chamfer", "tapped hole")
HOW, ONE_CLAMPING = "far_side.how", "one clamping from the far side"
RIMS, EDGE = "break the rims", "break the edge"


def in_sequence(
    cuts: Sequence[Cut], place: Place, order: Order, floor: Given | None = None
) -> list[SeatPlan]:
    """Return the seats of one hole in the order to cut them, with the work on the hole itself.

    Parameters
    ----------
    cuts : sequence of Cut
        Each seat with its own operations alone.
    place : Place
        The hole.
    order : Order
        Material, machine and shop.
    floor : Given or None
        Depth of the counterbore floor above a thread [mm].

    Returns
    -------
    list of SeatPlan
        Near side first: a face for a tool without a pilot, drill, counterbore, cones, ream;
        then the part is turned over for the far side. The tap comes last of all. What belongs
        to the hole itself, its sizes, stops and checks, stands with the first seat.
    """
    ordered = sorted(cuts, key=_rank)
    near = [cut.seat.operations for cut in ordered if not cut.far]
    far = [cut.seat.operations for cut in ordered if cut.far]
    steps = [*_near(near, place, order, turned=bool(far)), *_far(far, order, only=not near)]
    if not near:
        reamed = _reaming(place, order)
        rims = () if _one_clamping(order) else (by_hand(RIMS, sentences.BREAK_EDGE),)
        steps[0] = (*drill_hole(place, order), *reamed, *rims, *steps[0])
    end = (tap_step(place, floor, order),) if place.thread is not None else ()
    end = (*end, *_last_burr(ordered, place, order))
    steps[-1] = (*steps[-1], *end)
    seats = [replace(cut.seat, operations=done) for cut, done in zip(ordered, steps, strict=True)]
    return [_with_hole(seats[0], place, order), *seats[1:]]


def _rank(cut: Cut) -> tuple[bool, bool, bool, int]:
    first = any(step.before_hole for step in cut.seat.operations)
    kind = cut.seat.kind
    rank = RANKS.index(kind) if kind in RANKS else len(RANKS)
    return cut.far, cut.opposite, not first, rank


def _last_burr(ordered: Sequence[Cut], place: Place, order: Order) -> tuple[Operation, ...]:
    """Return the deburring of the side the drill came out on, where no seat was cut there."""
    if not any(cut.opposite for cut in ordered):
        return far_side(place)
    if place.through and all(cut.far for cut in ordered) and _one_clamping(order):
        return (by_hand("deburr the near side", sentences.DEBUR_FAR),)
    return ()


def _near(
    seats: list[tuple[Operation, ...]], place: Place, order: Order, *, turned: bool
) -> list[tuple[Operation, ...]]:
    if not seats:
        return []
    done = [_start(seats[0], place, order), *seats[1:]]
    if place.seat_first:
        done[-1] = (*done[-1], *_reaming(place, order))
    if turned and done[-1][-1].name != EDGE:
        done[-1] = (*done[-1], by_hand(RIMS, sentences.BREAK_EDGE))
    return done


def _start(seat: tuple[Operation, ...], place: Place, order: Order) -> tuple[Operation, ...]:
    """Return the work on the hole with that of the first seat, a face before the hole first."""
    ahead = tuple(step for step in seat if step.before_hole)
    after = tuple(step for step in seat if not step.before_hole)
    reamed = () if place.seat_first else _reaming(place, order)
    return (*ahead, *drill_hole(place, order), *reamed, *after)


def _far(
    seats: list[tuple[Operation, ...]], order: Order, *, only: bool
) -> list[tuple[Operation, ...]]:
    if not seats:
        return []
    if only and _one_clamping(order):
        layout = by_hand("lay out on the far face", sentences.MIRROR)
        return [(layout, *seats[0]), *seats[1:]]
    kind = order.machine.kind
    turn = by_hand("turn the part over", sentences.TURN[kind])
    find = by_hand("find the hole again", sentences.FIND[kind])
    return [(turn, find, *seats[0]), *seats[1:]]


def _one_clamping(order: Order) -> bool:
    return order.shop.rules.word(HOW) == ONE_CLAMPING


def _reaming(place: Place, order: Order) -> tuple[Operation, ...]:
    if place.ream is None or place.size is None:
        return ()
    deep = deep_from_face(place.ream.depth, order)
    return (replace(ream_step(place.size, order), deep=deep),)


def _with_hole(seat: SeatPlan, place: Place, order: Order) -> SeatPlan:
    """Put what belongs to the hole itself with its first seat."""
    seat = replace(
        seat,
        sizes=(*seat.sizes, *bottom_sizes(place.bottom, order)),
        stops=(*seat.stops, *bottom_stops(place.bottom, order)),
        checks=(*seat.checks, *bottom_checks(place.bottom, order)),
    )
    if place.size is None or place.drilled is None:
        return seat
    if place.bored and place.note is not None:
        return _with_bore(seat, place.note, place.size, place.drilled, order)
    if place.ream is None:
        return seat
    return replace(
        seat,
        sizes=(*seat.sizes, *ream_sizes(place.size, place.drilled)),
        readings=(*seat.readings, *ream_readings(place.size)),
        checks=(
            *seat.checks,
            *ream_checks(place.ream, place.size, place.drilled, place.bottom, order),
        ),
        advice=(*seat.advice, *ream_advice(place.size, order)),
    )


def _with_bore(
    seat: SeatPlan, note: notes.Hole, hole: Given, under: Given, order: Order
) -> SeatPlan:
    """Put what belongs to a bore with the hole's first seat."""
    return replace(
        seat,
        sizes=(*seat.sizes, *bore_sizes(hole, under)),
        readings=(*seat.readings, *bore_readings(note, hole, order)),
        checks=(*seat.checks, *check_bored(note, hole, under, order)),
    )
