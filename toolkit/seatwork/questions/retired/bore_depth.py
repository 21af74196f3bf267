"""Depth of a counterbore for a head that lies below the face."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import hex_cap
from seatwork.questions.type.draws import step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slip_sentences import TOOK_OFF
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class BoreDepth(NumberQuestion):
    """Asks how deep a counterbore is for a head that lies below the face."""

    id = "bore-depth"
    goal = "Set the depth of a counterbore so that the head lies below the face."
    difficulty = 1
    codes = ("B1",)
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")
    sizes: ClassVar = {"height": LENGTH, "diameter": LENGTH, "below": LENGTH}
    asked = (
        "A {size} hex cap screw has a thread of {diameter} and a head {height} high at most. The "
        "counterbore must let the top of the head lie {below} below the face. How deep is it?"
    )
    hints = (
        "Draw the head on the floor of the bore. What is above it?",
        "Floor to top of head, then top of head to face.",
    )

    size: str
    height: float
    diameter: float
    below: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a hex cap screw and an amount of .010 to .040 in."""
        screw = hex_cap(rng)
        return cls(
            size=screw.size,
            height=screw.height,
            diameter=screw.diameter,
            below=step_between(rng, 0.010, 0.040, 0.001) * INCH,
        )

    def value(self) -> float:
        """Return the depth of the counterbore [mm]."""
        return self.height + self.below

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip("M23", self.height)
        yield slip("M15", self.height - self.below, TOOK_OFF)
        yield slip(
            "M21",
            self.diameter + self.below,
            "You took the thread for the height of the head. Look what stands on the floor of "
            "the bore.",
        )
        yield slip(
            "M13", self.height + 2 * self.below, "You counted the amount twice. You need it once."
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return "The head stands on the floor of the bore, and its top lies below the face."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        yield WorkedStep("the depth of the bore", "{height} + {below}", self.value(), LENGTH)
