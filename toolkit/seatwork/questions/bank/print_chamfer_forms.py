"""A chamfer by leg and 45°, and the same cut by its mouth and 90°."""

from collections.abc import Iterator
from dataclasses import dataclass
from math import sqrt
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import STOP, PrintQuestion
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep

ANGLES = (("45", "X 45°"), ("82", "X 82°"), ("90", "X 90°"))
WRONG = {
    "45": ("M42", "You kept 45°. That is one side; behind ⌵ the whole angle stands."),
    "82": ("M42", "You took a flat head's angle. Two sides of 45° make another one."),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintChamferForms(PrintQuestion):
    """Asks for the angle and the mouth that make the same cut as a leg and 45°."""

    id = "print-chamfer-forms"
    goal = "Know that .03 X 45° and a mouth diameter are the same cut."
    difficulty = 2
    codes = ("N1", "E1")
    sizes: ClassVar = lengths("hole_diameter", "leg")
    hints = (
        "45° is one side of the chamfer, measured from the face.",
        "The leg is cut on both sides of the hole.",
    )

    hole_diameter: float
    leg: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a hole and a leg."""
        return cls(
            hole_diameter=pick(rng, (0.201, 0.266, 0.281, 0.344, 0.406)) * INCH,
            leg=pick(rng, (0.02, 0.03, 0.04, 0.05, 0.06)) * INCH,
        )

    def note(self) -> str:
        """Return the note."""
        return f"⌀{self.stated('hole_diameter')} THRU, {self.stated('leg')} X 45°"

    @property
    def mouth(self) -> float:
        """Mouth of the hole [mm]."""
        return self.hole_diameter + 2 * self.leg

    @property
    def parts(self) -> tuple[Part, ...]:
        """The angle behind the other sign, and the mouth."""
        hole, leg = self.hole_diameter, self.leg
        angle = ChoicePart(
            prompt="The same cut is written with ⌵ and its mouth. What stands behind the mouth?",
            options=ANGLES,
            right="90",
            wrong=dict(WRONG),
        )
        mouth = self.length(
            self.mouth,
            STOP,
            "How wide is the mouth?",
            slip("M41", hole + leg, "You added one leg. A hole opens by two legs."),
            slip(
                "M41",
                hole + sqrt(2) * leg,
                "You took the leg along the slope. The leg is measured along the face.",
            ),
            slip("M41", leg, "You gave the leg itself. The mouth is the hole and two legs."),
            slip("M15", hole - 2 * leg, "You took off where you add. A chamfer opens the hole."),
            slip("M41", hole + 4 * leg, "You doubled the legs twice. There are two of them."),
        )
        return (angle, mouth)

    def because(self) -> str:
        """Return the angle."""
        return "45° on each side make 90° in all: ⌵, the mouth, X 90°."

    def working(self) -> Iterator[WorkedStep]:
        """Yield both legs and the mouth."""
        yield WorkedStep("both legs", "2 × {leg}", 2 * self.leg, LENGTH)
        yield WorkedStep("the mouth", "{hole_diameter} + {0}", self.mouth, LENGTH)
