"""What is done in each setup of a plan: its steps, the seats cut in it, and their readings."""

from collections.abc import Iterator
from dataclasses import dataclass

from seatwork.plan import Operation, Plan, Reading, SeatPlan
from seatwork.plan.records import Setup
from seatwork.plan.setups import before_turning
from seatwork.rows import Row

TRAVELS = 2
"""Lines of a seat's stop on the card: the travel, and what a stop error does."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Card:
    """One setup of a plan.

    Parameters
    ----------
    number, count : int
        Which setup, from 1, of how many.
    setup : Setup
        How the part is held, which face is up, where zero is.
    steps : tuple of (SeatPlan, Operation, Row)
        What is done in it, each with its line of what to set.
    cut : tuple of SeatPlan
        The seats that are cut to size in it.
    """

    number: int
    count: int
    setup: Setup
    steps: tuple[tuple[SeatPlan, Operation, Row], ...]
    cut: tuple[SeatPlan, ...]

    @property
    def touched(self) -> tuple[SeatPlan, ...]:
        """Seats that something is done to in it."""
        found: list[SeatPlan] = []
        for seat, _, _ in self.steps:
            if seat not in found:
                found.append(seat)
        return tuple(found)

    @property
    def spots(self) -> tuple[int, ...]:
        """The holes it is about."""
        return tuple(dict.fromkeys(seat.spot for seat in self.touched))

    def readings(self, system: str) -> Iterator[tuple[SeatPlan, Row]]:
        """Yield what is gaged in it: of each seat the readings of what is done here."""
        for seat in self.touched:
            rows = seat.reading_rows(system)
            for reading, row in zip(seat.readings, rows, strict=True):
                if self._here(seat, reading):
                    yield seat, row

    def travels(self, seat: SeatPlan, system: str) -> tuple[Row, ...]:
        """Return the lines of a seat's stop that the card says in full."""
        return tuple(seat.stop_rows(system)[:TRAVELS]) if seat in self.cut else ()

    def _here(self, seat: SeatPlan, reading: Reading) -> bool:
        own = [step.name for one, step, _ in self.steps if one is seat]
        other = [step.name for step in seat.operations if step.name not in own]
        if reading.operation in own:
            return True
        return seat in self.cut and reading.operation not in other


def cards_of(plan: Plan) -> tuple[Card, ...]:
    """Return what is done in each setup of a plan.

    Parameters
    ----------
    plan : Plan
        The plan.
    """
    lines = iter(plan.set_rows())
    parts: list[list[tuple[SeatPlan, Operation, Row]]] = [[], []]
    for seat in plan.seats:
        before = before_turning(seat)
        for number, step in enumerate(seat.operations):
            parts[number >= before].append((seat, step, next(lines)))
    filled = [part for part in parts if part]
    return tuple(
        Card(
            number=number,
            count=len(filled),
            setup=setup,
            steps=tuple(part),
            cut=tuple(seat for seat in plan.seats if _is_cut(seat, part)),
        )
        for number, (setup, part) in enumerate(zip(plan.setups, filled, strict=True), 1)
    )


def _is_cut(seat: SeatPlan, part: list[tuple[SeatPlan, Operation, Row]]) -> bool:
    """Tell whether the step that cuts a seat to size is in a part of the work."""
    turning = [step for step in seat.operations if step.feed is not None]
    last = (turning or list(seat.operations))[-1:]
    return any(one is seat and step in last for one, step, _ in part)
