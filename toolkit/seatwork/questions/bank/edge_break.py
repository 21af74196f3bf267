"""What an edge break does to the mouth of a hole."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import FLAT_HEADS, hole
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slip_sentences import TOOK_OFF
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class EdgeBreak(NumberQuestion):
    """Asks for the widest mouth that an edge-break note allows."""

    id = "edge-break"
    goal = "Read an edge-break note as limits on the mouth of a hole."
    difficulty = 2
    codes = ("E1", "N1")
    measure = LENGTH
    accepted = Tolerance("0.001", "0.025", "The note is written to .001 in.")
    sizes: ClassVar = {"hole_diameter": LENGTH, "least": LENGTH, "greatest": LENGTH}
    asked = (
        "A print says: break all edges, least {least}, greatest {greatest}, measured along each "
        "face. What is the widest mouth a hole of {hole_diameter} may have?"
    )
    hints = (
        "Draw the hole with its edge broken on both sides of the section.",
        "The break eats into the face on each side of the hole.",
    )

    hole_diameter: float
    least: float
    greatest: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a clearance hole and a break of up to .015 to .030 in."""
        return cls(
            hole_diameter=hole(pick(rng, FLAT_HEADS), pick(rng, ("close", "normal", "loose"))),
            least=0.005 * INCH,
            greatest=step_between(rng, 0.015, 0.030, 0.001) * INCH,
        )

    def value(self) -> float:
        """Return the widest mouth [mm]."""
        return self.hole_diameter + 2 * self.greatest

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        hole_diameter, leg = self.hole_diameter, self.greatest
        yield slip(
            "M41",
            hole_diameter + leg,
            "You counted one side only. The break is on both sides of the hole.",
        )
        yield slip(
            "M41",
            hole_diameter + leg * 2**0.5,
            "You used the slope of the break. The leg counts, along the face.",
        )
        yield slip(
            "M49",
            hole_diameter + 2 * self.least,
            "You used the least break. You were asked for the widest mouth.",
        )
        yield slip("M15", hole_diameter - 2 * leg, TOOK_OFF)

    def because(self) -> str:
        """Return why these are the steps."""
        return "The break takes some of the face on each side of the hole."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        both = 2 * self.greatest
        yield WorkedStep("the break on both sides", "2 × {greatest}", both, LENGTH)
        how = "add it to the hole"
        yield WorkedStep("the widest mouth", "{hole_diameter} + {0}", self.value(), LENGTH, how)
