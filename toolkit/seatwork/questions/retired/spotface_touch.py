"""Quill travel for a spotface from the first touch on a sloped, scaly pad."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH, RATIO, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import hex_cap
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class SpotfaceTouch(NumberQuestion):
    """Asks for the travel from the first touch until the spotface is whole and under the scale."""

    id = "spotface-touch"
    goal = "Set the stop from the first touch on a rough pad."
    difficulty = 3
    codes = ("F1", "S5")
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")
    sizes: ClassVar = lengths("diameter", "hole_diameter", "scale") | {"slope": ANGLE}
    asked = (
        "A cast pad with a draft of {slope} is spotfaced to {diameter} round a hole of "
        "{hole_diameter}. The cutter first touches the high side. The cut must be whole all round "
        "and {scale} deeper than that, to be under the scale. How far does the quill travel from "
        "the first touch?"
    )
    hints = (
        "Sketch the slope and the cutter at the first touch.",
        "How much lower is the face at the opposite edge of the cutter?",
        "Then add what the scale needs.",
    )

    diameter: float
    hole_diameter: float
    slope: float
    scale: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a spotface, a draft of 2° to 6° and .015 to .040 in for scale."""
        screw = hex_cap(rng)
        wide = round(1.3 * screw.head_diameter / INCH * 16) / 16
        return cls(
            diameter=(wide + pick(rng, (0.125, 0.25, 0.375))) * INCH,
            hole_diameter=screw.hole_diameter,
            slope=step_between(rng, 2, 6, 0.5),
            scale=step_between(rng, 0.015, 0.040, 0.001) * INCH,
        )

    def value(self) -> float:
        """Return the travel [mm]."""
        return self.diameter * half_tangent(2 * self.slope) + self.scale

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        rise = half_tangent(2 * self.slope)
        yield slip(
            "M25",
            self.diameter / 2 * rise + self.scale,
            "You measured from the axis. The first touch is on the high side.",
        )
        yield slip(
            "M23", self.diameter * rise, "You left the scale out. The cut would run in the skin."
        )
        yield slip("M26", self.hole_diameter * rise + self.scale)
        yield slip(
            "M25", self.scale, "You gave the scale alone. The far side would not be touched."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        rise = half_tangent(2 * self.slope)
        yield WorkedStep("the tangent of the slope", "tangent of {slope}", rise, RATIO)
        label, how = "the drop across the spotface", "multiply the spotface by the tangent"
        yield WorkedStep(label, "{diameter} × {0}", self.diameter * rise, FINE_LENGTH, how)
        how = "add what the scale needs"
        yield WorkedStep("the travel", "{1} + {scale}", self.value(), LENGTH, how)
