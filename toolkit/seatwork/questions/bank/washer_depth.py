"""Depth of a counterbore for a head on a washer."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import socket_cap
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slip_sentences import TOOK_OFF
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class WasherDepth(NumberQuestion):
    """Asks how deep a counterbore is for washer and head below the face."""

    id = "washer-depth"
    goal = "Count everything that lies in a counterbore."
    difficulty = 1
    codes = ("B1",)
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")
    sizes: ClassVar = {"height": LENGTH, "washer": LENGTH, "below": LENGTH}
    asked = (
        "A {size} socket head cap screw, head {height} high, lies on a washer {washer} thick "
        "in a counterbore. The top of the head is to be {below} below the face. How deep is "
        "the counterbore?"
    )
    hints = (
        "Draw what lies on the floor of the bore, one on the other.",
        "The face is above all of them.",
    )

    size: str
    height: float
    washer: float
    below: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a screw, a washer of .049 to .109 in and .010 to .040 in below."""
        screw = socket_cap(rng)
        return cls(
            size=screw.size,
            height=screw.height,
            washer=pick(rng, (0.049, 0.065, 0.083, 0.095, 0.109)) * INCH,
            below=step_between(rng, 0.010, 0.040, 0.001) * INCH,
        )

    def value(self) -> float:
        """Return the depth [mm]."""
        return self.height + self.washer + self.below

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip(
            "M22", self.height + self.below, "You left the washer out. It lies under the head."
        )
        yield slip(
            "M23",
            self.height + self.washer,
            "You used head and washer only. The head must also lie below the face.",
        )
        yield slip("M15", self.height + self.washer - self.below, TOOK_OFF)
        yield slip(
            "M21",
            self.washer + self.below,
            "You left out the height of the head. The bore must take the head, too.",
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        both = self.height + self.washer
        yield WorkedStep("head and washer together", "{height} + {washer}", both, LENGTH)
        how = "add what the head lies below"
        yield WorkedStep("the depth of the bore", "{0} + {below}", self.value(), LENGTH, how)
