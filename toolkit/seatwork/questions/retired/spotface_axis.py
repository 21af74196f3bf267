"""Depth of a spotface on a sloped face, measured along the axis."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH, RATIO
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import hex_cap
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class SpotfaceAxis(NumberQuestion):
    """Asks how deep a spotface cleans up, from the face at the hole's axis."""

    id = "spotface-axis"
    goal = "Say from where the depth of a spotface on a draft face is measured."
    difficulty = 3
    codes = ("F1", "N1")
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")
    sizes: ClassVar = {"diameter": LENGTH, "hole_diameter": LENGTH, "slope": ANGLE}
    asked = (
        "A smooth pad of the frame has a draft of {slope}. It is spotfaced to {diameter} round a "
        "hole of {hole_diameter}, square to the hole. When the spotface is just whole, how far "
        "below the sloped face does it lie at the axis of the hole?"
    )
    hints = (
        "Sketch slope and flat from the side. Where does the cutter touch first, where last?",
        "It is whole when its lowest edge just reaches the face.",
        "From there to the axis is half the width of the cutter.",
    )

    diameter: float
    hole_diameter: float
    slope: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a spotface for a hex cap screw and a draft of 3° to 8°."""
        screw = hex_cap(rng)
        wide = round(1.3 * screw.head_diameter / INCH * 16) / 16
        return cls(
            diameter=(wide + pick(rng, (0.125, 0.25, 0.375))) * INCH,
            hole_diameter=screw.hole_diameter,
            slope=step_between(rng, 3, 8, 0.5),
        )

    def value(self) -> float:
        """Return the depth at the axis [mm]."""
        return self.diameter / 2 * half_tangent(2 * self.slope)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        rise = half_tangent(2 * self.slope)
        yield slip(
            "M25",
            self.diameter * rise,
            "You found the depth below the high side. You were asked about the axis.",
        )
        yield slip("M26", self.hole_diameter / 2 * rise)
        yield slip(
            "M13",
            self.diameter / 4 * rise,
            "You took a quarter of the width. The axis is half of it away.",
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "The cut is whole when it reaches the face at the low edge. "
            "From there to the axis is half the spotface."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        half, rise = self.diameter / 2, half_tangent(2 * self.slope)
        yield WorkedStep("half the spotface", "{diameter} ÷ 2", half, FINE_LENGTH)
        yield WorkedStep("the tangent of the slope", "tangent of {slope}", rise, RATIO)
        how = "multiply half the spotface by the tangent of the slope"
        yield WorkedStep("the depth at the axis", "{0} × {1}", self.value(), LENGTH, how)
