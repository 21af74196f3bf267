"""The greatest seat in which the least head is not too far below."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.seat_question import width_for_depth
from seatwork.questions.type.draws import step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slip_sentences import TOOK_OFF
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, angle_steps
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class LeastHead(NumberQuestion):
    """Asks for the greatest seat that the least head of a box allows."""

    id = "least-head"
    goal = "Let the least head of a box rule how large a seat may be."
    difficulty = 3
    codes = ("S6",)
    measure = LENGTH
    accepted = Tolerance(
        "0.001", "0.025", "Diameters and the amount allowed are stated to .001 in."
    )
    sizes: ClassVar = lengths("least_sharp", "greatest_sharp", "below") | {"included_angle": ANGLE}
    asked = (
        "The heads in a box of {size} flat head screws measure {least_sharp} to {greatest_sharp} "
        "across their theoretical sharp diameter. No head may lie more than {below} below the "
        "face. Head and seat have {included_angle}. How large may the seat be at the face, at most?"
    )
    hints = (
        "Which head of the box goes down furthest in one and the same seat?",
        "That head may lie below by the amount allowed, no more.",
        "How much wider than that head is a seat in which it lies that far down?",
    )

    size: str
    least_sharp: float
    greatest_sharp: float
    below: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a box whose heads spread .012 to .026 in, and .012 to .020 in allowed."""
        head = flat_head(rng)
        spread = step_between(rng, 0.012, 0.026, 0.001) * INCH
        return cls(
            size=head.size,
            least_sharp=head.sharp_diameter - spread,
            greatest_sharp=head.sharp_diameter,
            below=step_between(rng, 0.012, 0.020, 0.001) * INCH,
            included_angle=82.0,
        )

    def value(self) -> float:
        """Return the greatest diameter of the seat [mm]."""
        return self.least_sharp + 2 * half_tangent(self.included_angle) * self.below

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        slope = half_tangent(self.included_angle)
        yield width_for_depth(self.least_sharp + self.below, self.included_angle)
        yield slip(
            "M14",
            self.least_sharp + 2 * self.below,
            "You doubled the amount. You left the angle out.",
        )
        yield slip("M15", self.least_sharp - 2 * slope * self.below, TOOK_OFF)
        yield slip(
            "M49",
            self.greatest_sharp + 2 * slope * self.below,
            "You took the greatest head. Look which one goes down furthest.",
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return "The least head goes down furthest."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        grown = 2 * half_tangent(self.included_angle) * self.below
        yield from angle_steps(self.included_angle, first=0)
        how = "double the tangent and multiply by the amount below"
        yield WorkedStep("how much wider it is", "2 × {1} × {below}", grown, FINE_LENGTH, how)
        how = "add it to the least head"
        yield WorkedStep("the widest seat", "{least_sharp} + {2}", self.value(), LENGTH, how)
