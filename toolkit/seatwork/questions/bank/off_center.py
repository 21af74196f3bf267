"""A seat beside the axis of its hole."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, angle_steps
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class OffCenter(NumberQuestion):
    """Asks how far a head that is held central stands proud in an off-center seat."""

    id = "off-center"
    goal = "See that a seat beside its hole lifts a head held central."
    difficulty = 3
    codes = ("S6", "W2")
    unmarked = "where it lies would give it away"
    measure = FINE_LENGTH
    accepted = Tolerance("0.0002", "0.005", "Small differences are worked to .0001 in.")
    sizes: ClassVar = {"offset": LENGTH, "included_angle": ANGLE}
    asked = (
        "A seat of {included_angle} was cut {offset} beside the axis of its hole. The flat "
        "head screw, same angle and the diameter of the seat, is held on the axis of the hole "
        "by the tapped part below. How far does its head stand proud?"
    )
    hints = (
        "Seen in section, the seat is shifted sideways under the head. Which side touches?",
        "On that side the head must rise until its slope clears the shifted one.",
    )

    offset: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw an offset of .005 to .020 in."""
        return cls(
            offset=step_between(rng, 0.006, 0.020, 0.001) * INCH,
            included_angle=pick(rng, (60.0, 82.0, 100.0, 120.0)),
        )

    def value(self) -> float:
        """Return how far the head stands proud [mm]."""
        return self.offset / half_tangent(self.included_angle)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        slope = half_tangent(self.included_angle)
        yield slip(
            "M17",
            0.0,
            "You let the head shift into its seat. The tapped part below holds the screw where "
            "it is.",
        )
        yield slip(
            "M14", self.offset, "You gave the offset itself. The slope turns it into height."
        )
        yield slip("M04", self.offset * slope)
        yield slip("M02", 2 * self.offset / slope)
        yield slip(
            "M13", self.offset / 2 / slope, "You took half of the offset. One side has all of it."
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "One side of the seat stands closer by the whole offset. To clear it the head must "
            "rise along the slope."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        yield from angle_steps(self.included_angle, first=0)
        label, how = "how far the head stands proud", "divide the offset by the tangent"
        yield WorkedStep(label, "{offset} ÷ {1}", self.value(), FINE_LENGTH, how)
