"""What a spotface leaves of a flange at its thin side."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import hex_cap
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class FlangeLeft(NumberQuestion):
    """Asks how thick a flange still is at the low side of a spotface."""

    id = "flange-left"
    goal = "Find what a spotface leaves where a flange is thinnest."
    difficulty = 3
    codes = ("F1",)
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "Thickness and depth are stated to .001 in.")
    sizes: ClassVar = {"thickness": LENGTH, "diameter": LENGTH, "slope": ANGLE, "scale": LENGTH}
    asked = (
        "A cast flange with a draft of {slope} is spotfaced to {diameter}. The cut goes "
        "{scale} deeper than needed to be clean all round, to be under the scale. At the low "
        "side of the spotface the flange was {thickness} thick. How much of it is left there?"
    )
    hints = (
        "Where does the spotface just become clean all round?",
        "How deep is the cut there when it is clean, and how deep in the end?",
    )

    thickness: float
    diameter: float
    slope: float
    scale: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flange, a spotface, a draft of 2° to 6° and the scale."""
        screw = hex_cap(rng)
        wide = round(1.3 * screw.head_diameter / INCH * 16) / 16
        return cls(
            thickness=pick(rng, (0.375, 0.4375, 0.5, 0.5625, 0.625, 0.75)) * INCH,
            diameter=(wide + pick(rng, (0.125, 0.25))) * INCH,
            slope=step_between(rng, 2, 6, 0.5),
            scale=step_between(rng, 0.020, 0.040, 0.001) * INCH,
        )

    def value(self) -> float:
        """Return what is left at the low side [mm]."""
        return self.thickness - self.scale

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        drop = self.diameter * half_tangent(2 * self.slope)
        yield slip(
            "M25",
            self.thickness - drop - self.scale,
            "You took off the cut of the high side. You were asked about the low side.",
        )
        yield slip(
            "M25",
            self.thickness - drop / 2 - self.scale,
            "You took off the cut at the axis. You were asked about the low side.",
        )
        yield slip("M24", self.scale, "You gave what is cut. You were asked for what is left.")
        yield slip("M23", self.thickness, "You left the scale out. The cut goes under it.")

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "When the spotface is just clean all round, its low side is at the face, not cut at "
            "all. Then it goes deeper by the scale."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        sum_ = "{thickness} − {scale}"
        yield WorkedStep("the flange left at the low side", sum_, self.value(), LENGTH)
