"""One place of a note: its hole, its thread, its screw, and the drilling they need."""

from dataclasses import dataclass

from seatwork import notes
from seatwork.errors import SeatworkError
from seatwork.hardware import Screw
from seatwork.plan import words
from seatwork.plan.order import Order, by_hand, drilling
from seatwork.plan.records import Given, Operation
from seatwork.plan.resolving import hole_for


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """What a note says of one hole, and what was found for it.

    Parameters
    ----------
    count : int
        Number of places.
    note : Hole or None
        The hole as the note says it.
    thread : Thread or None
        Its thread.
    screw : Screw or None
        The screw that goes in.
    size : Given or None
        Diameter of the hole with its source.
    """

    count: int
    note: notes.Hole | None
    thread: notes.Thread | None
    screw: Screw | None
    size: Given | None

    @property
    def through(self) -> bool:
        """Whether the drill comes out on the far side; taken so where the note gives no depth."""
        if self.note is None:
            thread = self.thread
            return thread is None or thread.through or thread.depth is None
        return self.note.through or self.note.depth is None

    def hole(self, wanted_for: str) -> Given:
        """Return the hole.

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


def place_of(group: tuple[notes.Feature, ...], *, screw: Screw | None, order: Order) -> Place:
    """Gather what a group of features says of its hole."""
    hole = next((one for one in group if isinstance(one, notes.Hole)), None)
    thread = next((one for one in group if isinstance(one, notes.Thread)), None)
    return Place(
        count=group[0].count,
        note=hole,
        thread=thread,
        screw=screw,
        size=hole_for(hole, None if thread else screw, thread, order.shop.rules),
    )


def drill_hole(place: Place, order: Order) -> tuple[Operation, ...]:
    """Return the drilling of the place's hole."""
    hole = place.size
    if hole is None:
        return ()
    why = words.TAP_DRILL if place.thread else words.DRILL
    return (drilling(order, diameter=hole.value, name=hole.name, why=why),)


def far_side(place: Place) -> tuple[Operation, ...]:
    """Return the deburring of the far side of a through hole."""
    if not place.through:
        return ()
    tool = "cross-hole cutter or deburring tool, by hand; never with a finger"
    return (by_hand("deburr the far side", words.DEBUR_FAR, tool),)
