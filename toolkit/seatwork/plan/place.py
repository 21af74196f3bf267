"""One place of a note: its hole, its thread, its screw, and the drilling they need."""

from dataclasses import dataclass, replace

from seatwork import hardware, notes
from seatwork.errors import SeatworkError
from seatwork.hardware import Screw
from seatwork.notes.features import FLOOR
from seatwork.plan import sentences
from seatwork.plan.blind import Bottom, bottom_of
from seatwork.plan.boring import bored_hole, drilled_to_bore, to_size_step
from seatwork.plan.order import Order, by_hand, drilling
from seatwork.plan.reaming import drilled_under, reamed_hole
from seatwork.plan.records import Given, Operation
from seatwork.plan.resolving import hole_for, stated
from seatwork.plan.riveting import rivet_hole, rivet_named
from seatwork.units import show_note

LEAD_OVER = 12.7  # mm; over 1/2 in a lead drill goes first (common practice, no source)
WEB = 0.2  # of a twist drill's diameter is its web, about (common practice, no source)
SEAT_FIRST = "seat first"


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """What a note says of one hole, and what was found for it.

    Parameters
    ----------
    count : int
        Number of places.
    note : Hole or None
        The hole as the note says it; of a drilled and reamed one, the drilled.
    ream : Hole or None
        The same hole as it is reamed.
    thread : Thread or None
        Its thread.
    screw : Screw or None
        The screw that goes in.
    size : Given or None
        Diameter of the finished hole with its source.
    drilled : Given or None
        Diameter of the drill; the same where nothing follows it.
    bored : bool
        Whether the drill goes under, and the hole is bored or reamed to size behind it.
    bottom : Bottom or None
        Where a blind hole ends.
    seat_first : bool
        Whether seats of a reamed hole are cut before the reamer.
    floor_break : Given or None
        Countersink that the note asks for on the floor of a counterbore.
    """

    count: int
    note: notes.Hole | None
    ream: notes.Hole | None = None
    thread: notes.Thread | None
    screw: Screw | None
    size: Given | None
    drilled: Given | None
    bored: bool = False
    bottom: Bottom | None = None
    seat_first: bool = True
    floor_break: Given | None = None

    @property
    def through(self) -> bool:
        """Whether the drill comes out on the far side; taken so where the note gives no depth."""
        return self.bottom is None

    def hole(self, wanted_for: str) -> Given:
        """Return the finished hole.

        Raises
        ------
        SeatworkError
            If neither note nor screw gives one.
        """
        if self.size is None:
            raise SeatworkError(
                wanted_for,
                "the note gives neither a hole nor a screw to drill it for",
                "write the hole in the note, or name the screw",
            )
        return self.size

    def at_cut(self, side: str, wanted_for: str) -> Given:
        """Return the hole that is there when a seat is cut.

        Notes
        -----
        A hole is reamed in the clamping it was drilled in: before a seat on the far side, and
        by house rule after a seat on the near one.
        """
        finished = self.hole(wanted_for)
        waits = self.ream is not None and self.seat_first and side != "far"
        return self.drilled if waits and self.drilled is not None else finished


def place_of(group: tuple[notes.Feature, ...], *, screw: Screw | None, order: Order) -> Place:
    """Gather what a group of features says of its hole."""
    holes = [one for one in group if isinstance(one, notes.Hole)]
    ream = next((one for one in holes if one.process == "ream"), None)
    drill = next((one for one in holes if one is not ream), None)
    thread = next((one for one in group if isinstance(one, notes.Thread)), None)
    rules = order.shop.rules
    bored = bored_hole(drill) if ream is None and thread is None else None
    size = reamed_hole(ream) if ream else bored
    size = size or hole_for(drill, None if thread else screw, thread, rules)
    size = size or rivet_hole(rivet_named(group))
    drilled = drilled_under(drill, size, order) if ream and size else size
    drilled = drilled_to_bore(bored, order) if bored else drilled
    return Place(
        count=group[0].count,
        note=drill or ream,
        ream=ream,
        thread=thread,
        screw=screw,
        size=size,
        drilled=drilled,
        bored=bored is not None,
        bottom=bottom_of(drill, ream, thread, drilled, order),
        seat_first=rules.word("order.ream_and_seat") == SEAT_FIRST,
        floor_break=_floor_break(group),
    )


def _floor_break(group: tuple[notes.Feature, ...]) -> Given | None:
    """Return the countersink that lies on a counterbore's floor: said so, or narrower than it."""
    bores = [
        one.diameter.value
        for one in group
        if isinstance(one, notes.Counterbore) and one.diameter and one.diameter.value
    ]
    for one in group:
        if not isinstance(one, notes.Countersink) or one.diameter is None:
            continue
        across = one.diameter.value
        on_floor = one.measured_from == FLOOR or any(across and across < bore for bore in bores)
        if across and on_floor:
            return stated(one.diameter, "break at the floor")
    return None


def drill_size(hole: Given) -> float:
    """Return the size of the drill for a hole [mm]: its own where the hole has limits."""
    if hole.name and hole.smallest != hole.largest:
        return hardware.drill(hole.name).diameter
    return hole.value


def drill_hole(place: Place, order: Order) -> tuple[Operation, ...]:
    """Return the drilling of the place's hole, a lead drill first where the drill is large."""
    hole = place.drilled
    if hole is None:
        return ()
    why = sentences.TAP_DRILL if place.thread else sentences.DRILL
    why = sentences.UNDER_REAMER if place.ream else why
    why = sentences.UNDER_BORE if place.bored else why
    size = drill_size(hole)
    deep = "" if place.bottom else "through"
    step = replace(drilling(order, diameter=size, name=hole.name, why=why), deep=deep)
    last = _to_size(place, order)
    if not size > LEAD_OVER + 1e-6:
        return (step, *last)
    lead = _lead(WEB * size, order.system)
    first = drilling(order, diameter=lead.diameter, name=lead.name, why=sentences.LEAD_DRILL)
    return (replace(first, name="lead drill", deep=deep or "not past the tip"), step, *last)


def _to_size(place: Place, order: Order) -> tuple[Operation, ...]:
    """Return what brings a hole that no drill makes to its size."""
    if not place.bored or place.note is None:
        return ()
    step = to_size_step(place.note, place.hole("the bore"), order)
    return (replace(step, deep=deep_from_face(place.note.depth, order)),)


def deep_from_face(depth: notes.Size | None, order: Order) -> str:
    """Say how deep a reamer or a boring bar goes, in few words; nothing where no depth is said."""
    if depth is None:
        return ""
    return f"{show_note(stated(depth, '').value, order.system)} from the face"


def _lead(web: float, system: str) -> hardware.Drill:
    """Return the drill nearest to a web's width [mm]: in inches one of the fractions."""
    held = (one for one in hardware.drills(system) if one.series in ("fraction", "metric"))
    return min(held, key=lambda one: abs(one.diameter - web))


def far_side(place: Place) -> tuple[Operation, ...]:
    """Return the deburring of the far side of a through hole."""
    if not place.through:
        return ()
    tool = "cross-hole cutter or deburring tool, by hand; never with a finger"
    return (by_hand("deburr the far side", sentences.DEBUR_FAR, tool, "by hand"),)
