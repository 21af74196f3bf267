"""Limits of a stated size, narrowed to those in which the greatest head stands as it must."""

from dataclasses import replace

from seatwork.errors import SeatworkError
from seatwork.hardware import Screw
from seatwork.notes import Head
from seatwork.plan.bounds import bounds_of
from seatwork.plan.countersinks import SizedCountersink
from seatwork.plan.records import Given
from seatwork.plan.standing import BELOW, PROUD, Stand, stand_of
from seatwork.seats import fit
from seatwork.seats.box_of_screws import diameter_for
from seatwork.seats.touching_off import Limits, depth_limits
from seatwork.shop import HouseRules

SLIGHT = 1e-6  # mm; what a sum may be off by in its last digits


def narrowed_cone(
    sized: SizedCountersink,
    screw: Screw | None,
    *,
    hole: Given,
    system: str,
    rules: HouseRules,
) -> SizedCountersink:
    """Return a countersink whose stated size keeps the greatest head where it may stand.

    Parameters
    ----------
    sized : SizedCountersink
        The seat as note, screw and house rules size it.
    screw : Screw or None
        The screw that goes in.
    hole : Given
        The hole, with its limits [mm].
    system : {"inch", "metric"}
        System of the print, for its usual title block.
    rules : HouseRules
        The rules in force.

    Returns
    -------
    SizedCountersink
        The same where nothing is stated, or where the size aimed for meets one rule only: then
        the check of the greatest head asks which governs.
    """
    angle, across, deep = sized.sizes
    if screw is None or sized.stand is None or not (across.noted or deep.noted):
        return sized
    good = _good(sized, screw, sized.stand, rules)
    if good is None:
        return sized
    bounds = bounds_of(across, system=system, rules=rules)
    least, greatest = max(bounds.least, good.least), min(bounds.greatest, good.greatest)
    if (least, greatest) == (bounds.least, bounds.greatest):
        return sized
    why = _why(sized.stand)
    tight = replace(
        across, least=least, greatest=greatest, source=f"{_said(across, bounds.source)}{why}"
    )
    depth = depth_limits(
        diameter=Limits(least=least, greatest=greatest),
        hole_diameter=_hole(hole, exact=deep.noted),
        included_angle=sized.seat.included_angle,
    )
    stated = bounds_of(deep, system=system, rules=rules)
    from_face = replace(
        deep,
        least=max(stated.least, depth.least),
        greatest=min(stated.greatest, depth.greatest) if deep.noted else stated.greatest,
        source=f"{_said(deep, stated.source)}{why}",
    )
    return replace(sized, sizes=(angle, tight, from_face))


def narrowed_bore(
    deep: Given, head: Head | None, screw: Screw | None, *, system: str, rules: HouseRules
) -> Given:
    """Return the depth of a counterbore with limits in which no head stands too high.

    Parameters
    ----------
    deep : Given
        The depth from the face [mm].
    head : Head or None
        What the note says of the head.
    screw : Screw or None
        The screw that goes in.
    system : {"inch", "metric"}
        System of the print, for its usual title block.
    rules : HouseRules
        The rules in force.

    Returns
    -------
    Given
        The same where the depth aimed for leaves the greatest head proud: the plan asks then.
    """
    height = screw.head_height if screw else None
    if height is None or (head is not None and head.state == "proud"):
        return deep
    stand = stand_of(head, system=system, rules=rules)
    needed = height - stand.top(rules)
    bounds = bounds_of(deep, system=system, rules=rules)
    if deep.value < needed - SLIGHT or not bounds.least < needed - SLIGHT:
        return deep
    return replace(
        deep,
        least=min(needed, deep.value),
        greatest=bounds.greatest,
        source=f"{_said(deep, bounds.source)}{_why(stand, BELOW)}",
    )


def _good(sized: SizedCountersink, screw: Screw, stand: Stand, rules: HouseRules) -> Limits | None:
    """Return the diameters in which the greatest head stands as it must, where the aim is one."""
    aim, seat = sized.sizes[1].value, sized.seat
    try:
        least, greatest = (
            diameter_for(
                screw.head,
                amount=amount,
                hole_diameter=seat.hole_diameter,
                included_angle=seat.included_angle,
            )
            for amount in (stand.top(rules), stand.lowest)
        )
        flush = fit(screw.head, seat).state == "flush"
    except SeatworkError:
        return None
    if not (least - SLIGHT <= aim or flush) or not aim <= greatest + SLIGHT:
        return None
    return Limits(least=min(least, aim), greatest=max(greatest, aim))


def _hole(hole: Given, *, exact: bool) -> Limits:
    """Return the hole's limits; none where the depth itself is stated."""
    ends = (hole.value, hole.value) if exact else (hole.smallest, hole.largest)
    return Limits(least=ends[0], greatest=ends[1])


def _said(given: Given, limits: str) -> str:
    return given.source if limits == given.source else f"{given.source}, limits by {limits}"


def _why(stand: Stand, *left_out: str) -> str:
    rules = [f"house rule {rule}" for rule in (PROUD, BELOW) if rule not in left_out]
    who = "the flushness in the note" if stand.stated else " and ".join(rules)
    return f", narrowed to where the greatest head stands by {who}"
