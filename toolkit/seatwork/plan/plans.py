"""A plan: the seats of a note, each with its sizes, steps, stops, readings and checks."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from seatwork.doors import door
from seatwork.hardware import Screw
from seatwork.notes import Callout
from seatwork.plan import bases, rows
from seatwork.plan.contents import KINDS, blocks
from seatwork.plan.records import Assumed, Check, Given, Operation, Reading, Setup, Stop
from seatwork.plan.settings import Work, set_rows
from seatwork.rows import Blocks, Row, Rows, Shown, short
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop import Rule, cautions
from seatwork.shop.house.cautions import closing

Shape = Countersink | Counterbore | Spotface | Chamfer
BY_TRIAL = "by trial"
FREELY = {"spotface": "to clean up", "hole": "", "edge": "", "back": "by measuring"}
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
    spot : int
        Which holes of the note it lies at, from 0; seats on one hole have the same.
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
    spot: int = 0

    def _line(self) -> str:
        return f"{self.count} x {self.title}: {_outcome(self.checks, self._stops())}"

    def _stops(self) -> int:
        return sum(check.verdict == "stop" for check in self.checks)

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

    @property
    def place(self) -> str:
        """The seat in words, with how many there are."""
        return f"{self.count} x {self.title}"

    def set_rows(self, system: str = "inch") -> Rows:
        """Return what to set, a line for each step: tool, rev/min, feed, stop, check."""
        return Rows(set_rows([self.work], system))

    def rows(self, system: str = "inch") -> Rows:
        """Return everything the plan of the seat says, each line with its kind."""
        every = [*self.set_rows(system), *self.placed_rows(system)]
        return Rows(sorted(every, key=lambda row: KINDS.index(row.kind)))

    def placed_rows(self, system: str = "inch") -> Rows:
        """Return what is said of the seat itself beside what to set, each line with its place."""
        return Rows(replace(row, place=self.place) for row in self._stated(system))

    def _stated(self, system: str) -> Iterator[Row]:
        yield from rows.tool_rows(self.operations)
        yield from self.check_rows()
        yield from self.reading_rows(system)
        yield from (Row(label="note", text=text, kind="note") for text in self.advice)
        yield from self.size_rows(system)
        yield from self.stop_rows(system)
        yield from (row for step in self.operation_rows(system) for row in step)
        if self.outlook:
            yield Row(label="Chatter", text=self.outlook, kind="why")

    @property
    def work(self) -> Work:
        """What the seat brings to the table of what to set."""
        return Work(
            place=self.place,
            operations=self.operations,
            stops=self.stops,
            readings=self.readings,
            freely=FREELY.get(self.side) or FREELY.get(self.kind, BY_TRIAL),
        )

    def _blocks(self) -> Blocks:
        yield from blocks(self.rows(), "inch")


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
    assumed : tuple of Assumed
        What the note leaves open, and what was taken for it by which house rule.
    questions : tuple of str
        What to ask before cutting.
    cautions : tuple of str
        Names of the cautions that belong to these operations.
    rules : tuple of Rule
        Every house rule that a size, a speed or a check rests on, as in force.
    thickness : float or None
        Of the part at the hole, where it was given [mm].
    """

    callout: Callout
    material: str
    machine: str
    seats: tuple[SeatPlan, ...]
    setups: tuple[Setup, ...] = ()
    assumed: tuple[Assumed, ...] = ()
    questions: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    rules: tuple[Rule, ...] = ()
    thickness: float | None = None

    card = door("seatwork.cards:job_card")
    inspect = door("seatwork.inspection:inspect_parts")

    def _line(self) -> str:
        what = f"{self.callout.text or 'note'}, {self.material}, {self.machine}"
        checks = [check for seat in self.seats for check in seat.checks]
        unasked = sum(check.verdict == "stop" and not check.question for check in checks)
        return f"{short(what, 70)}: {_outcome(checks, len(self.questions) + unasked)}"

    @property
    def must_ask(self) -> bool:
        """Whether something must be settled before the first cut."""
        return any(check.verdict == "stop" for seat in self.seats for check in seat.checks)

    def sources(self) -> tuple[str, ...]:
        """Return every document and house rule a size or speed rests on, each once."""
        return tuple(row.text for row in self.rows().of("source"))

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

    @property
    def assumptions(self) -> tuple[str, ...]:
        """What was assumed, in sentences."""
        return tuple(one.sentence for one in self.assumed)

    def rows(self, system: str = "") -> Rows:
        """Return everything the plan says, each line with its kind, in the order to read it.

        Parameters
        ----------
        system : {"inch", "metric"}, optional
            Which unit system stands first; the print's if not given.

        Returns
        -------
        Rows
            What must be asked, what to set, what to look at, how to hold the part, what was
            assumed, cautions; then the sums behind it, and the sources. `Rows.of` picks kinds.
        """
        first = system or self.callout.system
        every = [
            *self._asked(),
            *self.set_rows(first),
            *self._oils(),
            *(row for seat in self.seats for row in seat.placed_rows(first)),
            *self.setup_rows(),
            *self._open(),
            *self._based_on(),
            *self._cautions(),
        ]
        return Rows(sorted(every, key=lambda row: KINDS.index(row.kind)))

    def set_rows(self, system: str = "") -> Rows:
        """Return what to set, a line for each step, numbered through all seats."""
        works = [seat.work for seat in self.seats]
        return Rows(set_rows(works, system or self.callout.system))

    def _oils(self) -> Iterator[Row]:
        """Yield what to cut with, once for all steps."""
        oils = dict.fromkeys((one.oil, one.oil_note) for one in self._operations() if one.oil)
        for oil, note in oils:
            text = f"{oil}: {note}" if note else oil
            yield Row(label="oil", text=text, kind="oil")

    def _asked(self) -> Iterator[Row]:
        """Yield what the note itself makes one ask; the rest stands with its check."""
        of_checks = {check.question for seat in self.seats for check in seat.checks}
        for one in self.questions:
            if one not in of_checks:
                yield Row(label="Ask before cutting", text=one, kind="ask")

    def _open(self) -> Iterator[Row]:
        yield from bases.assumed_rows(self.assumed, self.rules)
        for one in self.from_memory():
            yield Row(label=MEMORY, text=one, kind="memory")
        for one in self.callout.said_not_used:
            yield Row(label="Said, not used", text=one, kind="unused")

    def _based_on(self) -> Iterator[Row]:
        sizes = [given for seat in self.seats for given in seat.sizes]
        yield from bases.source_rows(sizes, self._operations())
        yield from (rows.rule_row(rule) for rule in self.rules)

    def _cautions(self) -> Iterator[Row]:
        for box in cautions(*self.cautions):
            yield Row(label=box.title, text=box.in_short, source=box.source, kind="caution")
        yield Row(label="Last", text=closing(), kind="last")

    def _blocks(self) -> Blocks:
        yield from blocks(self.rows(), self.callout.system)

    def _operations(self) -> list[Operation]:
        return [step for seat in self.seats for step in seat.operations]


def _outcome(checks: Sequence[Check], asks: int) -> str:
    """Count the checks of a plan in words, behind how much must be asked first."""
    look, holds = (sum(one.verdict == word for one in checks) for word in ("look", "holds"))
    return f"{asks} to ask first, {look} to look at, {holds} hold"
