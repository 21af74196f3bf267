"""Plans of tapped holes: mouth before the tap, kind of tap, full thread, plug gages."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from seatwork import hardware, notes
from seatwork.errors import SeatworkError
from seatwork.hardware.tap_leads import TapRoom
from seatwork.hardware.taps import pitched
from seatwork.plan import sentences
from seatwork.plan.cones import cone_plan
from seatwork.plan.floors import Base
from seatwork.plan.mouths import mouth_of
from seatwork.plan.order import Order, by_hand
from seatwork.plan.place import Place
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Check, Given, Operation, Reading
from seatwork.plan.resolving import stated, thread_name
from seatwork.units import show_note, show_number

DEPTH, IN_METAL = "full thread from the face", "full thread in the metal"
LOW, HIGH = "thread.percent_low", "thread.percent_high"
LEAD = "room for the tap's lead"
SMALL = 9.6  # mm; taps of about 3/8 in and under have a point of their own (from memory)
WRENCH = 6.3  # mm; taps under 1/4 in are turned by a wrench, not in a chuck


@dataclass(frozen=True, slots=True, kw_only=True)
class Threaded:
    """A thread to be cut.

    Parameters
    ----------
    label : str
        As the note names it, with series, class and hand.
    thread : hardware.Thread
        With its pitch.
    depth : Given or None
        Full thread from the face [mm]; None where it goes through.
    in_metal : float or None
        The part of it that is in metal, below a counterbore [mm].
    room : TapRoom or None
        What a blind hole leaves for the tap's lead.
    """

    label: str
    thread: hardware.Thread
    depth: Given | None
    in_metal: float | None
    room: TapRoom | None


def threaded(place: Place, floor: Given | None, order: Order) -> Threaded:
    """Settle how deep a thread goes and which tap that takes."""
    note = place.thread
    assert note is not None
    found = pitched(thread_name(note))
    assert found.pitch is not None
    depth = stated(note.depth, DEPTH) if note.depth is not None else None
    if depth is None and place.through and order.thickness is not None:
        deep = order.thickness - (floor.value if floor else 0.0)
        return Threaded(label=label(note), thread=found, depth=None, in_metal=deep, room=None)
    in_metal = depth.value - (floor.value if floor else 0.0) if depth else None
    room = None
    if depth is not None and place.bottom is not None:
        left = place.bottom.depth.largest - depth.smallest
        room = hardware.tap_room(room=left, pitch=found.pitch, rules=order.shop.rules)
    return Threaded(label=label(note), thread=found, depth=depth, in_metal=in_metal, room=room)


def label(thread: notes.Thread) -> str:
    """Write a thread as the note does: ``1/4-20 UNC-2B``, ``M8x1.25-6H``.

    Raises
    ------
    SeatworkError
        For a pipe thread, which is not planned here.
    """
    if thread.series.startswith("NPT"):
        raise SeatworkError(
            f"{thread_name(thread)} {thread.series}",
            "not planned here: pipe thread",
            "drill or taper-ream it by the list of your pipe taps; it makes no seat for a head",
        )
    series = f" {thread.series}" if thread.series else ""
    tolerance = f"-{thread.thread_class}" if thread.thread_class else ""
    return f"{thread_name(thread)}{series}{tolerance}{' LH' if thread.left_hand else ''}"


def tapped_hole_plan(
    note: notes.Countersink | notes.Chamfer | None, place: Place, base: Base, order: Order
) -> SeatPlan:
    """Plan a tapped hole: its mouth before the tap, what the tap needs, what gages say."""
    plan = mouth_plan(note, place, base, order)
    found = threaded(place, base.floor, order)
    checks = (
        *_asked_about_screw(note),
        *_share(found, place, order),
        *_room(found, place, order),
        *_metal(found, base, order),
    )
    return replace(
        plan,
        title=plan.title.replace("mouth of the tapped hole", "tapped hole", 1),
        sizes=(*plan.sizes, *_sizes(found)),
        readings=(*plan.readings, *gages(found, order)),
        checks=(*checks, *plan.checks),
        advice=_advice(found, place, order),
    )


def mouth_plan(
    note: notes.Countersink | notes.Chamfer | None, place: Place, base: Base, order: Order
) -> SeatPlan:
    """Plan the mouth of a tapped hole alone."""
    assert place.thread is not None
    named = thread_name(place.thread)
    metric = place.thread.size.startswith("M")
    sized = mouth_of(note, hardware.thread(named).diameter, base.hole, order, metric=metric)
    title = f"mouth of the tapped hole {named}"
    plan = cone_plan(
        sized, place, base, order, title=title, name="chamfer", why=sentences.CHAMFER_FIRST
    )
    checks = _mouth(sized.seat.diameter, hardware.thread(named).diameter, base, order)
    return replace(plan, kind="tapped hole", checks=(*checks, *plan.checks))


def _mouth(mouth: float, major: float, base: Base, order: Order) -> Iterator[Check]:
    """Look at whether the mouth is wider than the thread, and fits its counterbore."""
    name, across = "mouth of the thread", order.show_length(mouth)
    thread = order.show_length(major)
    if not mouth > major:
        sentence = (
            f"The mouth, {across}, is no wider than the thread, {thread}: the first thread rises. "
            "Is the leg counted from the major diameter?"
        )
        yield Check(name=name, verdict="look", sentence=sentence)
    if base.bore is None or base.bore >= mouth:
        return
    bore = order.show_length(base.bore)
    if base.bore > major:
        sentence = f"The counterbore, {bore}, is narrower than the mouth: chamfer it only so far."
        yield Check(name=name, verdict="look", sentence=sentence)
        return
    sentence = f"The counterbore, {bore}, is no wider than the thread, {thread}."
    asks = f"{sentence} Which of the two is wrong?"
    yield Check(name=name, verdict="stop", sentence=sentence, question=asks)


def tap_step(place: Place, floor: Given | None, order: Order) -> Operation:
    """Return the tapping, by hand, with the kind of tap and how deep."""
    found = threaded(place, floor, order)
    assert place.thread is not None
    kind = _kind(place.thread, found.room)
    deep = f", full thread {order.show_length(found.depth.value)} deep" if found.depth else ""
    taps = ", then ".join(f"{one} tap" for one in kind.split(", then "))
    tool = f"{taps} {found.label}{deep}"
    how = sentences.TAP_WRENCH if found.thread.diameter < WRENCH else sentences.TAP_CHUCK
    turn = sentences.TAP_DRY if order.material.dry else sentences.TAP_OIL
    blind = f" {sentences.TAP_BLIND}" if place.bottom is not None else ""
    made = by_hand("tap", f"{sentences.TAP} {how} {turn}{blind}", tool)
    low = (
        f"{show_note(found.depth.value, order.system)} from the face" if found.depth else "through"
    )
    return replace(made, short=f"{found.label} {kind} tap", deep=low)


def _kind(note: notes.Thread, room: TapRoom | None) -> str:
    if room is None or not room.tap:
        return note.tap or "plug"
    if note.tap == "bottoming" or room.tap.startswith("bottoming"):
        return "plug, then bottoming"
    return room.tap


def _sizes(found: Threaded) -> tuple[Given, ...]:
    sizes = [found.depth] if found.depth else []
    if found.in_metal is not None and found.in_metal > 0:
        source = "worked out: what lies in the metal, mouth and all"
        sizes.append(Given(about=IN_METAL, value=found.in_metal, source=source))
    if found.room is not None and found.room.room > 0:
        source = "worked out: drill depth less full thread"
        sizes.append(Given(about=LEAD, value=found.room.room, source=source))
    return tuple(sizes)


def gages(found: Threaded, order: Order) -> tuple[Reading, ...]:
    """Return the turns that thread plug gages should make."""
    rule = "thread.metric_not_go" if found.thread.system == "metric" else "thread.inch_not_go"
    most = order.shop.rules.number(rule)
    not_go = Reading(
        instrument=f"NOT GO thread plug {found.label}",
        about="it may start, and must not enter farther",
        value=most,
        least=0.0,
        greatest=most,
        source=f"house rule {rule}",
        kind="turns",
        operation="tap",
        short="NOT GO",
    )
    if found.in_metal is None or not found.in_metal > 0:
        return (not_go,)
    assert found.thread.pitch is not None
    turns = found.in_metal / found.thread.pitch
    about = "turns by hand to the full depth, less those of the mouth"
    go = Reading(
        instrument=f"GO thread plug {found.label}",
        about=about,
        value=turns,
        least=turns,
        greatest=turns,
        kind="turns",
        operation="tap",
        short="GO",
    )
    return (go, not_go)


def _share(found: Threaded, place: Place, order: Order) -> Iterator[Check]:
    hole = place.hole("the thread")
    share = hardware.share_of_thread(found.thread, hole.value)
    assert share is not None
    low, high = order.shop.rules.number(LOW), order.shop.rules.number(HIGH)
    text = f"{show_number(100 * share, 0)} % of full thread"
    name = "percent of thread"
    if not 0 < share < 1:
        drill = order.show_length(hole.value)
        sentence = f"A hole of {drill} makes no thread {found.label}."
        asks = f"{sentence} Which of the two is wrong?"
        yield Check(name=name, verdict="stop", sentence=sentence, question=asks)
        return
    inside = low <= share <= high
    why = "." if inside else f": house rules {LOW} and {HIGH} ask for {low:.0%} to {high:.0%}."
    yield Check(name=name, verdict="holds" if inside else "look", sentence=f"{text}{why}")


def _room(found: Threaded, place: Place, order: Order) -> Iterator[Check]:
    room, note = found.room, place.thread
    if room is None or note is None:
        return
    pitches = f"{show_number(room.pitches, 1)} pitches"
    if room.verdict == "stop":
        deeper = "deeper than its drill" if room.room < 0 else "as deep as its hole"
        sentence = f"The thread is {deeper}: {pitches} of room for the tap's lead."
        asks = f"The thread is {deeper}: which yields?"
        yield Check(name=LEAD, verdict="stop", sentence=sentence, question=asks)
        return
    text = f"{order.show_length(room.room)}, {pitches}"
    sentence = f"{text}: {sentences.LEADS[room.tap, room.chips]}"
    yield Check(name=LEAD, verdict=room.verdict, sentence=sentence)
    if note.tap in ("plug", "taper") and room.tap != "plug":
        sentence = f"The note asks for a {note.tap} tap, and {text} want a bottoming tap after it."
        yield Check(name="kind of tap", verdict="look", sentence=sentence)


def _metal(found: Threaded, base: Base, order: Order) -> Iterator[Check]:
    if found.in_metal is None or base.floor is None or found.depth is None:
        return
    bore, deep = order.show_length(base.floor.value), order.show_length(found.depth.value)
    if found.in_metal > 0:
        left = order.show_length(found.in_metal)
        sentence = f"Thread in the metal: {left}, below the counterbore; its depth is from the face"
        yield Check(name=IN_METAL, verdict="holds", sentence=f"{sentence}.")
        return
    sentence = f"The counterbore, {bore}, takes the whole thread, {deep}, both from the face."
    asks = f"{sentence} Is the thread's depth counted from the floor?"
    yield Check(name=IN_METAL, verdict="stop", sentence=sentence, question=asks)


def _advice(found: Threaded, place: Place, order: Order) -> tuple[str, ...]:
    said_so = []
    if place.bottom is not None:
        deep = order.show_length(place.bottom.depth.value)
        tip = order.show_length(place.bottom.tip)
        said_so.append(f"Drill {deep} deep at full diameter; the point goes to {tip}.")
    if found.depth is not None:
        said_so.append(f"Full thread {order.show_length(found.depth.value)} deep.")
    small = found.room is not None and not found.thread.diameter > SMALL
    return (*said_so, *((sentences.TAP_POINT,) if small else ()))


def _asked_about_screw(note: notes.Countersink | notes.Chamfer | None) -> Iterator[Check]:
    """Ask where a flat head is named for a hole that has a thread."""
    if note is None or not note.screw:
        return
    yield Check(
        name="screw in a tapped hole",
        verdict="stop",
        sentence="The countersink of a tapped hole is planned as the chamfer before the tap.",
        question=f"{note.screw} is named for a tapped hole: is a seat for its head meant, "
        "or only the thread's chamfer?",
    )
