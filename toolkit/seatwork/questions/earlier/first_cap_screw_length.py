"""Length of a cap screw as it was asked in version 1, which knew no box of lengths."""

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
class FirstCapScrewLength(NumberQuestion):
    """Asks for what is left of the plate and reach together."""

    id = "cap-screw-length"
    goal = "Order a cap screw by its length under the head."
    difficulty = 2
    codes = ("S2",)
    measure = LENGTH
    accepted = Tolerance("0.005", "0.1", "Screws come in steps of 1/8 in; .005 in is nothing.")
    sizes: ClassVar = {"thickness": LENGTH, "depth": LENGTH, "engagement": LENGTH}
    asked = (
        "A plate {thickness} thick has a counterbore {depth} deep for a {size} socket head "
        "cap screw. The screw must reach {engagement} into the tapped frame behind the plate. "
        "How long is the screw, measured under its head?"
    )
    hints = (
        "Under the head the screw starts at the floor of the counterbore.",
        "How much plate is left between that floor and the frame?",
    )

    size: str
    thickness: float
    depth: float
    engagement: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a screw, a plate and one to two diameters engaged."""
        screw = socket_cap(rng)
        plate = round(screw.height / INCH * pick(rng, (1.6, 2.0, 2.4)) * 16) / 16
        reach = round(screw.diameter / INCH * step_between(rng, 1, 2, 0.25) * 16) / 16
        return cls(
            size=screw.size,
            thickness=plate * INCH,
            depth=screw.height + step_between(rng, 0.010, 0.030, 0.005) * INCH,
            engagement=reach * INCH,
        )

    def value(self) -> float:
        """Return the length under the head [mm]."""
        return self.thickness - self.depth + self.engagement

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip(
            "M47",
            self.thickness + self.engagement,
            "You measured from the face. Under the head the screw starts at the floor of the bore.",
        )
        yield slip("M15", self.thickness + self.depth + self.engagement)
        yield slip(
            "M24",
            self.thickness - self.depth,
            "You counted the plate alone. The screw goes on into the frame.",
        )
        yield slip(
            "M24",
            self.depth + self.engagement,
            "You took the depth of the bore for what is left. Under the head there is the rest "
            "of the plate.",
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        left = self.thickness - self.depth
        yield WorkedStep("the plate left under the bore", "{thickness} − {depth}", left, LENGTH)
        how = "add what goes into the frame"
        yield WorkedStep("the length", "{0} + {engagement}", self.value(), LENGTH, how)
