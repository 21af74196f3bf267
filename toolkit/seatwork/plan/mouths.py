"""The mouth of a tapped hole: as the note says, else by house rule."""

from dataclasses import replace

from seatwork import notes
from seatwork.hardware.taps import mouth_diameter
from seatwork.plan.countersinks import SizedCountersink, size_countersink, wider_than_hole
from seatwork.plan.order import Order
from seatwork.plan.records import Given
from seatwork.plan.resolving import by_rule, stated
from seatwork.seats import Chamfer, Countersink

ANGLE = "tapped_hole.chamfer_angle"


def mouth_of(
    note: notes.Countersink | notes.Chamfer | None,
    major: float,
    hole: Given,
    order: Order,
    *,
    metric: bool = False,
) -> SizedCountersink:
    """Size the mouth of a tapped hole.

    Parameters
    ----------
    note : Countersink, Chamfer or None
        What the note says of it.
    major : float
        Major diameter of the thread [mm].
    hole : Given
        The hole before it is tapped [mm].
    order : Order
        With the house rules.
    metric : bool
        Whether the thread is metric.
    """
    angle = (
        stated(note.angle, "included angle")
        if note is not None and note.angle
        else by_rule(order.shop.rules, ANGLE, "included angle", kind="angle")
    )
    if isinstance(note, notes.Chamfer) and note.leg and not note.diameter:
        return _by_leg(stated(note.leg, "leg along the face"), angle, hole)
    if isinstance(note, notes.Chamfer):
        note = notes.Countersink(diameter=note.diameter, angle=note.angle, side=note.side)
    if note is not None and (note.diameter or note.depth):
        sized = size_countersink(
            replace(note, angle=note.angle or notes.Size(value=angle.value, unit="deg")),
            hole=hole,
            screw=None,
            system=order.system,
            rules=order.shop.rules,
        )
        return replace(sized, sizes=(angle, *sized.sizes[1:]))
    return _by_rule(angle, major, hole, order, metric=metric)


def _by_leg(leg: Given, angle: Given, hole: Given) -> SizedCountersink:
    cone = Chamfer(leg=leg.value, included_angle=angle.value).at_hole(hole.value)
    return SizedCountersink(seat=cone, sizes=(leg, angle, *across(cone)), box=None)


def _by_rule(
    angle: Given, major: float, hole: Given, order: Order, *, metric: bool
) -> SizedCountersink:
    house = order.shop.rules
    across_mouth, rule = mouth_diameter(major, metric=metric, house=house)
    wide = Given(
        about="diameter at the face",
        value=across_mouth,
        source=f"major diameter and house rule {rule}",
        confirmed=house[rule].confirmed,
    )
    seat = Countersink(
        diameter=wider_than_hole(wide, hole).value,
        hole_diameter=hole.value,
        included_angle=angle.value,
    )
    return SizedCountersink(seat=seat, sizes=(angle, wide, *across(seat)[1:]), box=None)


def across(cone: Countersink) -> tuple[Given, ...]:
    """Return diameter and depth of a cone that follows from a chamfer."""
    worked_out = "worked out: hole and chamfer"
    return (
        Given(about="diameter at the face", value=cone.diameter, source=worked_out),
        Given(about="depth from the face", value=cone.depth, source=worked_out),
    )
