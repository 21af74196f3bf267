"""Diameter of a seat from a gage pin and a depth micrometer."""

from collections.abc import Iterable, Iterator
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

PINS = (0.250, 0.312, 0.375, 0.437, 0.500)


@dataclass(frozen=True, slots=True, kw_only=True)
class PinDepth(NumberQuestion):
    """Asks how wide a seat is at the face in which a square pin stops so far down."""

    id = "pin-depth"
    goal = "Gage a seat with a pin and a depth micrometer."
    difficulty = 3
    codes = ("G1", "S4")
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "A depth micrometer on a pin holds about .001 in.")
    sizes: ClassVar = {"pin": LENGTH, "below": LENGTH, "included_angle": ANGLE}
    asked = (
        "A gage pin of {pin} has a square, sharp end. It stops in a seat of {included_angle} with "
        "its end {below} below the face. How wide is the seat at the face?"
    )
    hints = (
        "The pin stops where the cone is as wide as the pin.",
        "From the edge of the pin up to the face the cone goes on opening, on both sides.",
        "You know down and half the angle. Which side of the triangle is asked for?",
    )

    pin: float
    below: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a pin, how far down it stops, and an angle."""
        return cls(
            pin=pick(rng, PINS) * INCH,
            below=step_between(rng, 0.050, 0.110, 0.001) * INCH,
            included_angle=pick(rng, (82.0, 82.0, 100.0)),
        )

    @property
    def across(self) -> float:
        """What one side of the cone opens from the pin's end to the face [mm]."""
        return self.below * half_tangent(self.included_angle)

    def value(self) -> float:
        """Return the diameter at the face [mm]."""
        return self.pin + 2 * self.across

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip(
            "M14",
            self.pin + self.below,
            "You added the depth to the pin. The cone opens on both sides, each by its slope.",
        )
        yield slip(
            "M13",
            self.pin + self.across,
            "You added one side only. The cone opens on both sides of the pin.",
        )
        yield slip(
            "M45",
            2 * self.across,
            "You left the pin out. You found how much wider the seat is than the pin.",
        )
        yield slip(
            "M15",
            self.pin - 2 * self.across,
            "You took off where you add. The seat is wider at the face than at the pin.",
        )
        yield slip(
            "M07",
            self.pin + 2 * self.below,
            "You added twice the depth. You may do so at 90° only.",
        )

    def working(self) -> Iterator[WorkedStep]:
        """Yield the steps: the angle, one side, both sides, and the pin."""
        yield from angle_steps(self.included_angle, first=0)
        yield WorkedStep(
            "across, on one side", "{below} × {1}", self.across, FINE_LENGTH, "multiply by down"
        )
        yield WorkedStep(
            "both sides together", "2 × {2}", 2 * self.across, FINE_LENGTH, "take both sides", "M45"
        )
        yield WorkedStep("the diameter at the face", "{pin} + {3}", self.value(), LENGTH)
