"""A seat on the far side: which face is up, and how far down the cone begins."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import TWO_STOPS, PrintQuestion
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep, cone_steps
from seatwork.seats import Countersink

FACES = (
    ("near", "the near face, as the print shows it"),
    ("far", "the far face, the part turned over"),
    ("either", "either face; the cone is the same"),
)
NEAR = "You would cut the near face. Which face would the cone open to?"
EITHER = "You would cut either face. Then half of the parts have the seat on the wrong side."


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintFarSide(PrintQuestion):
    """Asks from where a FAR SIDE seat is cut, and where its cone begins from the near face."""

    id = "print-far-side"
    goal = "See on which face a FAR SIDE seat is cut."
    difficulty = 2
    codes = ("N1", "S4", "W3")
    shape = "far seat"
    sizes: ClassVar = lengths("hole_diameter", "diameter", "thickness") | {"included_angle": ANGLE}
    before = "The plate is {thickness} thick."
    hints = (
        "The near face is the one you look at on the print. To which face does the cone open?",
        "How deep is the cone from its own face?",
        "What is cut from the far face and what is left above it make up the plate.",
    )

    hole_diameter: float
    diameter: float
    included_angle: float
    thickness: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head and a plate."""
        head = flat_head(rng)
        return cls(
            hole_diameter=head.hole_diameter,
            diameter=head.sharp_diameter,
            included_angle=82.0,
            thickness=pick(rng, (0.25, 0.375, 0.5, 0.625)) * INCH,
        )

    def note(self) -> str:
        """Return the note."""
        return (
            f"⌀{self.stated('hole_diameter')} THRU ⌵ ⌀{self.stated('diameter')} X "
            f"{self.stated('included_angle')} FAR SIDE"
        )

    @property
    def depth(self) -> float:
        """Depth of the cone from its own face [mm]."""
        return Countersink(
            diameter=self.diameter,
            hole_diameter=self.hole_diameter,
            included_angle=self.included_angle,
        ).depth

    def is_clear(self) -> bool:
        """Whether .08 in of straight hole are left and the slips stand apart."""
        return self.thickness - self.depth >= 0.08 * INCH and Question.is_clear(self)

    @property
    def parts(self) -> tuple[Part, ...]:
        """Which face is up, and how far down the cone begins."""
        thick, wide = self.thickness, self.diameter - self.hole_diameter
        face = ChoicePart(
            prompt="Which face is up while you cut the seat?",
            options=FACES,
            right="far",
            wrong={"near": ("M24", NEAR), "either": ("M24", EITHER)},
        )
        begins = self.length(
            thick - self.depth,
            TWO_STOPS,
            "From the near face, how far down does the cone begin?",
            slip(
                "M24",
                self.depth,
                "You gave the depth of the cone, from the far face. You were asked from the near.",
            ),
            slip("M10", thick, "You went to the far face itself. The cone begins above it."),
            slip(
                "M65",
                thick - 2 * self.depth,
                "You took off two cones. FAR SIDE is one seat, on one side.",
            ),
            slip(
                "M52",
                thick - wide / 2,
                "You took half the difference for the depth. Divide it by the tangent.",
            ),
            slip(
                "M14",
                thick - wide,
                "You took the difference of the diameters for the depth. Halve it, then divide.",
            ),
        )
        return (face, begins)

    def because(self) -> str:
        """Return what FAR SIDE asks for."""
        return "FAR SIDE: the cone opens to the far face, so turn the part over; find the hole."

    def working(self) -> Iterator[WorkedStep]:
        """Yield the triangle of the cone, then what is left above it."""
        yield from cone_steps(self, "diameter", "hole_diameter", "the depth of the cone")
        yield WorkedStep(
            "where the cone begins", "{thickness} − {4}", self.thickness - self.depth, LENGTH
        )
