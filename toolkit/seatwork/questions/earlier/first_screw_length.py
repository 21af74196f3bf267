"""Length of a flat head screw as it was asked in version 1, which knew no box of lengths."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class FirstScrewLength(NumberQuestion):
    """Asks for guard and reach together, whatever lengths there are to buy."""

    id = "screw-length"
    goal = "Order a flat head screw by its overall length."
    difficulty = 1
    codes = ("S2",)
    unmarked = "from where to where its length runs is what is asked"
    measure = LENGTH
    accepted = Tolerance("0.005", "0.1", "Screws come in steps of 1/8 in; .005 in is nothing.")
    sizes: ClassVar = {"thickness": LENGTH, "engagement": LENGTH, "height": LENGTH}
    asked = (
        "A guard {thickness} thick is held by a {size} flat head screw, head {height} high, flush "
        "with its face. The screw must reach {engagement} into the tapped frame behind. How long "
        "is the screw as it is ordered?"
    )
    hints = (
        "From where to where is a flat head screw measured?",
        "Its head lies within the guard.",
    )

    size: str
    thickness: float
    engagement: float
    height: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head, a guard thicker than it, and one to two diameters engaged."""
        head = flat_head(rng)
        thick = round(head.height / INCH * pick(rng, (1.6, 2.0, 2.4)) * 16) / 16
        reach = round(head.diameter / INCH * step_between(rng, 1, 2, 0.25) * 16) / 16
        return cls(
            size=head.size,
            thickness=thick * INCH,
            engagement=reach * INCH,
            height=head.height,
        )

    def value(self) -> float:
        """Return the length [mm]."""
        return self.thickness + self.engagement

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip("M47", self.thickness + self.engagement - self.height)
        yield slip(
            "M15",
            self.thickness + self.engagement + self.height,
            "You added the head. It is within the guard and within the length.",
        )
        yield slip(
            "M24",
            self.thickness,
            "You counted the guard alone. The screw must reach into the frame.",
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "A flat head screw is measured overall, head included. Flush, it runs from the face "
            "through the guard into the frame."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        yield WorkedStep("the length", "{thickness} + {engagement}", self.value(), LENGTH)
