"""Quill travel from touching off with a flat nose on solid metal."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.seat_question import height_slips
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, cone_steps
from seatwork.seats import Countersink
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class NoseTravel(NumberQuestion):
    """Asks for the travel after the tool's nose touches a solid face."""

    id = "nose-travel"
    goal = "Set the stop from the moment the nose of the tool touches the face."
    difficulty = 2
    codes = ("S4", "S5")
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "Touching off and a stop hold about .001 in each.")
    sizes: ClassVar = {"diameter": LENGTH, "nose_diameter": LENGTH, "included_angle": ANGLE}
    asked = (
        "A countersink of {included_angle} included angle has a flat nose of {nose_diameter}. Its "
        "nose is touched off on a solid face, where no hole is drilled yet. How far must the "
        "quill travel from there for the cone to measure {diameter} at the face?"
    )
    hints = (
        "Draw the tool at the moment it touches and again at full depth.",
        "How wide is the tool where it touches, and how wide where it ends up at the face?",
        "The travel is the height between these two widths on the same cone.",
    )

    diameter: float
    nose_diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head's seat and a nose of .060 to .120 in."""
        return cls(
            diameter=flat_head(rng).sharp_diameter,
            nose_diameter=step_between(rng, 0.060, 0.120, 0.005) * INCH,
            included_angle=pick(rng, (82.0, 82.0, 100.0)),
        )

    def seat(self) -> Countersink:
        """Return the cone that is cut, down to the nose."""
        return Countersink(
            diameter=self.diameter,
            hole_diameter=self.nose_diameter,
            included_angle=self.included_angle,
        )

    def value(self) -> float:
        """Return the travel [mm]."""
        return self.seat().depth

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        slope, nose = half_tangent(self.included_angle), self.nose_diameter
        half = (self.diameter - nose) / 2
        yield slip(
            "M10", self.seat().apex_depth, "You left the nose out. The cone starts at its width."
        )
        yield slip(
            "M10",
            (self.diameter - nose / 2) / (2 * slope),
            "You took off half of the nose. All of its width comes off.",
        )
        yield slip(
            "M10", (self.diameter + nose) / (2 * slope), "You added the nose. It is taken off."
        )
        yield from height_slips(half, self.included_angle)

    def because(self) -> str:
        """Return why these are the steps."""
        return "The cone starts at the width of the nose."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        return cone_steps(self, "diameter", "nose_diameter", "the travel")
