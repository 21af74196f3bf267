"""Height of a gage ball above the face of a seat."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH, RATIO, lengths
from seatwork.questions.shared.real_sizes import balls, flat_head
from seatwork.questions.shared.seat_question import SeatQuestion
from seatwork.questions.shared.wrong_trig import half_sine
from seatwork.questions.type.draws import pick
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.seats.gaging import ball_top


@dataclass(frozen=True, slots=True, kw_only=True)
class GageBall(SeatQuestion):
    """Asks how high a ball stands above the face when it lies in the seat."""

    id = "gage-ball"
    goal = "Gage a seat with a ball and a depth micrometer."
    difficulty = 3
    codes = ("G1",)
    measure = LENGTH
    accepted = Tolerance("0.001", "0.025", "A depth micrometer over a ball holds about .001 in.")
    sizes: ClassVar = lengths("diameter", "hole_diameter", "ball") | {"included_angle": ANGLE}
    asked = (
        "A seat measures {diameter} at the face on a hole of {hole_diameter}, {included_angle} "
        "included angle. A gage ball of {ball} diameter is laid in. How high does the top of the "
        "ball stand above the face?"
    )
    hints = (
        "Draw the cone down to its point, and the ball touching both sides.",
        "From the ball's center a line to the point of touch is square to the side of the cone.",
        "Point to center, center to top of ball, and the point lies below the face.",
    )

    ball: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head's seat and a ball that touches its cone."""
        head, angle = flat_head(rng), pick(rng, (82.0, 82.0, 100.0))
        seat = head.seat(angle)
        return cls(
            diameter=seat.diameter,
            hole_diameter=seat.hole_diameter,
            included_angle=angle,
            ball=pick(rng, balls(seat, 0.02, 30)),
        )

    def value(self) -> float:
        """Return the height of the top of the ball [mm]."""
        return ball_top(self.ball, self.seat())

    def is_clear(self) -> bool:
        """Whether the ball stands above the face and the slips stand apart."""
        return self.value() > 1 and NumberQuestion.is_clear(self)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        seat, radius = self.seat(), self.ball / 2
        sine, point = half_sine(self.included_angle), seat.apex_depth
        yield slip(
            "M45",
            self.value() - radius,
            "You found the center of the ball. You were asked for its top.",
        )
        yield slip(
            "M05",
            radius / seat.tangent + radius - point,
            "You used the tangent. The line to the point of touch is square to the side: that "
            "is the sine.",
        )
        yield slip("M13", self.ball / sine + self.ball - point)
        yield slip(
            "M01",
            radius / half_sine(2 * self.included_angle) + radius - point,
            "You used the sine of the whole angle. Half of it belongs here.",
        )
        yield slip(
            "M45",
            radius / sine + radius,
            "You measured from the point of the cone. You were asked for the height above the "
            "face.",
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        radius, point = self.ball / 2, self.seat().apex_depth
        sine = half_sine(self.included_angle)
        center = radius / sine
        yield WorkedStep("the radius of the ball", "{ball} ÷ 2", radius, FINE_LENGTH)
        yield WorkedStep("half the angle", "{included_angle} ÷ 2", self.included_angle / 2, ANGLE)
        yield WorkedStep("the sine of half the angle", "sine of {1}", sine, RATIO)
        label, how = "the center of the ball above the point", "divide the radius by the sine"
        yield WorkedStep(label, "{0} ÷ {2}", center, FINE_LENGTH, how)
        label, how = "the top of the ball above the point", "add the radius"
        yield WorkedStep(label, "{3} + {0}", center + radius, FINE_LENGTH, how)
        sum_ = "{diameter} ÷ 2 ÷ tangent of {1}"
        yield WorkedStep("the point below the face", sum_, point, FINE_LENGTH)
        label, how = "the top of the ball above the face", "take off the depth of the point"
        yield WorkedStep(label, "{4} − {5}", self.value(), LENGTH, how)
