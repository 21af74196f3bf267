"""The greatest depth that the limits of both diameters allow."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.draws import step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, cone_steps
from seatwork.seats import Countersink


@dataclass(frozen=True, slots=True, kw_only=True)
class DepthLimits(NumberQuestion):
    """Asks for the greatest depth of a seat whose two diameters have limits."""

    id = "depth-limits"
    goal = "Pair the limits of hole and seat so that the worst case comes out."
    difficulty = 3
    codes = ("N2", "S5")
    measure = LENGTH
    accepted = Tolerance("0.001", "0.025", "The limits themselves are stated to .001 in.")
    sizes: ClassVar = {
        "least_diameter": LENGTH,
        "greatest_diameter": LENGTH,
        "least_hole": LENGTH,
        "greatest_hole": LENGTH,
        "included_angle": ANGLE,
    }
    asked = (
        "A seat has {included_angle} included angle. It may measure {least_diameter} to "
        "{greatest_diameter} at the face. Its hole may measure {least_hole} to "
        "{greatest_hole}. What is the greatest depth, from the face to the edge of the hole, a "
        "good seat can have?"
    )
    hints = (
        "The depth depends on how far the two diameters differ.",
        "When do they differ most? Take one limit of each.",
        "With these two diameters it is an ordinary cone.",
    )

    least_diameter: float
    greatest_diameter: float
    least_hole: float
    greatest_hole: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw limits of .014 to .030 in on the seat and .010 to .020 in on the hole."""
        head = flat_head(rng)
        return cls(
            least_diameter=head.sharp_diameter,
            greatest_diameter=head.sharp_diameter + step_between(rng, 0.014, 0.030, 0.001) * INCH,
            least_hole=head.hole_diameter,
            greatest_hole=head.hole_diameter + step_between(rng, 0.010, 0.020, 0.001) * INCH,
            included_angle=82.0,
        )

    def depth(self, diameter: float, hole_diameter: float) -> float:
        """Return the depth of a seat with these diameters [mm]."""
        return Countersink(
            diameter=diameter, hole_diameter=hole_diameter, included_angle=self.included_angle
        ).depth

    def value(self) -> float:
        """Return the greatest depth [mm]."""
        return self.depth(self.greatest_diameter, self.least_hole)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        middle = (self.least_diameter + self.greatest_diameter) / 2
        middle_hole = (self.least_hole + self.greatest_hole) / 2
        yield slip("M39", self.depth(self.greatest_diameter, self.greatest_hole))
        yield slip("M49", self.depth(middle, middle_hole))
        yield slip(
            "M49",
            self.depth(self.least_diameter, self.greatest_hole),
            "You found the least depth. You were asked for the greatest.",
        )
        yield slip("M02", 2 * self.value())

    def because(self) -> str:
        """Return why these are the steps."""
        return "The cone is deepest when the seat is widest and the hole narrowest."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        return cone_steps(self, "greatest_diameter", "least_hole", "the greatest depth")
