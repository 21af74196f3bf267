"""One hole of a note: each seat planned for itself, then set in order on the hole."""

from collections.abc import Callable
from dataclasses import replace

from seatwork import notes
from seatwork.plan.back_facing import back_faced
from seatwork.plan.cones import chamfer_plan, countersink_plan
from seatwork.plan.faces import SCALE
from seatwork.plan.flats import counterbore_plan, spotface_plan
from seatwork.plan.floors import DEEP, Base, base_for
from seatwork.plan.order import Order
from seatwork.plan.place import Place
from seatwork.plan.plans import SeatPlan
from seatwork.plan.sequence import in_sequence
from seatwork.plan.sides import FAR, Cut, by_side, on_side, opposed
from seatwork.plan.threads import mouth_plan, tapped_hole_plan

Mouth = Callable[[notes.Countersink | notes.Chamfer | None, Place, Base, Order], SeatPlan]


def hole_and_seats(group: tuple[notes.Feature, ...], place: Place, order: Order) -> list[SeatPlan]:
    """Plan one hole with its thread and its seats, in the order to cut them.

    Parameters
    ----------
    group : tuple of Feature
        What the note says of the hole.
    place : Place
        What was found for it.
    order : Order
        Material, machine and shop.

    Returns
    -------
    list of SeatPlan
        Seat by seat; the hole alone where it has none.
    """
    edges = [one for one in group if isinstance(one, notes.Chamfer)]
    if place.size is None and len(edges) == len(group):
        return [on_side(one, chamfer_plan(one, place, None, order)) for one in edges]
    features = list(by_side(group))
    flats = [_flat_cut(one, place, order) for one in features if _is_flat(one)]
    cones = _cones(features, flats, place, order)
    cuts = [*flats, *cones] or ([_plain_hole(place)] if place.note else [])
    cuts = [back_faced(cut, place, order) for cut in cuts]
    if not cuts:
        return []
    floor = next((cut.seat.size(DEEP) for cut in flats if not cut.opposite), None)
    return in_sequence(opposed(cuts, place, order), place, order, floor)


def _is_flat(note: notes.Feature) -> bool:
    return isinstance(note, notes.Counterbore | notes.Spotface)


def _flat(note: notes.Feature, place: Place, order: Order) -> SeatPlan:
    seat = (
        counterbore_plan(note, place, order)
        if isinstance(note, notes.Counterbore)
        else spotface_plan(note, place, order)  # type: ignore[arg-type]
    )
    return on_side(note, _counted(note, seat, place))


def _counted(note: notes.Feature, seat: SeatPlan, place: Place) -> SeatPlan:
    """Count the seats of one side where the note has fewer of them than holes."""
    return replace(seat, count=note.count) if 1 < note.count < place.count else seat


def _flat_cut(note: notes.Feature, place: Place, order: Order) -> Cut:
    """Return a flat seat with what it takes off its face, and what must be left under it."""
    depth, left = getattr(note, "depth", None), getattr(note, "left", None)
    takes = order.shop.rules.number(SCALE) if depth is None else depth.largest or 0.0
    leaves = (left.smallest or 0.0) if left is not None else 0.0
    return Cut(seat=_flat(note, place, order), side=note.side, takes=takes, leaves=leaves)


def _cones(
    features: list[notes.Feature], flats: list[Cut], place: Place, order: Order
) -> list[Cut]:
    asked = [one for one in features if isinstance(one, notes.Countersink | notes.Chamfer)]
    threaded = place.thread is not None
    found = []
    for number, one in enumerate(asked):
        beside = [cut.seat for cut in flats if cut.far is (one.side == FAR)]
        make = (mouth_plan if number else tapped_hole_plan) if threaded else None
        seat = _cone(one, beside, place, order, make)
        found.append(Cut(seat=on_side(one, _counted(one, seat, place)), side=one.side))
    if threaded and not asked:
        near = [cut.seat for cut in flats if not cut.far]
        base = base_for(None, "", place, near, "the thread")
        found.append(Cut(seat=tapped_hole_plan(None, place, base, order), side=""))
    return found


def _cone(
    note: notes.Countersink | notes.Chamfer,
    beside: list[SeatPlan],
    place: Place,
    order: Order,
    tapped: Mouth | None,
) -> SeatPlan:
    cone = note if isinstance(note, notes.Countersink) else None
    on_bore = cone if cone is not None else notes.Countersink(diameter=note.diameter)
    base = base_for(on_bore, note.side, place, beside, "the cone")
    if tapped is not None:
        return tapped(note, place, base, order)
    if isinstance(note, notes.Countersink):
        return countersink_plan(note, place, base, order)
    return chamfer_plan(note, place, base, order)


def _plain_hole(place: Place) -> Cut:
    hole = place.hole("the hole")
    return Cut(seat=SeatPlan(title="hole", kind="hole", count=place.count, sizes=(hole,)), side="")
