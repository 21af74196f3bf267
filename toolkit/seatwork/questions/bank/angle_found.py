"""Angle of a cone from its diameters and its depth."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_ANGLE, LENGTH, RATIO
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, across_steps
from seatwork.seats import Countersink
from seatwork.seats.cones import included_angle


@dataclass(frozen=True, slots=True, kw_only=True)
class AngleFound(NumberQuestion):
    """Asks for the included angle of a seat that was measured."""

    id = "angle-found"
    goal = "Find out which cutter left a seat."
    difficulty = 3
    codes = ("S3", "G1")
    measure = ANGLE
    accepted = Tolerance("0.5", "0.5", "Sizes to .001 in tell an angle to half a degree.")
    sizes: ClassVar = {"diameter": LENGTH, "hole_diameter": LENGTH, "depth": LENGTH}
    asked = (
        "A seat is measured: {diameter} at the face, {hole_diameter} hole, {depth} deep from "
        "the face to the edge of the hole. Which included angle does it have?"
    )
    hints = (
        "One side of the cone is a triangle. Which two of its sides were measured?",
        "That triangle holds half of the angle.",
    )

    diameter: float
    hole_diameter: float
    depth: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head's seat cut with 60°, 82°, 100° or 120°."""
        head, angle = flat_head(rng), pick(rng, (60.0, 82.0, 100.0, 120.0))
        diameter = head.sharp_diameter + step_between(rng, 0, 0.020, 0.001) * INCH
        seat = Countersink(
            diameter=diameter, hole_diameter=head.hole_diameter, included_angle=angle
        )
        return cls(diameter=diameter, hole_diameter=head.hole_diameter, depth=seat.depth)

    def angle(self, depth: float) -> float:
        """Return the included angle of a seat of that depth [deg]."""
        return included_angle(diameter=self.diameter, hole_diameter=self.hole_diameter, depth=depth)

    def value(self) -> float:
        """Return the included angle [deg]."""
        return self.angle(self.depth)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        right = self.value()
        yield slip(
            "M01",
            right / 2,
            "You gave half the angle. The included angle is across the whole cone.",
        )
        yield slip(
            "M02",
            self.angle(self.depth / 2),
            "You used the whole difference. Then you doubled once more.",
        )
        yield slip(
            "M02",
            self.angle(self.depth / 2) / 2,
            "You used the whole difference of the diameters. One side has half of it.",
        )
        yield slip("M09", 180 - right)
        yield slip("M03", self.angle(self.depth * (1 - self.hole_diameter / self.diameter)))

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        difference = self.diameter - self.hole_diameter
        yield from across_steps("{diameter}", "{hole_diameter}", difference)
        yield WorkedStep(
            "the tangent of half the angle",
            "{1} ÷ {depth}",
            difference / 2 / self.depth,
            RATIO,
            "divide across by the depth: that is the tangent of half the angle",
        )
        half = self.value() / 2
        yield WorkedStep("half the angle", "angle with the tangent {2}", half, FINE_ANGLE)
        yield WorkedStep("the included angle", "2 × {3}", 2 * half, ANGLE, "double half the angle")
