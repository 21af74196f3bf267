"""Depth of a countersink from its two diameters and its angle."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import WRONG_STANDARD, flat_head
from seatwork.questions.shared.seat_question import SeatQuestion, height_slips
from seatwork.questions.shared.wrong_trig import half_sine, over, radian_tangent
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, cone_steps
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatDepth(SeatQuestion):
    """Asks how deep a cone is, from the face to the edge of the hole."""

    id = "seat-depth"
    goal = "Set a depth stop for a countersink from the diameters on the print."
    difficulty = 2
    codes = ("S4",)
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")
    sizes: ClassVar = {"diameter": LENGTH, "hole_diameter": LENGTH, "included_angle": ANGLE}
    asked = (
        "A hole of {hole_diameter} is countersunk to {diameter} at the face, {included_angle} "
        "included angle. How deep is the cone, from the face down to the edge of the hole?"
    )
    hints = (
        "Draw one side of the cone: a triangle from the face down to the edge of the hole.",
        "Along the face that triangle is half as wide as the two diameters differ.",
        "The angle at its bottom is half the included angle. Its tangent ties across to down.",
    )

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head's seat, up to .012 in larger than the head."""
        head = flat_head(rng)
        return cls(
            diameter=head.sharp_diameter + step_between(rng, 0, 0.012, 0.001) * INCH,
            hole_diameter=head.hole_diameter,
            included_angle=pick(rng, (82.0, 82.0, 100.0)),
        )

    def value(self) -> float:
        """Return the depth [mm]."""
        return self.seat().depth

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        angle, half_width = self.included_angle, (self.diameter - self.hole_diameter) / 2
        yield from height_slips(half_width, angle)
        yield slip("M03", self.seat().apex_depth)
        yield slip("M09", half_width * half_tangent(angle), twin_of="M04")
        yield slip("M08", half_width / half_sine(angle))
        yield slip("M05", half_width / half_sine(angle), twin_of="M08")
        yield slip("M06", over(half_width, radian_tangent(angle)))
        yield slip("M07", half_width / half_tangent(WRONG_STANDARD[angle]))

    def working(self) -> Iterable[WorkedStep]:
        """Yield the five steps of the triangle."""
        return cone_steps(self, "diameter", "hole_diameter")
