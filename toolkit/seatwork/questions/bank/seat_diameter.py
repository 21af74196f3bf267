"""Diameter of a countersink at the face from its depth."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import WRONG_STANDARD, flat_head
from seatwork.questions.shared.seat_question import width_for_depth
from seatwork.questions.shared.wrong_trig import times, whole_tangent
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, angle_steps
from seatwork.seats import Countersink
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatDiameter(NumberQuestion):
    """Asks how wide a seat is at the face when its cone is that deep."""

    id = "seat-diameter"
    goal = "Foresee the diameter that a depth setting will cut."
    difficulty = 2
    codes = ("S4", "S5")
    measure = LENGTH
    accepted = Tolerance("0.003", "0.08", "A caliper across a seat's edge holds about .003 in.")
    sizes: ClassVar = {"depth": LENGTH, "hole_diameter": LENGTH, "included_angle": ANGLE}
    asked = (
        "A hole of {hole_diameter} is countersunk with a cutter of {included_angle} included "
        "angle. The cone is {depth} deep, from the face down to the edge of the hole. What is its "
        "diameter at the face?"
    )
    hints = (
        "Draw both sides of the cone. Where does the hole end and the cone begin?",
        "Each side adds the same width as the cone comes up to the face.",
        "One side is a triangle with half the included angle at its bottom.",
    )

    depth: float
    hole_diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a hole for a flat head and a depth near that of its seat."""
        head, angle = flat_head(rng), pick(rng, (82.0, 82.0, 100.0))
        seat = head.seat(angle)
        return cls(
            depth=seat.depth + step_between(rng, 0, 0.012, 0.001) * INCH,
            hole_diameter=head.hole_diameter,
            included_angle=angle,
        )

    def seat(self) -> Countersink:
        """Return the seat asked about."""
        return Countersink.from_depth(
            depth=self.depth, hole_diameter=self.hole_diameter, included_angle=self.included_angle
        )

    def value(self) -> float:
        """Return the diameter at the face [mm]."""
        return self.seat().diameter

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        slope, hole, depth = half_tangent(self.included_angle), self.hole_diameter, self.depth
        whole = times(2 * depth, whole_tangent(self.included_angle))
        other = half_tangent(WRONG_STANDARD[self.included_angle])
        yield slip("M01", hole + whole if whole else None)
        yield slip(
            "M02", hole + depth * slope, "You counted one side only. The cone widens on both sides."
        )
        yield slip("M03", 2 * depth * slope, "You left the hole out. The cone starts at its edge.")
        yield slip("M04", hole + 2 * depth / slope)
        yield width_for_depth(hole + depth, self.included_angle)
        yield slip("M07", hole + 2 * depth * other)

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        side = self.depth * half_tangent(self.included_angle)
        yield from angle_steps(self.included_angle, first=0)
        how = "multiply the depth by the tangent"
        yield WorkedStep("what one side gains", "{depth} × {1}", side, FINE_LENGTH, how)
        how = "double it: there are two sides"
        yield WorkedStep("what both sides gain", "2 × {2}", 2 * side, FINE_LENGTH, how)
        how = "add the hole"
        yield WorkedStep(
            "the diameter at the face", "{hole_diameter} + {3}", self.value(), LENGTH, how
        )
