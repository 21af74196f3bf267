"""How closely the stop must hold for a tolerance on the diameter."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.seat_question import width_for_depth
from seatwork.questions.shared.wrong_trig import over, whole_tangent
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, angle_steps
from seatwork.seats import touching_off
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class StopBand(NumberQuestion):
    """Asks how far the stop may be off either way for the diameter to stay in tolerance."""

    id = "stop-band"
    version = 2
    goal = "Turn the tolerance on a diameter into one on the depth stop."
    difficulty = 3
    codes = ("S5", "N2")
    measure = FINE_LENGTH
    accepted = Tolerance("0.0002", "0.005", "Small differences are worked to .0001 in.")
    sizes: ClassVar = {"tolerance_of_diameter": LENGTH, "included_angle": ANGLE}
    asked = (
        "A print allows the diameter of a countersink of {included_angle} included angle to be "
        "{tolerance_of_diameter} larger or smaller. How far may the depth stop be off, either way?"
    )
    hints = (
        "Draw the cone at its right size and once at the greatest diameter allowed.",
        "Each side may move out by half of what the diameter may grow.",
        "Which depth belongs to that small width on one side?",
    )

    tolerance_of_diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a tolerance of .008 to .020 in."""
        return cls(
            tolerance_of_diameter=step_between(rng, 0.008, 0.020, 0.001) * INCH,
            included_angle=pick(rng, (60.0, 82.0, 100.0)),
        )

    def value(self) -> float:
        """Return the band of the stop, either way [mm]."""
        return touching_off.stop_band(
            diameter_tolerance=self.tolerance_of_diameter, included_angle=self.included_angle
        )

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        allowed, slope = self.tolerance_of_diameter, half_tangent(self.included_angle)
        yield width_for_depth(allowed, self.included_angle)
        yield slip("M02", allowed / slope)
        yield slip("M14", allowed / 2, "You took half of the tolerance. The slope counts too.")
        yield slip("M04", 2 * allowed * slope)
        yield slip("M01", over(allowed / 2, whole_tangent(self.included_angle)))

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        half = self.tolerance_of_diameter / 2
        sum_ = "{tolerance_of_diameter} ÷ 2"
        yield WorkedStep("across, half the tolerance", sum_, half, FINE_LENGTH, code="M52")
        yield from angle_steps(self.included_angle, first=1)
        how = "divide across by the tangent of half the angle"
        yield WorkedStep("the band of the stop", "{0} ÷ {2}", self.value(), FINE_LENGTH, how)
