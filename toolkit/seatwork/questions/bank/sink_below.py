"""Depth of a seat for a head that is to lie below the face."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.seat_question import width_for_depth
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slip_sentences import TOOK_OFF
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class SinkBelow(NumberQuestion):
    """Asks for the depth at which a head that is flush now lies below the face."""

    id = "sink-below"
    goal = "Set the stop deeper for a head that must lie below the face."
    difficulty = 2
    codes = ("S5", "S6")
    measure = LENGTH
    accepted = Tolerance("0.001", "0.025", "The stop is moved by steps of .001 in.")
    sizes: ClassVar = {"depth": LENGTH, "below": LENGTH, "included_angle": ANGLE}
    asked = (
        "In a seat of {included_angle} included angle, {depth} deep from the face to the edge of "
        "the hole, a flat head of the same angle lies flush. How deep must the seat be for the "
        "head to lie {below} below the face?"
    )
    hints = (
        "Head and cone keep their shape. What moves when the cutter goes deeper?",
        "The whole cone moves down, and the head with it.",
        "Does the angle matter for that?",
    )

    depth: float
    below: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flush seat and an amount of .008 to .020 in."""
        head, angle = flat_head(rng), pick(rng, (82.0, 82.0, 100.0))
        seat = head.seat(angle)
        below = step_between(rng, 0.008, 0.020, 0.001) * INCH
        return cls(depth=seat.depth, below=below, included_angle=angle)

    def value(self) -> float:
        """Return the new depth [mm]."""
        return self.depth + self.below

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        slope = half_tangent(self.included_angle)
        deeper = self.below / 2 / slope
        yield slip(
            "M14",
            self.depth + deeper,
            "You put the amount on the diameter. It belongs to the depth.",
        )
        yield width_for_depth(self.depth + 2 * self.below * slope, self.included_angle)
        yield slip("M15", self.depth - self.below, TOOK_OFF)
        yield slip(
            "M23", self.depth, "You gave the flush seat itself. The head must go further down."
        )

    def because(self) -> str:
        """Return why the two are added."""
        return (
            "Deeper by any amount, the cone is the same cone further down, and the head follows "
            "by just that amount."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the one step."""
        yield WorkedStep("the depth", "{depth} + {below}", self.value(), LENGTH)
