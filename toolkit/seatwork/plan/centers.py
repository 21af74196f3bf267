"""Plans of center holes: the cone, its mouth, and the body that must not rub."""

from collections.abc import Iterator
from dataclasses import dataclass

from seatwork import hardware, notes
from seatwork.errors import SeatworkError
from seatwork.hardware import CenterDrill
from seatwork.plan import sentences
from seatwork.plan.bounds import bounds_of
from seatwork.plan.order import Cutting, Order, operation
from seatwork.plan.plans import SeatPlan
from seatwork.plan.readings import face_readings
from seatwork.plan.records import Check, Given, Reading, Stop
from seatwork.plan.resolving import by_rule, stated
from seatwork.plan.stops import STOP_ERROR, stop_device
from seatwork.quantities import Angle, Length
from seatwork.seats import Countersink
from seatwork.seats.center_depths import center_travel, point_reach
from seatwork.seats.centers import CenterSeat
from seatwork.seats.touching_off import diameter_error

NAMES = {
    "inch": ("#00", "#0", "#1", "#2", "#3", "#4", "#5", "#6", "#7", "#8"),
    "metric": ("A1", "A1.25", "A1.6", "A2", "A2.5", "A3.15", "A4", "A5", "A6.3", "A8", "A10"),
}
OTHER_FORMS = {
    "B": "its 60° cone lies inside a guard cone of 120°, and {mouth} is the guard's: not planned "
    "here",
    "R": "its flanks are arcs and no cone of 60°: not planned here",
}
MOUTH = "mouth of the center hole"
PILOT = "the pilot touches the end of the part"
OF_BODY, OF_SHAFT = "center.mouth_of_body", "center.mouth_of_shaft"
SPEED_AT, PILOT_LENGTH = "center.speed_diameter", "center.pilot_length"
EVEN = 1e-6  # mm; the least mouth a sum is made for
CENTER = 60.0  # deg; the lathe's own center (common practice, no source)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Sized:
    drill: CenterDrill | None
    mouth: Given | None
    angle: Given


def center_plan(
    note: notes.Counterdrill, group: tuple[notes.Feature, ...], order: Order
) -> SeatPlan:
    """Plan a center hole for the lathe center.

    Parameters
    ----------
    note : Counterdrill
        The center drill as the note says it.
    group : tuple of Feature
        All that the note says of this hole: the mouth may be written as a hole or a cone.
    order : Order
        Material, machine and shop; `edge` is half the shaft.

    Raises
    ------
    SeatworkError
        If the mouth reaches the body of the drill the note names.
    """
    sized = _sized(note, group, order)
    cone = _cone(sized)
    mouth = cone.diameter if cone else _widest(sized)
    pilot = sized.drill.drill_diameter if sized.drill else None
    if pilot and order.shop.rules.word(SPEED_AT) == "pilot":
        mouth = pilot
    tool = f"center drill {sized.drill.name}" if sized.drill else "center drill, see the sizes"
    cut = Cutting(operation="center drill", diameter=mouth, hole_diameter=0.0, feed_diameter=pilot)
    step = operation(order, cut, name="center drill", why=sentences.CENTER, tool=tool)
    return SeatPlan(
        title="center hole",
        kind="center",
        count=note.count,
        sizes=_sizes(sized, cone),
        shape=cone,
        operations=(step,),
        stops=_stops(sized, cone, order),
        readings=_readings(sized, order),
        checks=(
            *_check_mouth(sized, order),
            *_check_contact(sized, cone, order),
            *_check_bottom(sized, cone, order),
        ),
        advice=(sentences.CENTER_BODY, sentences.CENTER_PILOT),
    )


def _sized(note: notes.Counterdrill, group: tuple[notes.Feature, ...], order: Order) -> _Sized:
    drill = None
    _check_form(note)
    if note.diameter and note.diameter.name:
        drill = hardware.center_drill(note.diameter.name)
    elif note.form and note.pilot and note.pilot.value:
        drill = hardware.center_drill(f"{note.form}{note.pilot.value:g}")
    mouth = _mouth(note, group) or _proposed(drill, order)
    if drill is None and mouth is not None:
        drill = _drill_for(mouth.value, order.system)
    return _Sized(drill=drill, mouth=mouth, angle=_angle(note, group, order))


def _check_form(note: notes.Counterdrill) -> None:
    """Refuse the forms of ISO 6411 that are no plain cone down from the mouth (from memory)."""
    if note.form in OTHER_FORMS and note.diameter is not None:
        raise SeatworkError(
            f"center hole of form {note.form}",
            OTHER_FORMS[note.form],
            f"cut it with a center drill of form {note.form} by its maker's sizes; "
            "form A is planned here",
            mouth=Length(note.diameter.value or 0.0),
        )


def _mouth(note: notes.Counterdrill, group: tuple[notes.Feature, ...]) -> Given | None:
    if note.diameter and note.diameter.value is not None:
        return stated(note.diameter, MOUTH)
    written = (
        one.diameter
        for one in group
        if isinstance(one, notes.Countersink | notes.Hole) and one.diameter
    )
    size = next(written, None)
    return stated(size, MOUTH) if size and size.value is not None else None


def _proposed(drill: CenterDrill | None, order: Order) -> Given | None:
    """Propose the mouth: from the body of the drill named, else from the shaft if it is known."""
    rule, of = OF_BODY, drill.body_diameter if drill else None
    if of is None and order.edge is not None:
        rule, of = OF_SHAFT, 2 * order.edge
    if of is None:
        return None
    return Given(
        about=MOUTH,
        value=order.shop.rules.number(rule) * of,
        source=f"proposed by house rule {rule}: ask",
        confirmed=order.shop.rules[rule].confirmed,
    )


def _stops(sized: _Sized, cone: Countersink | None, order: Order) -> tuple[Stop, ...]:
    """Return the travel from the touch of the pilot, and its limits from those of the mouth."""
    device = stop_device(order, None)
    if cone is None or sized.drill is None or sized.mouth is None or device is None:
        return ()
    ends = bounds_of(sized.mouth, system=order.system, rules=order.shop.rules)
    least, travel, greatest = (
        _travel(sized.drill, size, cone, order)
        for size in (max(ends.least, cone.hole_diameter + EVEN), cone.diameter, ends.greatest)
    )
    error = STOP_ERROR[order.system]
    effect = diameter_error(depth_error=error, included_angle=cone.included_angle)
    return (
        Stop(
            touch=PILOT,
            travel=travel,
            error=error,
            effect=effect,
            least=least,
            greatest=greatest,
            device=device[0],
            step=device[1],
            short="from the pilot's touch",
        ),
    )


def _readings(sized: _Sized, order: Order) -> tuple[Reading, ...]:
    """Return what a caliper should say of the mouth; the rest of the hole is the drill's."""
    if sized.mouth is None:
        return ()
    return face_readings(sized.mouth, system=order.system, rules=order.shop.rules)


def _travel(drill: CenterDrill, mouth: float, cone: Countersink, order: Order) -> float:
    return center_travel(
        mouth=mouth,
        pilot=drill.drill_diameter,
        pilot_length=order.shop.rules.number(PILOT_LENGTH) * drill.drill_diameter,
        included_angle=cone.included_angle,
    )


def _check_bottom(sized: _Sized, cone: Countersink | None, order: Order) -> Iterator[Check]:
    """See that the pilot hole goes deeper than the sharp point of the center reaches."""
    if cone is None or sized.drill is None:
        return
    reach = point_reach(mouth=cone.diameter, included_angle=CENTER)
    deep = _travel(sized.drill, cone.diameter, cone, order)
    holds = reach < deep
    yield Check(
        name="point of the center",
        verdict="holds" if holds else "look",
        sentence=f"The point of a 60° center reaches {order.show_length(reach)}; the hole goes "
        f"{order.show_length(deep)} deep (house rule {PILOT_LENGTH}). "
        + ("It rides on the cone." if holds else "It would bottom: drill the pilot deeper."),
    )


def _angle(note: notes.Counterdrill, group: tuple[notes.Feature, ...], order: Order) -> Given:
    angles = [note.angle, *(one.angle for one in group if isinstance(one, notes.Countersink))]
    size = next((angle for angle in angles if angle), None)
    if size:
        return stated(size, "included angle")
    return by_rule(order.shop.rules, "countersink.center_angle", "included angle", kind="angle")


def _drill_for(mouth: float, system: str) -> CenterDrill | None:
    """Find the smallest listed center drill whose body the mouth does not reach."""
    drills = (hardware.center_drill(name) for name in NAMES[system])
    return next((d for d in drills if d.drill_diameter < mouth < d.body_diameter), None)


def _cone(sized: _Sized) -> Countersink | None:
    if sized.drill is None or sized.mouth is None:
        return None
    if not sized.mouth.value < sized.drill.body_diameter:
        raise SeatworkError(
            Length(sized.mouth.value),
            f"the mouth reaches the body of the {sized.drill.name} center drill, {{body}}",
            "ask for a smaller mouth, or take the next larger center drill",
            body=Length(sized.drill.body_diameter),
        )
    return Countersink(
        diameter=sized.mouth.value,
        hole_diameter=sized.drill.drill_diameter,
        included_angle=sized.angle.value,
    )


def _widest(sized: _Sized) -> float:
    if sized.drill:
        return sized.drill.body_diameter
    if sized.mouth:
        return sized.mouth.value
    raise SeatworkError(
        "the center hole",
        "the note gives neither a center drill nor the mouth",
        "write CENTER DRILL #3, or ask for the diameter of the mouth",
    )


def _sizes(sized: _Sized, cone: Countersink | None) -> tuple[Given, ...]:
    sizes = [sized.angle, *_of_drill(sized.drill)]
    if sized.mouth:
        sizes.append(sized.mouth)
    if cone:
        worked = "worked out: mouth, drill point and angle"
        sizes.append(Given(about="depth of the cone", value=cone.depth, source=worked))
    return tuple(sizes)


def _of_drill(drill: CenterDrill | None) -> tuple[Given, ...]:
    if drill is None:
        return ()
    about = {"drill point": drill.drill_diameter, "body of the center drill": drill.body_diameter}
    return tuple(
        Given(about=name, value=size, source=drill.source, confirmed=drill.confirmed)
        for name, size in about.items()
    )


def _check_mouth(sized: _Sized, order: Order) -> tuple[Check, ...]:
    if sized.drill is None:
        sentence = "No listed center drill cuts this mouth: get one, or bore it."
        return (Check(name="mouth", verdict="look", sentence=sentence),)
    body = order.show_length(sized.drill.body_diameter)
    if sized.mouth is None or not sized.mouth.noted:
        least = order.show_length(sized.drill.drill_diameter)
        wanted = f", {order.show_length(sized.mouth.value)} is proposed" if sized.mouth else ""
        return (
            Check(
                name="mouth",
                verdict="look",
                sentence=f"The note gives no mouth: over {least}, and under the body, {body}"
                f"{wanted}: ask.",
            ),
        )
    most = bounds_of(sized.mouth, system=order.system, rules=order.shop.rules).greatest
    if most >= sized.drill.body_diameter:
        sentence = (
            f"The largest mouth allowed, {order.show_length(most)}, reaches the body of the "
            f"{sized.drill.name}, {body}: stop while it is a cone, or take the next larger."
        )
        return (Check(name="mouth", verdict="look", sentence=sentence),)
    sentence = f"The mouth stays under the body of the {sized.drill.name}, {body}."
    return (Check(name="mouth", verdict="holds", sentence=sentence),)


def _check_contact(sized: _Sized, cone: Countersink | None, order: Order) -> tuple[Check, ...]:
    if cone is None:
        return ()
    # Where it touches does not hang on the bar, so any bar wider than the mouth will do.
    across = 2 * (order.edge or cone.diameter)
    seat = CenterSeat(cone=cone, outside_diameter=across)
    contact = seat.contact(CENTER)
    whole = contact.where == "cone"
    angle = order.show(Angle(sized.angle.value))
    land = order.show_length(seat.land)
    found = [
        Check(
            name="contact",
            verdict="holds" if whole else "look",
            sentence=f"A 60° center bears on the whole cone, a land {land} wide."
            if whole
            else f"A 60° center in a {angle} hole bears on a ring at the {contact.where}, "
            "which wears.",
        )
    ]
    if order.edge is not None:
        wall = f"Wall left at the mouth: {order.show_length(seat.wall_at_mouth)}."
        found.append(Check(name="wall to the edge", verdict="look", sentence=wall))
    return tuple(found)
