"""What an error of the depth stop does to the diameter."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.wrong_trig import times, whole_tangent
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, angle_steps
from seatwork.seats.cones import half_tangent
from seatwork.seats.touching_off import diameter_error


@dataclass(frozen=True, slots=True, kw_only=True)
class DepthError(NumberQuestion):
    """Asks how much the diameter grows when the stop is that much too deep."""

    id = "depth-error"
    goal = "Know how an error of the stop shows in the diameter."
    difficulty = 2
    codes = ("S5",)
    measure = FINE_LENGTH
    accepted = Tolerance("0.0002", "0.005", "Small differences are worked to .0001 in.")
    sizes: ClassVar = {"error": LENGTH, "included_angle": ANGLE}
    asked = (
        "The depth stop of a countersink of {included_angle} included angle slips, and every seat "
        "comes out {error} too deep. By how much are the seats too wide at the face?"
    )
    hints = (
        "Draw the cone twice, the second one a little deeper. What happens at the face?",
        "The seat grows on both sides.",
        "On one side the growth and the extra depth form a small triangle.",
    )

    error: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw an error of .005 to .020 in."""
        return cls(
            error=step_between(rng, 0.005, 0.020, 0.001) * INCH,
            included_angle=pick(rng, (60.0, 82.0, 100.0, 120.0)),
        )

    def value(self) -> float:
        """Return the growth of the diameter [mm]."""
        return diameter_error(depth_error=self.error, included_angle=self.included_angle)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        slope = half_tangent(self.included_angle)
        yield slip(
            "M14",
            self.error,
            "You gave the extra depth itself. Width and depth differ by the angle.",
        )
        yield slip(
            "M02", self.error * slope, "You counted one side only. The seat grows on both sides."
        )
        yield slip("M14", 2 * self.error, "You doubled the depth. You left the angle out.")
        yield slip("M04", 2 * self.error / slope)
        yield slip("M01", times(2 * self.error, whole_tangent(self.included_angle)))

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        slope = half_tangent(self.included_angle)
        yield from angle_steps(self.included_angle, first=0)
        side, how = self.error * slope, "multiply the extra depth by the tangent"
        yield WorkedStep("the growth on one side", "{error} × {1}", side, FINE_LENGTH, how)
        how = "double it: the seat grows on both sides"
        yield WorkedStep("the growth of the diameter", "2 × {2}", self.value(), FINE_LENGTH, how)
