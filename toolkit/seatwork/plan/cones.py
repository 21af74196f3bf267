"""Plans of cones: countersinks for screws, chamfers."""

from dataclasses import replace

from seatwork import notes
from seatwork.plan import sentences
from seatwork.plan.agreeing import check_depth_agrees
from seatwork.plan.bearing import check_bears, check_rivet_hole, refuse_fallen
from seatwork.plan.checking import check_blind, check_mouth, check_sheet_metal, check_wall
from seatwork.plan.countersinks import SizedCountersink, size_countersink, wider_than_hole
from seatwork.plan.floors import Base, below, on_floor
from seatwork.plan.heads import check_head
from seatwork.plan.lengths import check_length, screw_length
from seatwork.plan.mouths import across
from seatwork.plan.narrowing import narrowed_cone
from seatwork.plan.order import Order, by_hand, seat_cutting
from seatwork.plan.outlooks import outlook
from seatwork.plan.place import Place
from seatwork.plan.plans import SeatPlan
from seatwork.plan.play import check_play
from seatwork.plan.readings import cone_readings
from seatwork.plan.records import Check, Given
from seatwork.plan.resolving import by_rule, stated
from seatwork.plan.rivet_heads import check_rivet_head
from seatwork.plan.riveting import check_rivet_sheet, rivet_named
from seatwork.plan.stops import cone_stops
from seatwork.seats import Chamfer, Countersink


def countersink_plan(note: notes.Countersink, place: Place, base: Base, order: Order) -> SeatPlan:
    """Plan a countersink, for a screw or as the note gives it."""
    screw = place.screw if place.screw and place.screw.seat_angle else None
    refuse_fallen(place.hole("the countersink"), screw)
    sized = size_countersink(
        note, hole=base.hole, screw=screw, system=order.system, rules=order.shop.rules
    )
    title = f"countersink for {screw.name}" if screw else "countersink"
    cut = narrowed_cone(sized, screw, hole=base.hole, system=order.system, rules=order.shop.rules)
    plan = cone_plan(
        cut, place, base, order, title=title, name="countersink", why=sentences.COUNTERSINK
    )
    plan = replace(plan, checks=(*check_depth_agrees(note, sized, order), *plan.checks))
    if screw is None:
        return _for_rivet(plan, note, sized.seat, place, order)
    checks = (
        *check_bears(place.hole("the screw"), screw, order),
        *check_head(sized, screw, order.shop.rules, order.show),
    )
    return replace(
        plan,
        checks=(*checks, *plan.checks, *check_length(screw, sized.seat, order)),
        advice=(_on_scrap(plan, "screw"), *screw_length(screw, sized.seat, order)),
    )


def _on_scrap(plan: SeatPlan, tried: str = "") -> str:
    """Say how the depth is found on scrap: with what is tried in it, else by its size."""
    by = sentences.OWN.format(tried=tried) if tried else sentences.BY_SIZE
    return (sentences.SCRAP if plan.stops else sentences.SCRAP_FIRST).format(by=by)


def _for_rivet(
    plan: SeatPlan, note: notes.Countersink, seat: Countersink, place: Place, order: Order
) -> SeatPlan:
    """Return the plan of a cone without a screw: a rivet's where the note names one."""
    rivet = rivet_named((note,))
    if rivet is None:
        return replace(plan, advice=(_on_scrap(plan),))
    return replace(
        plan,
        title=f"countersink for {rivet.name} rivet",
        advice=(_on_scrap(plan, "rivet"),),
        checks=(
            *check_rivet_hole(rivet, place.hole("the rivet"), order),
            check_rivet_head(plan, note, rivet, order),
            *plan.checks,
            *check_rivet_sheet(rivet, seat, order),
        ),
    )


def chamfer_plan(note: notes.Chamfer, place: Place, base: Base | None, order: Order) -> SeatPlan:
    """Plan a chamfer at a hole, or along an edge where there is no hole."""
    rules = order.shop.rules
    angle = (
        stated(note.angle, "included angle")
        if note.angle
        else by_rule(rules, "chamfer.included_angle", "included angle", kind="angle")
    )
    leg = _leg(note, base, order)
    shape = Chamfer(leg=leg.value, included_angle=angle.value)
    if base is None:
        edge = by_hand(
            "chamfer the edge", sentences.EDGE_CHAMFER, "chamfer mill, file or deburring tool"
        )
        return SeatPlan(
            title="chamfer along the edge",
            kind="chamfer",
            count=note.count,
            sizes=(leg, angle),
            shape=shape,
            operations=(edge,),
        )
    cone = shape.at_hole(base.hole.value)
    sized = SizedCountersink(seat=cone, sizes=(leg, angle, *across(cone)), box=None)
    why, title = sentences.EDGE_CHAMFER, "chamfer at the hole"
    plan = cone_plan(sized, place, base, order, title=title, name="chamfer", why=why)
    return replace(plan, kind="chamfer")


def cone_plan(
    sized: SizedCountersink,
    place: Place,
    base: Base,
    order: Order,
    *,
    title: str,
    name: str,
    why: str,
) -> SeatPlan:
    """Plan the cutting of a cone of any name on what it runs into."""
    touched = base.touched
    cutting, best = seat_cutting(
        order, sized.seat, name=name, why=why, hole_diameter=touched.value, bore=base.bore
    )
    screw = place.screw if place.screw and place.screw.seat_angle and not place.thread else None
    plan = SeatPlan(
        title=title,
        kind="countersink",
        count=place.count,
        screw=place.screw,
        sizes=(base.hole, *sized.sizes),
        shape=sized.seat,
        operations=(cutting,),
        stops=cone_stops(
            _on(sized.seat, touched),
            (replace(touched, about="hole"), *sized.sizes),
            order=order,
            best=best,
        ),
        readings=cone_readings(sized, screw, system=order.system, rules=order.shop.rules),
        checks=(
            *_looked_at(sized.seat, place, base, order),
            *check_play(best, touched.value, order),
        ),
        outlook=outlook(sized.seat, best, order),
    )
    return on_floor(plan, base.floor)


def _looked_at(seat: Countersink, place: Place, base: Base, order: Order) -> tuple[Check, ...]:
    """Look at what the cone leaves: of a blind hole its own depth, of a through one the part."""
    if place.bottom is not None:
        deep = place.bottom.depth.value - (base.floor.value if base.floor else 0.0)
        return (check_blind(seat, deep, order), *check_wall(seat, order))
    look = check_mouth if place.thread else check_sheet_metal
    return look(seat, below(order, base.floor))


def _on(seat: Countersink, touched: Given) -> Countersink:
    """Return the seat on the hole that is there when it is cut."""
    return replace(seat, hole_diameter=touched.value)


def _leg(note: notes.Chamfer, base: Base | None, order: Order) -> Given:
    if note.leg:
        return stated(note.leg, "leg along the face")
    if note.diameter and note.diameter.value is not None and base is not None:
        return Given(
            about="leg along the face",
            value=(
                wider_than_hole(stated(note.diameter, "diameter"), base.hole).value
                - base.hole.value
            )
            / 2,
            source="worked out from the diameter in the print note",
        )
    rules = order.shop.rules
    stem = "chamfer.inch" if order.system == "inch" else "chamfer.metric"
    least = by_rule(rules, f"{stem}_leg", "leg along the face")
    return replace(least, least=least.value, greatest=rules.number(f"{stem}_greatest"))
