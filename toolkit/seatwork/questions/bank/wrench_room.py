"""Diameter of a counterbore into which a wrench socket must go."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import hex_cap
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class WrenchRoom(NumberQuestion):
    """Asks how wide a counterbore must be for head, washer and wrench socket."""

    id = "wrench-room"
    goal = "Make room for the wrench socket, not for the head alone."
    difficulty = 2
    codes = ("B1",)
    measure = LENGTH
    accepted = Tolerance("0.003", "0.08", "A caliper in a bore holds about .003 in.")
    sizes: ClassVar = lengths("across_corners", "washer_diameter", "wrench_diameter", "clearance")
    asked = (
        "A {size} hex cap screw, {across_corners} across corners, lies in a counterbore on a "
        "washer of {washer_diameter} outside diameter. It is tightened with a wrench socket that "
        "the class measured: {wrench_diameter} outside. All of them need {clearance} of clearance "
        "in diameter. How wide must the counterbore be?"
    )
    hints = (
        "Which things go into the bore, and when?",
        "The widest of them rules.",
    )

    size: str
    across_corners: float
    washer_diameter: float
    wrench_diameter: float
    clearance: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a hex cap screw, a washer, and a wrench socket wider than both."""
        screw = hex_cap(rng)
        washer = screw.head_diameter + step_between(rng, 0.020, 0.070, 0.010) * INCH
        return cls(
            size=screw.size,
            across_corners=screw.head_diameter,
            washer_diameter=washer,
            wrench_diameter=washer + step_between(rng, 0.045, 0.145, 0.010) * INCH,
            clearance=pick(rng, (0.015, 0.020, 0.031)) * INCH,
        )

    def value(self) -> float:
        """Return the diameter of the counterbore [mm]."""
        return self.wrench_diameter + self.clearance

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip("M22", self.across_corners + self.clearance)
        yield slip(
            "M22",
            self.washer_diameter + self.clearance,
            "You left room for the washer. The wrench socket is wider.",
        )
        yield slip(
            "M23", self.wrench_diameter, "You took the wrench socket as it is. It needs clearance."
        )
        yield slip(
            "M13",
            self.wrench_diameter + 2 * self.clearance,
            "You counted the clearance on each side. It is given for the diameter.",
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return "Head, washer and wrench socket all go in; the widest is the wrench socket."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        sum_ = "{wrench_diameter} + {clearance}"
        yield WorkedStep("the diameter of the bore", sum_, self.value(), LENGTH)

    def remark(self) -> str:
        """Return what else they show."""
        return (
            "Where that is too wide for the pad, a socket head cap screw or a raised boss is the "
            "usual way out."
        )
