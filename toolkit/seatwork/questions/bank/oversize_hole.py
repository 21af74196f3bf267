"""What becomes of a seat when the hole was drilled too large."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH, lengths
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
class OversizeHole(NumberQuestion):
    """Asks for the seat that the same touch-off and travel give on a larger hole."""

    id = "oversize-hole"
    goal = "Know which touch-off forgives an oversize hole."
    difficulty = 3
    codes = ("S5",)
    measure = LENGTH
    accepted = Tolerance("0.001", "0.025", "Diameters are stated to .001 in.")
    sizes: ClassVar = lengths("diameter", "hole_diameter", "drilled") | {"included_angle": ANGLE}
    asked = (
        "The stop was set so that a cutter of {included_angle}, touched off with its lips on "
        "the edge of a hole of {hole_diameter}, gives a seat of {diameter}. The next hole "
        "came out {drilled}. The operator touches off on its edge and travels as far as "
        "before. What does that seat measure at the face?"
    )
    hints = (
        "Where is the cutter when its lips touch the larger hole?",
        "From there it goes down by the same travel.",
        "By how much does that travel widen the cone?",
    )

    diameter: float
    hole_diameter: float
    drilled: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head's seat and a hole .005 to .020 in too large."""
        head = flat_head(rng)
        return cls(
            diameter=head.sharp_diameter,
            hole_diameter=head.hole_diameter,
            drilled=head.hole_diameter + step_between(rng, 0.005, 0.020, 0.001) * INCH,
            included_angle=pick(rng, (82.0, 82.0, 100.0)),
        )

    def value(self) -> float:
        """Return the diameter of the new seat [mm]."""
        return self.diameter + self.drilled - self.hole_diameter

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        grown, slope = self.drilled - self.hole_diameter, half_tangent(self.included_angle)
        yield slip(
            "M12",
            self.diameter,
            "You left the seat as it was. That holds when the face is touched off, not the edge.",
        )
        yield slip("M15", self.diameter - grown, TOOK_OFF)
        yield slip(
            "M13",
            self.diameter + 2 * grown,
            "You counted the growth on each side. It is a growth in diameter.",
        )
        yield width_for_depth(self.diameter + 2 * slope * grown, self.included_angle)

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "The lips touch earlier, and the same travel widens the cone by as much as before. So "
            "the seat grows as the hole did."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        grown = self.drilled - self.hole_diameter
        yield WorkedStep("how much wider the hole is", "{drilled} − {hole_diameter}", grown, LENGTH)
        how = "add it to the seat"
        yield WorkedStep("the new seat", "{diameter} + {0}", self.value(), LENGTH, how)

    def remark(self) -> str:
        """Return what else they show."""
        return "Touched off on the face, it would have stayed as it was."
