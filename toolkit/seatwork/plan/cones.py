"""Plans of cones: countersinks for screws, chamfers, tapped holes."""

from dataclasses import replace

from seatwork import hardware, notes
from seatwork.plan import words
from seatwork.plan.checking import check_mouth, check_sheet
from seatwork.plan.countersinks import SizedCountersink, size_countersink, wider_than_hole
from seatwork.plan.heads import check_head
from seatwork.plan.lengths import check_length, screw_length
from seatwork.plan.order import Order, by_hand, seat_cutting
from seatwork.plan.outlooks import outlook
from seatwork.plan.place import Place, drill_hole, far_side
from seatwork.plan.plans import SeatPlan
from seatwork.plan.readings import cone_readings
from seatwork.plan.records import Check, Given
from seatwork.plan.resolving import by_rule, said, thread_name
from seatwork.plan.stops import cone_stops
from seatwork.seats import Chamfer, Countersink


def countersink_plan(note: notes.Countersink, place: Place, order: Order) -> SeatPlan:
    """Plan a countersink: the screw's seat, or a tapped hole's chamfer."""
    if place.thread is not None:
        return _asked_about_screw(note, tapped_hole_plan(note, place, order))
    hole = place.hole("the countersink")
    screw = place.screw if place.screw and place.screw.seat_angle else None
    sized = size_countersink(
        note, hole=hole, screw=screw, system=order.system, rules=order.shop.rules
    )
    title = f"countersink for {screw.name}" if screw else "countersink"
    plan = _cone_plan(sized, place, order, title=title, name="countersink", why=words.COUNTERSINK)
    if screw is None:
        return replace(plan, advice=(words.SCRAP,))
    checks = check_head(sized, screw, order.shop.rules, order.show)
    return replace(
        plan,
        checks=(*checks, *plan.checks, *check_length(screw, sized.seat, order)),
        advice=(words.SCRAP, *screw_length(screw, sized.seat, order)),
    )


def _asked_about_screw(note: notes.Countersink, plan: SeatPlan) -> SeatPlan:
    """Ask where a flat head is named for a hole that has a thread."""
    if not note.screw:
        return plan
    asked = Check(
        name="screw in a tapped hole",
        verdict="stop",
        sentence="The countersink of a tapped hole is planned as the chamfer before the tap.",
        question=f"{note.screw} is named for a tapped hole: is a seat for its head meant, "
        "or only the thread's chamfer?",
    )
    return replace(plan, checks=(asked, *plan.checks))


def tapped_hole_plan(note: notes.Countersink | None, place: Place, order: Order) -> SeatPlan:
    """Plan a tapped hole: tap drill, chamfer before the tap, tap."""
    assert place.thread is not None
    named = thread_name(place.thread)
    hole = place.hole(f"the thread {named}")
    sized = _thread_chamfer(note, named, hole, order)
    plan = _cone_plan(
        sized,
        place,
        order,
        title=f"tapped hole {named}",
        name="chamfer",
        why=words.CHAMFER_FIRST,
    )
    drill, chamfer, *rest = plan.operations
    tap = by_hand("tap", words.TAP, f"tap {named}")
    return replace(
        plan,
        kind="tapped hole",
        operations=(drill, chamfer, tap, *rest),
        advice=tap_depths(place, order),
    )


def tap_depths(place: Place, order: Order) -> tuple[str, ...]:
    """Say how deep to drill and to tap, where the note tells."""
    said_so = []
    if place.note and place.note.depth and place.note.depth.value is not None:
        deep = order.show_length(place.note.depth.value)
        said_so.append(f"Drill {deep} deep at full diameter; the point goes deeper.")
    if place.thread and place.thread.depth and place.thread.depth.value is not None:
        said_so.append(f"Full thread {order.show_length(place.thread.depth.value)} deep.")
    return tuple(said_so)


def chamfer_plan(note: notes.Chamfer, place: Place, order: Order) -> SeatPlan:
    """Plan a chamfer at a hole, or along an edge where there is no hole."""
    rules = order.shop.rules
    angle = (
        said(note.angle, "included angle")
        if note.angle
        else by_rule(rules, "chamfer.included_angle", "included angle", kind="angle")
    )
    leg = _leg(note, place, order)
    shape = Chamfer(leg=leg.value, included_angle=angle.value)
    if place.size is None:
        edge = by_hand(
            "chamfer the edge", words.EDGE_CHAMFER, "chamfer mill, file or deburring tool"
        )
        return SeatPlan(
            title="chamfer along the edge",
            kind="chamfer",
            count=note.count,
            sizes=(leg, angle),
            shape=shape,
            operations=(edge,),
        )
    cone = shape.at_hole(place.size.value)
    sized = SizedCountersink(seat=cone, sizes=(leg, angle, *_across(cone)), box=None)
    return replace(
        _cone_plan(
            sized, place, order, title="chamfer at the hole", name="chamfer", why=words.EDGE_CHAMFER
        ),
        kind="chamfer",
    )


def _cone_plan(
    sized: SizedCountersink, place: Place, order: Order, *, title: str, name: str, why: str
) -> SeatPlan:
    hole = place.hole(title)
    cutting, best = seat_cutting(order, sized.seat, name=name, why=why, hole_diameter=hole.value)
    screw = place.screw if place.screw and place.screw.seat_angle and not place.thread else None
    return SeatPlan(
        title=title,
        kind="countersink",
        count=place.count,
        screw=place.screw,
        sizes=(hole, *sized.sizes),
        shape=sized.seat,
        operations=(*drill_hole(place, order), cutting, *far_side(place)),
        stops=cone_stops(sized.seat, (hole, *sized.sizes), order=order, best=best),
        readings=cone_readings(sized, screw, system=order.system, rules=order.shop.rules),
        checks=(check_mouth if place.thread else check_sheet)(sized.seat, order),
        outlook=outlook(sized.seat, best, order),
    )


def _thread_chamfer(
    note: notes.Countersink | None, named: str, hole: Given, order: Order
) -> SizedCountersink:
    """Size the mouth of a tapped hole: as the note says, else by house rule."""
    if note is not None and (note.diameter or note.depth):
        rules = order.shop.rules
        angle = (
            said(note.angle, "included angle")
            if note.angle
            else by_rule(rules, "tapped_hole.chamfer_angle", "included angle", kind="angle")
        )
        sized = size_countersink(
            replace(note, angle=note.angle or _as_size(angle)),
            hole=hole,
            screw=None,
            system=order.system,
            rules=rules,
        )
        return replace(sized, sizes=(angle, *sized.sizes[1:]))
    rules = order.shop.rules
    angle = by_rule(rules, "tapped_hole.chamfer_angle", "included angle", kind="angle")
    over = "tapped_hole.chamfer_over"
    across = Given(
        about="diameter at the face",
        value=hardware.thread(named).diameter + rules.number(over),
        source=f"major diameter and house rule {over}",
        confirmed=rules[over].confirmed,
    )
    seat = Countersink(
        diameter=wider_than_hole(across, hole).value,
        hole_diameter=hole.value,
        included_angle=angle.value,
    )
    return SizedCountersink(seat=seat, sizes=(angle, across, *_across(seat)[1:]), box=None)


def _as_size(angle: Given) -> notes.Size:
    return notes.Size(value=angle.value, unit="deg")


def _across(cone: Countersink) -> tuple[Given, ...]:
    worked_out = "worked out: hole and chamfer"
    return (
        Given(about="diameter at the face", value=cone.diameter, source=worked_out),
        Given(about="depth from the face", value=cone.depth, source=worked_out),
    )


def _leg(note: notes.Chamfer, place: Place, order: Order) -> Given:
    if note.leg:
        return said(note.leg, "leg along the face")
    if note.diameter and note.diameter.value is not None and place.size:
        return Given(
            about="leg along the face",
            value=(
                wider_than_hole(said(note.diameter, "diameter"), place.size).value
                - place.size.value
            )
            / 2,
            source="worked out from the diameter in the print note",
        )
    rules = order.shop.rules
    stem = "chamfer.inch" if order.system == "inch" else "chamfer.metric"
    least = by_rule(rules, f"{stem}_leg", "leg along the face")
    return replace(least, least=least.value, greatest=rules.number(f"{stem}_greatest"))
