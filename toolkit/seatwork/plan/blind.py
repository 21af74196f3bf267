"""Blind holes: how deep the drill goes, where its point ends, what is left under it."""

from dataclasses import dataclass

from seatwork import hardware, notes
from seatwork.hardware.taps import pitched, thread_runout
from seatwork.plan.order import Order
from seatwork.plan.records import Check, Given, Stop
from seatwork.plan.resolving import NOTE, stated, thread_name
from seatwork.plan.stops import STOP_ERROR, stop_device
from seatwork.seats.blind_holes import BlindHole
from seatwork.shop import HouseRules
from seatwork.units import show_angle, show_note

FULL, TIP, UNDER = "drill depth, full diameter", "deepest, at the point", "left under the point"
ANGLE, FLOOR, COUNTED = "drill.point_angle", "blind.least_floor", "hole.depth"
ROOM, METRIC_ROOM = "ream.blind_room", "thread.metric_room"
POINT = "the drill's point touches the face"
NAME = "drill point"
QUARTER = 4  # of the drill's diameter too is little metal under a point (a judgement)


@dataclass(frozen=True, slots=True, kw_only=True)
class Bottom:
    """Where a blind hole ends.

    Parameters
    ----------
    depth : Given
        Depth at full diameter [mm].
    tip : float
        Depth of the point's tip [mm]; the same on a flat bottom.
    drill : float
        Diameter of the drill [mm].
    point_angle : float
        Included angle of the point reckoned with [deg].
    flat : bool
        Whether the note wants a flat bottom.
    """

    depth: Given
    tip: float
    drill: float
    point_angle: float
    flat: bool = False


def bottom_of(
    drill: notes.Hole | None,
    ream: notes.Hole | None,
    thread: notes.Thread | None,
    drilled: Given | None,
    order: Order,
) -> Bottom | None:
    """Find where a hole ends; None where it goes through.

    Parameters
    ----------
    drill, ream : Hole or None
        The hole as drilled, and as reamed.
    thread : Thread or None
        Its thread.
    drilled : Given or None
        The drill [mm].
    order : Order
        With the house rules.

    Notes
    -----
    A depth said for the thread or the reamer alone makes the hole blind too: the drill then
    goes deeper than either, by what lead and chips want.
    """
    every = [one for one in (drill, ream, thread) if one is not None]
    if drilled is None or any(one.through for one in every):
        return None
    angle = order.shop.rules.number(ANGLE)
    flat = any(one.bottom == "U" for one in (drill, ream) if one is not None)
    depth = _depth(drill, ream, thread, drilled, order)
    if depth is None:
        return None
    hole = BlindHole(diameter=drilled.value, depth=depth.value, point_angle=angle)
    tip = hole.depth if flat else hole.tip_depth
    return Bottom(depth=depth, tip=tip, drill=drilled.value, point_angle=angle, flat=flat)


def _depth(
    drill: notes.Hole | None,
    ream: notes.Hole | None,
    thread: notes.Thread | None,
    drilled: Given,
    order: Order,
) -> Given | None:
    own = drill.depth if drill is not None else None
    if own is not None and drill is not None:
        if thread is not None and thread.depth is not None and own.bound == "max":
            return _between(own, thread, thread.depth, order)
        return _counted(stated(own, FULL), drill, drilled, order)
    if thread is not None and thread.depth is not None:
        return _beyond(thread, thread.depth, order)
    if ream is not None and ream.depth is not None:
        return _beyond_reamer(stated(ream.depth, FULL), order)
    return None


def _counted(depth: Given, drill: notes.Hole, drilled: Given, order: Order) -> Given:
    """Take a depth to the point down to the depth of the full diameter."""
    rule = order.shop.rules.word(COUNTED)
    if (drill.depth_to or rule) != "point" or drill.bottom == "U":
        return depth
    hole = BlindHole.to_point(
        depth=depth.value,
        diameter=drilled.value,
        point_angle=order.shop.rules.number(ANGLE),
    )
    who = NOTE if drill.depth_to else f"house rule {COUNTED}"
    source = f"worked out: depth to the point, by {who}, less the point"
    return Given(about=FULL, value=hole.depth, source=source)


def _beyond(thread: notes.Thread, size: notes.Size, order: Order) -> Given:
    """Work out a drill depth that the note leaves open: full thread, lead of a plug, chips."""
    rules = order.shop.rules
    pitch = pitched(thread_name(thread)).pitch or 0.0
    runout = _by_standard(thread, pitch, rules)
    if runout is not None:
        deep = stated(size, "").largest + runout
        return Given(
            about=FULL,
            value=deep,
            source=f"worked out: full thread and house rule {METRIC_ROOM}, DIN 76-1 from memory",
            confirmed="memory",
        )
    pitches = rules.number("thread.lead_plug") + rules.number("thread.chip_room")
    deep = stated(size, "").largest + pitches * pitch
    source = "worked out: full thread and house rules thread.lead_plug and thread.chip_room"
    return Given(about=FULL, value=deep, source=source)


def _by_standard(thread: notes.Thread, pitch: float, rules: HouseRules) -> float | None:
    """Return the run-out of DIN 76-1 where the house goes by it and the table has the pitch."""
    if not thread.size.startswith("M") or rules.word(METRIC_ROOM) != "DIN 76-1":
        return None
    return thread_runout(pitch)


def _between(own: notes.Size, thread: notes.Thread, size: notes.Size, order: Order) -> Given:
    """Aim between the least depth that the taps want and the greatest that the note allows."""
    rules = order.shop.rules
    pitch = pitched(thread_name(thread)).pitch or 0.0
    most, full = stated(own, FULL).largest, stated(size, "").smallest
    room = hardware.tap_room(room=most - full, pitch=pitch, rules=rules)
    lead = "thread.lead_plug" if room.tap == "plug" else "thread.lead_bottoming"
    chips = rules.number("thread.chip_room") if room.chips or room.tap != "plug" else 0.0
    least = min(full + (rules.number(lead) + chips) * pitch, most)
    return Given(
        about=FULL,
        value=(least + most) / 2,
        least=least,
        greatest=most,
        source=f"{NOTE}, MAX; least: full thread and house rules {lead} and thread.chip_room",
        noted=True,
    )


def _beyond_reamer(reamed: Given, order: Order) -> Given:
    deep = reamed.largest + order.shop.rules.number(ROOM)
    return Given(about=FULL, value=deep, source=f"worked out: reamed depth and house rule {ROOM}")


def bottom_sizes(bottom: Bottom | None, order: Order) -> tuple[Given, ...]:
    """Return depth at full diameter, depth of the point, and what is left under it."""
    if bottom is None:
        return ()
    point = show_angle(bottom.point_angle)
    source = "flat bottom" if bottom.flat else f"worked out: {point} point, house rule {ANGLE}"
    found = [bottom.depth, Given(about=TIP, value=bottom.tip, source=source)]
    if order.thickness is not None and order.thickness > bottom.tip:
        left = order.thickness - bottom.tip
        found.append(Given(about=UNDER, value=left, source="worked out: thickness less the point"))
    return tuple(found)


def bottom_stops(bottom: Bottom | None, order: Order) -> tuple[Stop, ...]:
    """Return the touch-off of the drill: its point on the face, down to the tip."""
    device = stop_device(order, None)
    if bottom is None or device is None:
        return ()
    stop = Stop(
        touch=POINT,
        travel=bottom.tip,
        error=STOP_ERROR[order.system],
        effect=0.0,
        device=device[0],
        step=device[1],
        operation="drill",
        short=f"to the tip, {show_note(bottom.depth.value, order.system)} full",
    )
    return (stop,)


def bottom_checks(bottom: Bottom | None, order: Order) -> tuple[Check, ...]:
    """Look at whether the point stays in the metal."""
    if bottom is None:
        return ()
    return (*_flat_bottom(bottom), *_at_point(bottom, order))


def _flat_bottom(bottom: Bottom) -> tuple[Check, ...]:
    """Say that no twist drill leaves a flat bottom."""
    if not bottom.flat:
        return ()
    sentence = (
        "The note wants a flat bottom, and a twist drill leaves its point: drill with the tip no "
        "deeper than the hole, then cut the bottom flat with an end mill or a flat-ground drill."
    )
    return (Check(name="flat bottom", verdict="look", sentence=sentence),)


def _at_point(bottom: Bottom, order: Order) -> tuple[Check, ...]:
    tip = order.show_length(bottom.tip)
    if order.thickness is None:
        sentence = (
            "Not looked at: the thickness of the part is not known. "
            f"Left under the point = thickness - {tip}: measure and reckon."
        )
        return (Check(name=NAME, verdict="look", sentence=sentence),)
    return (_under(bottom, order.thickness, tip, order),)


def _under(bottom: Bottom, thickness: float, tip: str, order: Order) -> Check:
    thick = order.show_length(thickness)
    if not bottom.depth.value < thickness:
        deep = order.show_length(bottom.depth.value)
        sentence = f"The hole, {deep} at full diameter, is deeper than the part, {thick}."
        asks = f"{sentence} Deeper than the plate: which of the two is wrong?"
        return Check(name=NAME, verdict="stop", sentence=sentence, question=asks)
    left = thickness - bottom.tip
    if not left > 0:
        by = f" by {order.show_length(-left)}" if left < 0 else ""
        sentence = f"Full diameter and point go {tip} deep: the point breaks through{by}."
        asks = f"The point breaks through{by} of {thick}: may it?"
        return Check(name=NAME, verdict="stop", sentence=sentence, question=asks)
    least = max(order.shop.rules.number(FLOOR), bottom.drill / QUARTER)
    holds = left >= least
    sentence = f"Left under the point: {order.show_length(left)}" + (
        "." if holds else f", under house rule {FLOOR} or a quarter of the drill: ask."
    )
    return Check(name=NAME, verdict="holds" if holds else "look", sentence=sentence)
