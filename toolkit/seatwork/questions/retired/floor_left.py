"""What is left of a plate under a counterbore."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import socket_cap
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class FloorLeft(NumberQuestion):
    """Asks how thick the plate still is under the head."""

    id = "floor-left"
    goal = "Check what a counterbore leaves of the plate."
    difficulty = 1
    codes = ("B1",)
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "Plate and depth are stated to .001 in.")
    sizes: ClassVar = {"thickness": LENGTH, "height": LENGTH, "below": LENGTH}
    asked = (
        "A plate {thickness} thick is counterbored for a {size} socket head cap screw, head "
        "{height} high. The head lies {below} below the face. How thick is what is left under "
        "the head?"
    )
    hints = (
        "How deep is the counterbore itself?",
        "What is cut away and what is left make up the plate.",
    )

    size: str
    thickness: float
    height: float
    below: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a screw and a plate 1.4 to 2.2 times its head's height."""
        screw = socket_cap(rng)
        plate = pick(rng, (1.5, 1.75, 2.25, 2.5)) * screw.height
        return cls(
            size=screw.size,
            thickness=round(plate / INCH * 16) / 16 * INCH,
            height=screw.height,
            below=step_between(rng, 0.010, 0.040, 0.001) * INCH,
        )

    def value(self) -> float:
        """Return what is left [mm]."""
        return self.thickness - self.height - self.below

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip(
            "M24",
            self.height + self.below,
            "You gave the depth that is cut. You were asked for what is left.",
        )
        yield slip("M23", self.thickness - self.height)
        yield slip("M15", self.thickness - self.height + self.below)
        yield slip(
            "M21",
            self.thickness - self.below,
            "You left out the height of the head. The bore must take the head, too.",
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        depth = self.height + self.below
        yield WorkedStep("the depth of the bore", "{height} + {below}", depth, LENGTH)
        how = "take the depth off the plate"
        yield WorkedStep("the floor left", "{thickness} − {0}", self.value(), LENGTH, how)
