"""What to set at the machine: a line for each step, in the columns of one table."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from seatwork.plan.records import Operation, Reading, Stop
from seatwork.quantities import INCH
from seatwork.rows import Row
from seatwork.units import show_note, show_number

CAGE = "stop cage"
CLOSE = 0.0508  # mm; limits nearer than .002 in are written with a place more
FINER = {"inch": 4, "metric": 3}
HOLE = ("lead drill", "drill", "ream")
GET, TOO_FAST, NOT_LISTED = "none in the crib", "STOP", "not listed"
IN_THE_TABLE = 2
"""Readings of a step in the table; the others are lines of their own."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Work:
    """What one seat brings to the table.

    Parameters
    ----------
    place : str
        The seat in words, with its count.
    operations : tuple of Operation
        In the order to do them.
    stops : tuple of Stop
        The one to use first.
    readings : tuple of Reading
        What gages should say.
    freely : str
        How far the cut goes, in few words, where no stop decides.
    """

    place: str
    operations: tuple[Operation, ...]
    stops: tuple[Stop, ...]
    readings: tuple[Reading, ...]
    freely: str = ""


def set_rows(works: Sequence[Work], system: str) -> Iterator[Row]:
    """Yield a line for each step of a plan, numbered through.

    Parameters
    ----------
    works : sequence of Work
        Seat by seat.
    system : {"inch", "metric"}
        System of the print; the table has no other.
    """
    number = 0
    waiting: list[Reading] = []
    for work in works:
        own = _own(work.operations)
        names = {step.name for step in work.operations}
        found = [*waiting, *work.readings]
        for step in work.operations:
            number += 1
            names_of = ("", step.name) if step is own else (step.name,)
            stop = next((one for one in work.stops if one.operation in names_of), None)
            checks = tuple(one for one in found if one.operation in names_of)
            freely = step is own and not (stop or step.deep)
            done = replace(step, deep=work.freely) if freely else step
            yield _row(number, done, stop, checks, work.place, system)
        waiting = [one for one in found if one.operation and one.operation not in names]


def in_table(reading: Reading, readings: Sequence[Reading]) -> bool:
    """Tell whether a reading of a seat stands in the table."""
    beside = [one for one in readings if one.operation == reading.operation]
    return reading in beside[:IN_THE_TABLE]


def _own(operations: Sequence[Operation]) -> Operation | None:
    """Return the operation that cuts the seat itself; that of the hole where there is none."""
    turning = [step for step in operations if step.feed is not None]
    seats = [step for step in turning if step.name not in HOLE]
    return next(iter([*seats[::-1], *turning[::-1]]), None)


def _row(
    number: int,
    step: Operation,
    stop: Stop | None,
    checks: Sequence[Reading],
    place: str,
    system: str,
) -> Row:
    cells = {
        "tool": (step.short or step.tool) if step.in_shop else GET,
        "rev/min": _speed(step),
        "feed": _feed(step, system),
        "stop": _stop(stop, system) if stop else step.deep,
        "check": "; ".join(_check(one, system) for one in checks[:IN_THE_TABLE]),
    }
    text = "; ".join(f"{head} {words}" for head, words in cells.items() if words)
    label = f"{number} {step.name}"
    return Row(label=label, text=text, kind="set", place=place, cells=tuple(cells.items()))


def _speed(step: Operation) -> str:
    if step.spindle is not None:
        speed = step.spindle.step.spindle_speed
        return TOO_FAST if speed is None else show_number(speed, 0)
    return NOT_LISTED if step.feed is not None else ""


def _feed(step: Operation, system: str) -> str:
    if step.feed is None:
        return ""
    return show_number(step.feed, 3) if system == "metric" else _inch(step.feed)


def _inch(feed: float) -> str:
    return show_number(feed / INCH, 4, least=3).replace("0.", ".", 1)


def _stop(stop: Stop, system: str) -> str:
    if stop.device == CAGE and stop.step:
        return f"{stop.travel / stop.step:.0f} clicks, {show_note(stop.travel, system)}"
    return f"{show_note(stop.travel, system)} {stop.short or stop.touch}"


def _check(reading: Reading, system: str) -> str:
    name = reading.short or reading.instrument
    if reading.kind == "turns":
        most = "" if reading.least == reading.greatest else " at most"
        return f"{name} {show_number(reading.value, 1)} turns{most}"
    least, greatest = sorted((reading.least, reading.greatest))
    places = FINER[system] if 0 < greatest - least < CLOSE else None
    low, high = (show_note(end, system, places) for end in (least, greatest))
    return f"{name} {low}" if low == high else f"{name} {low} to {high}"
