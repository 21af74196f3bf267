"""A countersink from what the note says, what the screw needs and what the house rules fill."""

from dataclasses import dataclass

from seatwork.errors import SeatworkError
from seatwork.hardware import Screw
from seatwork.notes import Countersink as Note
from seatwork.plan.bounds import bounds_of
from seatwork.plan.records import Given
from seatwork.plan.resolving import NOTE, by_rule, stated
from seatwork.plan.riveting import rivet_angle, rivet_diameter, rivet_named
from seatwork.plan.standing import Stand, stand_of
from seatwork.quantities import Angle, Length
from seatwork.seats import Countersink, Head
from seatwork.seats.box_of_screws import SeatRange, corner_heads, diameter_for, seats_for
from seatwork.seats.touching_off import Limits, depth_limits
from seatwork.shop import HouseRules

SAME_ANGLE = 0.5  # deg; a cutter is not ground, nor a note meant, closer than this


@dataclass(frozen=True, slots=True, kw_only=True)
class SizedCountersink:
    """A countersink with the source of each size.

    Parameters
    ----------
    seat : Countersink
        At the sizes to aim for.
    sizes : tuple of Given
        Angle, diameter at the face and depth.
    box : SeatRange or None
        What one seat does for every head of the screw's size.
    stand : Stand or None
        Where the screw's head may stand; None without a screw.
    """

    seat: Countersink
    sizes: tuple[Given, ...]
    box: SeatRange | None
    stand: Stand | None = None


def size_countersink(
    note: Note, *, hole: Given, screw: Screw | None, system: str, rules: HouseRules
) -> SizedCountersink:
    """Settle angle, diameter and depth of a countersink.

    Parameters
    ----------
    note : Note
        The countersink as the note says it.
    hole : Given
        The hole [mm].
    screw : Screw or None
        The screw that goes in.
    system : {"inch", "metric"}
        System of the note, for the angle where neither note nor screw gives one.
    rules : HouseRules
        The rules in force.

    Raises
    ------
    SeatworkError
        If note and screw disagree on the angle, or nothing gives a size.

    Notes
    -----
    Where the screw sets the size and the note says where its head may stand, the seat aimed
    for puts the greatest head in the middle of that. Where the note says no numbers, house
    rule `flush.aim` tells: the greatest head flush, in a seat no larger than it must be; the
    greatest seat allowed puts this head the house limit below the face.
    """
    head = screw.head if screw else None
    angle = _angle(note, screw, system, rules)
    diameter = _diameter(note, hole=hole, angle=angle, head=head, system=system, rules=rules)
    seat = Countersink(
        diameter=diameter.value, hole_diameter=hole.value, included_angle=angle.value
    )
    sizes = (angle, diameter, _depth(note, seat, diameter, hole, system, rules))
    stand = stand_of(note.head, system=system, rules=rules) if screw or note.head else None
    return SizedCountersink(seat=seat, sizes=sizes, box=_box(screw, seat, rules), stand=stand)


def _angle(note: Note, screw: Screw | None, system: str, rules: HouseRules) -> Given:
    wanted = screw.seat_angle if screw else None
    if note.angle is None:
        if screw is None or wanted is None:
            found = rivet_named((note,))
            if found is not None:
                return rivet_angle(found)
            rule = "countersink.inch_angle" if system == "inch" else "countersink.metric_angle"
            return by_rule(rules, rule, "included angle", kind="angle")
        return Given(
            about="included angle",
            value=wanted,
            kind="angle",
            source=screw.source,
            confirmed=screw.confirmed,
        )
    given = stated(note.angle, "included angle")
    if screw is not None and wanted is not None and abs(given.value - wanted) > SAME_ANGLE:
        raise SeatworkError(
            Angle(given.value),
            f"the note asks for {{angle}}, but {screw.name} is made for {{wanted}}",
            "ask which governs: a seat of the wrong angle can look flush and still be wrong",
            angle=Angle(given.value),
            wanted=Angle(wanted),
        )
    return given


def _diameter(
    note: Note,
    *,
    hole: Given,
    angle: Given,
    head: Head | None,
    system: str,
    rules: HouseRules,
) -> Given:
    about = "diameter at the face"
    if note.diameter:
        return wider_than_hole(stated(note.diameter, about), hole)
    if note.depth:
        return _from_depth(note, hole, angle, about, system, rules)
    found = rivet_named((note,))
    if found is not None:
        return wider_than_hole(rivet_diameter(found), hole)
    if head is None:
        raise SeatworkError(
            "the countersink",
            "the note gives no diameter, no depth and no screw",
            "name the screw that goes in, or ask for the diameter",
        )
    stand = stand_of(note.head, system=system, rules=rules)
    least, aim, greatest = (
        diameter_for(head, amount=amount, hole_diameter=hole.value, included_angle=angle.value)
        for amount in (stand.highest, stand.aim, stand.lowest)
    )
    source = f"worked out: the greatest head {stand.source}"
    return Given(about=about, value=aim, least=least, greatest=greatest, source=source)


def wider_than_hole(size: Given, hole: Given) -> Given:
    """Return a seat's diameter, refused where its hole is as wide.

    Raises
    ------
    SeatworkError
        With the question to ask.
    """
    if not size.value > hole.value:
        raise SeatworkError(
            Length(size.value),
            "the seat is no wider than its hole, {hole}",
            "ask whether the two sizes are turned round",
            hole=Length(hole.value),
        )
    return size


def _from_depth(
    note: Note, hole: Given, angle: Given, about: str, system: str, rules: HouseRules
) -> Given:
    assert note.depth is not None
    depth = stated(note.depth, "depth")
    bounds = bounds_of(depth, system=system, rules=rules)
    by_rule = f", limits by {bounds.source}" if bounds.source != depth.source else ""

    def across(deep: float) -> float:
        return Countersink.from_depth(
            depth=deep, hole_diameter=hole.value, included_angle=angle.value
        ).diameter

    return Given(
        about=about,
        value=across(depth.value),
        least=across(bounds.least) if bounds.least > 0 else hole.value,
        greatest=across(bounds.greatest),
        source=f"worked out from the depth in the {NOTE}{by_rule}",
    )


def _depth(
    note: Note, seat: Countersink, diameter: Given, hole: Given, system: str, rules: HouseRules
) -> Given:
    """Return the depth, with the limits that those of diameter and hole leave it.

    Where the hole alone has limits, the diameter's are those of the title block: the hole's
    alone would refuse a depth that a good diameter comes with.
    """
    if note.depth:
        return stated(note.depth, "depth from the face")
    across = Limits(least=diameter.smallest, greatest=diameter.largest)
    if diameter.least is None and hole.least is not None:
        bounds = bounds_of(diameter, system=system, rules=rules)
        if bounds.least > hole.largest:
            across = Limits(least=bounds.least, greatest=bounds.greatest)
    limits = depth_limits(
        diameter=across,
        hole_diameter=Limits(least=hole.smallest, greatest=hole.largest),
        included_angle=seat.included_angle,
    )
    bounded = limits.least != limits.greatest
    return Given(
        about="depth from the face",
        value=seat.depth,
        least=limits.least if bounded else None,
        greatest=limits.greatest if bounded else None,
        source="worked out: diameter, hole and angle",
    )


def _box(screw: Screw | None, seat: Countersink, rules: HouseRules) -> SeatRange | None:
    if screw is None:
        return None
    greatest, least = screw.head, screw.lowest_head
    angles = screw.angle_range or (greatest.included_angle, greatest.included_angle)
    heads = corner_heads(
        sharp_diameter=Limits(least=least.sharp_diameter, greatest=greatest.sharp_diameter),
        included_angle=angles,
        edge_diameter=_edges(greatest, least),
    )
    return seats_for(
        heads,
        hole_diameter=seat.hole_diameter,
        included_angle=seat.included_angle,
        below=rules.number("flush.greatest_below"),
    )


def _edges(greatest: Head, least: Head) -> Limits | None:
    if greatest.edge_diameter is None or least.edge_diameter is None:
        return None
    return Limits(least=least.edge_diameter, greatest=greatest.edge_diameter)
