"""Diameter of a counterbore for a socket head."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import socket_cap
from seatwork.questions.type.draws import pick
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slip_sentences import TOOK_OFF
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class BoreDiameter(NumberQuestion):
    """Asks how wide a counterbore is for a head with that clearance."""

    id = "bore-diameter"
    goal = "Size a counterbore from the head that goes into it."
    difficulty = 1
    codes = ("B1",)
    measure = LENGTH
    accepted = Tolerance("0.003", "0.08", "A caliper in a bore holds about .003 in.")
    sizes: ClassVar = lengths("head_diameter", "diameter", "clearance", "hole_diameter")
    asked = (
        "A {size} socket head cap screw, thread diameter {diameter}, has a head of "
        "{head_diameter} at most and goes through a hole of {hole_diameter}. The counterbore is "
        "to be {clearance} wider than the head, in diameter. How wide is it?"
    )
    hints = (
        "What lies in the counterbore: the thread or the head?",
        "The clearance is given for the diameter, not for each side.",
    )

    size: str
    head_diameter: float
    diameter: float
    clearance: float
    hole_diameter: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a socket head cap screw and a clearance of 1/64 to 1/16 in."""
        screw = socket_cap(rng)
        return cls(
            size=screw.size,
            head_diameter=screw.head_diameter,
            diameter=screw.diameter,
            clearance=pick(rng, (0.016, 0.020, 0.025, 0.031, 0.040, 0.047, 0.062)) * INCH,
            hole_diameter=screw.hole_diameter,
        )

    def value(self) -> float:
        """Return the diameter of the counterbore [mm]."""
        return self.head_diameter + self.clearance

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        both = self.head_diameter + 2 * self.clearance
        yield slip(
            "M13", both, "You counted the clearance on each side. It is given for the diameter."
        )
        yield slip(
            "M50",
            self.diameter + self.clearance,
            "You used the thread. Look what lies in the bore.",
        )
        yield slip("M15", self.head_diameter - self.clearance, TOOK_OFF)
        yield slip("M23", self.head_diameter, "You used the head alone. It would not go in freely.")
        yield slip(
            "M50",
            self.hole_diameter + self.clearance,
            "You used the hole. Look what lies in the bore.",
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return "The head lies in the bore, so the bore follows the head."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        sum_ = "{head_diameter} + {clearance}"
        yield WorkedStep("the diameter of the bore", sum_, self.value(), LENGTH)
