"""What a plan is made of: sizes with where they come from, operations, checks, readings.

Lengths are mm, angles deg, spindle speeds rev/min, feeds mm/rev; people see both systems
through `seatwork.plan.telling`.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Self

from seatwork.cutting import Stall
from seatwork.doors import door
from seatwork.hardware import Screw
from seatwork.notes import Callout
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop import Rule
from seatwork.shop.choosing.spindles import Spindle

Shape = Countersink | Counterbore | Spotface | Chamfer


@dataclass(frozen=True, slots=True, kw_only=True)
class Given:
    """One size of the plan, and who says so.

    Parameters
    ----------
    about : str
        What it is, such as ``"diameter at the face"``.
    value : float
        The size to aim for [mm or deg].
    least, greatest : float or None
        Limits [mm or deg], where there are any.
    kind : {"length", "angle"}
        What the value is.
    source : str
        ``"print note"``, a document, a house rule, or how it was worked out.
    confirmed : str
        two-source, one-source or memory for published values; empty for the others.
    name : str
        Name of a drill, where it is one.
    """

    about: str
    value: float
    least: float | None = None
    greatest: float | None = None
    kind: str = "length"
    source: str = "print note"
    confirmed: str = ""
    name: str = ""

    @property
    def smallest(self) -> float:
        """Least size allowed [mm or deg]; the size itself where there are no limits."""
        return self.value if self.least is None else self.least

    @property
    def largest(self) -> float:
        """Greatest size allowed [mm or deg]; the size itself where there are no limits."""
        return self.value if self.greatest is None else self.greatest


@dataclass(frozen=True, slots=True, kw_only=True)
class Operation:
    """One thing to do at the machine, in order.

    Parameters
    ----------
    name : str
        What is done: ``drill``, ``countersink``, ``tap`` ...
    why : str
        Why it is done, and why now.
    tool : str
        The tool from the shop's own list, or what to get.
    in_shop : bool
        Whether the shop has it.
    tool_reason : str
        Why that one.
    spindle : Spindle or None
        Speed, where a spindle turns.
    feed : float or None
        Feed [mm/rev].
    feed_source : str
        Where the feed comes from.
    oil : str
        What to cut it with.
    load : Stall or None
        Torque against the machine's.
    power : float or None
        Cutting power, erring high as `load` does [W].
    """

    name: str
    why: str
    tool: str = ""
    in_shop: bool = True
    tool_reason: str = ""
    spindle: Spindle | None = None
    feed: float | None = None
    feed_source: str = ""
    oil: str = ""
    load: Stall | None = None
    power: float | None = None

    def because(self, why: str) -> Self:
        """Return the same operation with another reason."""
        return replace(self, why=why)


@dataclass(frozen=True, slots=True, kw_only=True)
class Stop:
    """Where to touch off and how far to let the quill travel.

    Parameters
    ----------
    touch : str
        ``"the lips touch the hole edge"``, ``"the nose touches the solid face"``,
        ``"the lips touch the face"``.
    travel : float
        Quill travel from there [mm].
    error : float
        A stop error to reckon with [mm].
    effect : float
        What that error does to the diameter at the face; 0 where it only changes depth [mm].
    """

    touch: str
    travel: float
    error: float
    effect: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """A gage reading to expect.

    Parameters
    ----------
    instrument : str
        What is measured with.
    about : str
        What the reading is of.
    value : float
        Reading to expect [mm].
    least, greatest : float
        Limits of an acceptable reading [mm].
    source : str
        Which rule gives the limits; empty where the note or a standard does.
    """

    instrument: str
    about: str
    value: float
    least: float
    greatest: float
    source: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Check:
    """Something that was looked at before cutting.

    Parameters
    ----------
    name : str
        What was looked at.
    verdict : {"holds", "look", "stop"}
        Whether it holds, wants a look, or must be settled first.
    sentence : str
        The same in words, sizes in both unit systems.
    question : str
        What to ask before cutting; empty where nothing must be settled.
    """

    name: str
    verdict: str
    sentence: str
    question: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatPlan:
    """The plan of one hole with its seats.

    Parameters
    ----------
    title : str
        What it is, in words.
    kind : str
        countersink, counterbore, spotface, chamfer, tapped hole, center, hole or edge.
    count : int
        Number of places.
    screw : Screw or None
        The screw it is for.
    sizes : tuple of Given
        Hole, diameter, angle, depth, pilot ... each with its source.
    shape : Countersink, Counterbore, Spotface, Chamfer or None
        The seat itself at its aimed-for size.
    operations : tuple of Operation
        In the order to do them.
    stops : tuple of Stop
        Touch-offs, the one to use first.
    readings : tuple of Reading
        What gages should say.
    checks : tuple of Check
        What was looked at.
    outlook : str
        Chatter, in words only.
    advice : tuple of str
        Screw length, setting on scrap and the like.
    """

    title: str
    kind: str
    count: int = 1
    screw: Screw | None = None
    sizes: tuple[Given, ...] = ()
    shape: Shape | None = None
    operations: tuple[Operation, ...] = ()
    stops: tuple[Stop, ...] = ()
    readings: tuple[Reading, ...] = ()
    checks: tuple[Check, ...] = ()
    outlook: str = ""
    advice: tuple[str, ...] = ()

    def size(self, about: str) -> Given | None:
        """Return the size that is about something, or None."""
        return next((given for given in self.sizes if given.about == about), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """A complete plan of a print note.

    Parameters
    ----------
    callout : Callout
        The note as read.
    material, machine : str
        What is cut, and on what.
    seats : tuple of SeatPlan
        Hole by hole.
    assumptions : tuple of str
        What was assumed, each naming its house rule.
    questions : tuple of str
        What to ask before cutting.
    cautions : tuple of str
        Names of the cautions that belong to these operations.
    rules : tuple of Rule
        Every house rule that a size, a speed or a check rests on, as in force.
    """

    callout: Callout
    material: str
    machine: str
    seats: tuple[SeatPlan, ...]
    assumptions: tuple[str, ...] = ()
    questions: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    rules: tuple[Rule, ...] = ()

    card = door("seatwork.cards:job_card")
    inspect = door("seatwork.inspection:inspect_parts")

    @property
    def must_ask(self) -> bool:
        """Whether something must be settled before the first cut."""
        return any(check.verdict == "stop" for seat in self.seats for check in seat.checks)

    def sources(self) -> tuple[str, ...]:
        """Return every document and house rule a size or speed rests on, each once."""
        return tuple(dict.fromkeys(self._all_sources()))

    def from_memory(self) -> tuple[str, ...]:
        """Return what rests on memory and must be checked against a copy, each once."""
        found = (
            f"{given.about} ({given.source})"
            for seat in self.seats
            for given in seat.sizes
            if given.confirmed == "memory"
        )
        return tuple(dict.fromkeys(found))

    def _all_sources(self) -> Iterator[str]:
        for seat in self.seats:
            yield from (given.source for given in seat.sizes)
            for operation in seat.operations:
                if operation.spindle:
                    yield operation.spindle.source
                if operation.feed_source:
                    yield operation.feed_source
