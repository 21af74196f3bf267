"""A plan: the seats of a note, each with its sizes, steps, stops, readings and checks."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from seatwork.doors import door
from seatwork.hardware import Screw
from seatwork.notes import Callout
from seatwork.plan import rows
from seatwork.plan.records import Check, Given, Operation, Reading, Setup, Stop
from seatwork.rows import Blocks, Row, Rows, Shown, short
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop import Rule, cautions
from seatwork.shop.house.cautions import closing

Shape = Countersink | Counterbore | Spotface | Chamfer
MEMORY = "from memory: check your copy"


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class SeatPlan(Shown):
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
    side : str
        near, far, back or both, where the note says it; back is cut from the near side.
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
    side: str = ""

    def _line(self) -> str:
        return f"{self.count} x {self.title}: {_outcome(self.checks)}"

    def size(self, about: str) -> Given | None:
        """Return the size that is about something, or None."""
        return next((given for given in self.sizes if given.about == about), None)

    def size_rows(self, system: str = "inch") -> Rows:
        """Return the sizes, each with its source."""
        return Rows(rows.size_rows(self.sizes, system))

    def operation_rows(self, system: str = "inch") -> tuple[Rows, ...]:
        """Return the operations, each as rows: what and why, tool, speed, feed, oil, load."""
        return tuple(Rows(step) for step in rows.operation_rows(self.operations, system))

    def stop_rows(self, system: str = "inch") -> Rows:
        """Return touch-off and quill travel, and what a stop error does."""
        return Rows(rows.stop_rows(self.stops, system))

    def reading_rows(self, system: str = "inch") -> Rows:
        """Return the gage readings to expect."""
        return Rows(rows.reading_rows(self.readings, system))

    def check_rows(self) -> Rows:
        """Return what was looked at, with its verdict in words."""
        return Rows(rows.check_rows(self.checks))

    def blocks(self, system: str = "inch") -> Blocks:
        """Yield everything the plan of the seat says, block by block, each with its heading."""
        yield "Sizes", self.size_rows(system)
        yield "Steps", tuple(row for step in self.operation_rows(system) for row in step)
        yield "Stop", self.stop_rows(system)
        yield "Gage readings", self.reading_rows(system)
        yield "Looked at", self.check_rows()
        said = (("Chatter", self.outlook), *(("Note", sentence) for sentence in self.advice))
        yield "Besides", tuple(Row(label=label, text=text) for label, text in said if text)

    _blocks = blocks


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Plan(Shown):
    """A complete plan of a print note.

    Parameters
    ----------
    callout : Callout
        The note as read.
    material, machine : str
        What is cut, and on what.
    seats : tuple of SeatPlan
        Hole by hole.
    setups : tuple of Setup
        Clampings, in order; another wherever the part is turned over.
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
    setups: tuple[Setup, ...] = ()
    assumptions: tuple[str, ...] = ()
    questions: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    rules: tuple[Rule, ...] = ()

    card = door("seatwork.cards:job_card")
    inspect = door("seatwork.inspection:inspect_parts")

    def _line(self) -> str:
        what = f"{self.callout.text or 'note'}, {self.material}, {self.machine}"
        checks = [check for seat in self.seats for check in seat.checks]
        return f"{short(what, 70)}: {_outcome(checks)}"

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

    def setup_rows(self) -> tuple[Row, ...]:
        """Return a line for each clamping: face up, how held, what is under, zero, steps."""
        return rows.setup_rows(self.setups)

    def closing_rows(self) -> tuple[Row, ...]:
        """Return questions, assumptions, what is from memory, sources, and cautions."""
        boxes = cautions(*self.cautions)
        return (
            *(Row(label="Ask before cutting", text=question) for question in self.questions),
            *(Row(label="Assumed", text=sentence) for sentence in self.assumptions),
            *(Row(label="Check your copy", text=f"{one}, {MEMORY}") for one in self.from_memory()),
            *(Row(label="Source", text=source) for source in self.sources()),
            *(rows.rule_row(rule) for rule in self.rules),
            *(Row(label=box.title, text=" ".join(box.do), source=box.source) for box in boxes),
            Row(label="Last", text=closing()),
        )

    def _blocks(self) -> Blocks:
        yield "Setups", self.setup_rows()
        for seat in self.seats:
            for heading, told in seat.blocks(self.callout.system):
                yield f"{seat.title}: {heading.casefold()}", told
        yield "Before you cut", self.closing_rows()

    def _all_sources(self) -> Iterator[str]:
        for seat in self.seats:
            yield from (given.source for given in seat.sizes)
            for operation in seat.operations:
                if operation.spindle:
                    yield operation.spindle.source
                if operation.feed_source:
                    yield operation.feed_source


def _outcome(checks: Sequence[Check]) -> str:
    """Count the checks of a plan in words: what must be asked first."""
    counts = dict.fromkeys(("holds", "look", "stop"), 0)
    for check in checks:
        counts[check.verdict] += 1
    stop, look = counts["stop"], counts["look"]
    return f"{stop} to ask first, {look} to look at, {counts['holds']} hold"
