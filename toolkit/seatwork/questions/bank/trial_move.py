"""How far the stop is moved after a trial cut on scrap."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialMove(NumberQuestion):
    """Asks how much deeper the stop is set when the first head stands proud."""

    id = "trial-move"
    goal = "Move the stop by what the trial cut shows."
    difficulty = 2
    codes = ("S5",)
    measure = LENGTH
    accepted = Tolerance("0.0005", "0.01", "The sum is exact; half of .001 in is rounding.")
    sizes: ClassVar = {"proud": LENGTH, "below": LENGTH, "included_angle": ANGLE}
    asked = (
        "On scrap the head stands {proud} proud. It is to lie {below} below the face. The seat has "
        "{included_angle}. How much deeper do you set the stop?"
    )
    hints = (
        "Where is the top of the head now, and where is it to be?",
        "The stop goes down by some amount. By how much does the head go down?",
    )

    proud: float
    below: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a head that stands proud by .004 to .014 in and where it is to lie."""
        return cls(
            proud=step_between(rng, 0.004, 0.014, 0.001) * INCH,
            below=pick(rng, (0.004, 0.005, 0.006, 0.008)) * INCH,
            included_angle=82.0,
        )

    def value(self) -> float:
        """Return how much deeper the stop is set [mm]."""
        return self.proud + self.below

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        growth = 2 * half_tangent(self.included_angle)
        yield slip("M23", self.proud, "You went down to flush only. The head is to lie below.")
        yield slip(
            "M15",
            abs(self.proud - self.below),
            "You took one from the other. The head goes down to flush first, then below.",
        )
        yield slip(
            "M14",
            self.value() * growth,
            "You found how much the diameter grows. Head and stop move down together.",
        )
        yield slip(
            "M04",
            self.value() / growth,
            "You turned the move of a head into the move of a stop. They are the same move.",
        )
        yield slip(
            "M49",
            self.proud + 2 * self.below,
            "You counted below twice. The head goes below the face once.",
        )

    def because(self) -> str:
        """Return why the two are added."""
        return "Head and stop move together: down to flush, then on until the head lies below."

    def working(self) -> Iterator[WorkedStep]:
        """Yield the one step."""
        yield WorkedStep("the move of the stop", "{proud} + {below}", self.value(), LENGTH)
