"""Diameter of a countersink at the face from its depth."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.questions import wrong_trig
from seatwork.questions.draws import pick, step_between
from seatwork.questions.measures import ANGLE, LENGTH
from seatwork.questions.question import NumberQuestion, Tolerance
from seatwork.questions.real_sizes import WRONG_STANDARD, flat_head
from seatwork.questions.slips import Mistake
from seatwork.seats import Countersink
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatDiameter(NumberQuestion):
    """Asks how wide a seat is at the face when its cone is that deep."""

    id = "seat-diameter"
    goal = "Foresee the diameter that a depth setting will cut."
    difficulty = 2
    measure = LENGTH
    accepted = Tolerance(
        inch="0.003", metric="0.08", reason="A caliper across a seat's edge holds about .003 in."
    )
    sizes: ClassVar = {"depth": LENGTH, "hole_diameter": LENGTH, "included_angle": ANGLE}
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
        seat = Countersink(
            diameter=head.sharp_diameter, hole_diameter=head.hole_diameter, included_angle=angle
        )
        depth = seat.depth + 25.4 * step_between(rng, 0, 0.012, 0.001)
        return cls(depth=depth, hole_diameter=head.hole_diameter, included_angle=angle)

    def text(self) -> str:
        """Return what is asked."""
        return (
            f"A hole of {self.said('hole_diameter')} is countersunk with a cutter of "
            f"{self.said('included_angle')} included angle. The cone is {self.said('depth')} deep, "
            "from the face down to the edge of the hole. What is its diameter at the face?"
        )

    def seat(self) -> Countersink:
        """Return the seat asked about."""
        return Countersink.from_depth(
            depth=self.depth,
            hole_diameter=self.hole_diameter,
            included_angle=self.included_angle,
        )

    def value(self) -> float:
        """Return the diameter at the face [mm]."""
        return self.seat().diameter

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        slope, hole = half_tangent(self.included_angle), self.hole_diameter
        other = WRONG_STANDARD[self.included_angle]
        whole = wrong_trig.whole_angle_tangent(self.included_angle)
        if whole:
            yield Mistake(
                code="M01",
                value=hole + 2 * self.depth * whole,
                sentence="the whole included angle in the tangent; each side leans by half of it",
            )
        yield Mistake(
            code="M02",
            value=hole + self.depth * slope,
            sentence="the width of one side only; the cone widens on both sides of the hole",
        )
        yield Mistake(
            code="M03",
            value=2 * self.depth * slope,
            sentence="the hole left out; the cone starts at the edge of the hole, not at a point",
        )
        yield Mistake(
            code="M04",
            value=hole + 2 * self.depth / slope,
            sentence="divided by the tangent; going from depth to width it multiplies",
        )
        yield Mistake(
            code="M14",
            value=hole + self.depth,
            sentence="the depth added as if the seat widened as much as it deepens",
        )
        yield Mistake(
            code="M07",
            value=hole + 2 * self.depth * half_tangent(other),
            sentence=f"an angle of {other:g}°; this cutter is {self.said('included_angle')}",
        )

    def worked(self) -> str:
        """Return the answer worked out."""
        slope = half_tangent(self.included_angle)
        side = self.depth * slope
        return (
            f"Each side leans by half of {self.said('included_angle')}, with tangent {slope:.4f}. "
            f"Over {self.said('depth')} of depth one side gains {self.said('depth')} × "
            f"{slope:.4f} = {self.fine(side)}. Two sides and the hole: "
            f"{self.said('hole_diameter')} + 2 × {self.fine(side)} = {self.show(self.value())}."
        )
