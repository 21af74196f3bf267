"""Which house rules a plan rests on, found where it names them."""

from collections.abc import Iterator

from seatwork.plan.loads import OVERLOAD
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Assumed, Given, Operation
from seatwork.shop import HouseRules, Rule

SPEED = ("speeds.range_end", "speeds.step")
CONSTANT = "speeds.constant"


def rules_of(
    seats: tuple[SeatPlan, ...], assumed: tuple[Assumed, ...], rules: HouseRules
) -> tuple[Rule, ...]:
    """Return the house rules that sizes, speeds, checks and assumptions name, in book order.

    Parameters
    ----------
    seats : tuple of SeatPlan
        The seats as planned.
    assumed : tuple of Assumed
        What the note left open, each with its rule.
    rules : HouseRules
        The rules in force.
    """
    sentence = " ".join(
        [*(one.rule for one in assumed), *(text for seat in seats for text in _texts(seat))]
    )
    speeds = any(step.spindle for seat in seats for step in seat.operations)
    words = {word.rstrip(".,;:)") for word in sentence.replace("(", " ").split() if "." in word}
    if speeds:
        words |= set(SPEED) | ({CONSTANT} if rules.word(CONSTANT) != "exact" else set())
    return tuple(rule for name, rule in rules.items() if name in words)


def _texts(seat: SeatPlan) -> Iterator[str]:
    yield from (_of_size(given) for given in seat.sizes)
    yield from (text for step in seat.operations for text in _of_step(step))
    yield from (reading.source for reading in seat.readings)
    yield from (check.sentence for check in seat.checks)
    yield from (check.question for check in seat.checks)
    yield from seat.advice


def _of_size(given: Given) -> str:
    return given.source


def _of_step(step: Operation) -> Iterator[str]:
    yield step.feed_source
    if step.spindle:
        yield step.spindle.rule
        yield step.spindle.step.limited_by or ""
        yield "speeds.step_over" if step.spindle.step.over else ""
    if step.load and step.load.over_plate:
        yield OVERLOAD
