"""Diameter of the pilot for a hole."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import SOCKET_CAPS, hole, socket_cap
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep

FITS = ("close", "normal", "loose")


@dataclass(frozen=True, slots=True, kw_only=True)
class PilotSize(NumberQuestion):
    """Asks how wide the pilot of a counterbore is for a drilled hole."""

    id = "pilot-size"
    goal = "Pick a pilot that turns freely in the hole and still guides."
    difficulty = 1
    codes = ("B2",)
    measure = LENGTH
    accepted = Tolerance("0.0005", "0.0125", "A micrometer over a pilot holds .0005 in.")
    sizes: ClassVar = {"hole_diameter": LENGTH, "diameter": LENGTH, "clearance": LENGTH}
    asked = (
        "A counterbore with a removable pilot is guided by a hole of {hole_diameter}, drilled for "
        "a {size} screw, thread diameter {diameter}. The pilot is to be {clearance} under the "
        "hole. What is its diameter?"
    )
    hints = (
        "What does the pilot turn in?",
        "It must be a little smaller than that.",
    )

    size: str
    hole_diameter: float
    diameter: float
    clearance: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a clearance hole and .002 to .006 in of clearance."""
        screw = socket_cap(rng)
        assert screw.size in SOCKET_CAPS
        return cls(
            size=screw.size,
            hole_diameter=hole(screw.size, pick(rng, FITS)),
            diameter=screw.diameter,
            clearance=step_between(rng, 0.002, 0.006, 0.001) * INCH,
        )

    def value(self) -> float:
        """Return the diameter of the pilot [mm]."""
        return self.hole_diameter - self.clearance

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip("M20", self.diameter - self.clearance)
        yield slip(
            "M20", self.diameter, "You took the size of the screw. The pilot turns in the hole."
        )
        yield slip("M15", self.hole_diameter + self.clearance)
        yield slip(
            "M23", self.hole_diameter, "You took the size of the hole. The pilot would seize."
        )
        yield slip(
            "M13",
            self.hole_diameter - 2 * self.clearance,
            "You took the clearance off twice. It is given for the diameter.",
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return "The pilot turns in the hole."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        sum_ = "{hole_diameter} − {clearance}"
        yield WorkedStep("the diameter of the pilot", sum_, self.value(), LENGTH)
