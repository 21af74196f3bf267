"""A head on a leaning pad: the gap under it, and what the bolt does when it is tightened."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.questions.shared.real_sizes import HEX_CAPS, across_flats
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.seats.cones import half_tangent

DOES = (
    ("bends", "its head follows the pad, and the shank bends"),
    ("tight", "it pulls the pad square; it only takes more torque"),
    ("same", "the same as on a square pad, since the gap closes"),
    ("turns", "it works loose, and nothing else"),
)
WRONG = {
    "tight": ("M66", "You let the bolt straighten a casting. Look which of the two gives."),
    "same": ("M66", "You closed the gap and looked no further. What must bend for that?"),
    "turns": ("M66", "You looked at the thread alone. Look at the shank under the head."),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class TiltedHead(NumberQuestion):
    """Asks how thick a feeler goes under one side of a head, then what that does to the bolt."""

    id = "tilted-head"
    goal = "Find the gap under a head on a leaning pad, and say what it does to the bolt."
    difficulty = 2
    codes = ("F2",)
    measure = LENGTH
    accepted = Tolerance("0.001", "0.025", "Feeler leaves come in steps of .001 in.")
    sizes: ClassVar = {"width": LENGTH, "slope": ANGLE}
    asked = (
        "A {size} hex head, {width} across its flats, is laid on a pad that leans {slope} from "
        "square to the hole."
    )
    hints = (
        "One side of the head touches. How far does the pad fall away under the other?",
        "A pad leans with its whole angle, over the whole width: nothing is halved.",
        "When the wrench closes that gap, what has moved: the casting, or the head?",
    )

    size: str
    width: float
    slope: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a hex head and a slope of 1° to 4°."""
        size = pick(rng, HEX_CAPS)
        return cls(
            size=size, width=across_flats(size), slope=pick(rng, (1.0, 1.5, 2.0, 2.5, 3.0, 4.0))
        )

    def value(self) -> float:
        """Return the gap under the open side [mm]."""
        return self.width * half_tangent(2 * self.slope)

    @property
    def parts(self) -> tuple[Part, ...]:
        """The gap, then what the bolt does."""
        gap = "How wide is the gap under its open side, before it is tightened?"
        return (
            self.number(self.value(), self.mistakes, gap),
            ChoicePart(
                prompt="What does the bolt do as it is tightened?",
                options=DOES,
                right="bends",
                wrong=WRONG,
            ),
        )

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        half = "You halved it. A pad leans with its whole angle, over the whole width."
        yield slip("M25", self.value() / 2, half)
        yield slip("M65", 2 * self.value(), "You counted both sides. One of them touches.")
        divided = "You divided by the tangent. The gap is the width times it."
        yield slip("M04", self.width / half_tangent(2 * self.slope), divided)

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        how = "multiply the width of the head by the tangent of the slope"
        yield WorkedStep(
            "the gap under the open side",
            "{width} × tangent of {slope}",
            self.value(),
            LENGTH,
            how,
            part=0,
        )

    def remark(self) -> str:
        """Return what it does."""
        return "The casting does not give: the head follows the pad, and the shank bends under it."
