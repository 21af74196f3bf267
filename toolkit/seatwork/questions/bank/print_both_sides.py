"""Seats on both sides: how many a hole gets, and the straight hole left between them."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import TWO_STOPS, PrintQuestion
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep, across_steps, angle_steps
from seatwork.seats import Countersink
from seatwork.seats.both_sides import BothSides

SEATS = (("one", "one"), ("two", "two"), ("four", "four"))
WRONG = {
    "one": ("M65", "You counted one side. Read the end of the note again."),
    "four": ("M65", "You counted each side twice. Think of one end of a hole, then of the other."),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintBothSides(PrintQuestion):
    """Asks how many seats BOTH SIDES means, and what stays between the two cones."""

    id = "print-both-sides"
    goal = "Count both cones of BOTH SIDES before the stop is set."
    difficulty = 3
    codes = ("N1", "S4", "W3")
    sizes: ClassVar = lengths("hole_diameter", "diameter", "thickness") | {"included_angle": ANGLE}
    before = "The plate is {thickness} thick."
    hints = (
        "Draw the plate from the side, with a cone at the top and one at the bottom.",
        "How deep is one cone? It is the triangle you know.",
        "Both cones are taken off the plate.",
    )

    hole_diameter: float
    diameter: float
    included_angle: float
    thickness: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head, an angle and a plate."""
        head = flat_head(rng)
        return cls(
            hole_diameter=head.hole_diameter,
            diameter=head.sharp_diameter,
            included_angle=pick(rng, (82.0, 82.0, 100.0)),
            thickness=pick(rng, (0.25, 0.3125, 0.375, 0.5, 0.625)) * INCH,
        )

    def note(self) -> str:
        """Return the note."""
        return (
            f"⌀{self.stated('hole_diameter')} THRU ⌵ ⌀{self.stated('diameter')} X "
            f"{self.stated('included_angle')} BOTH SIDES"
        )

    @property
    def seat(self) -> Countersink:
        """One of the two seats."""
        return Countersink(
            diameter=self.diameter,
            hole_diameter=self.hole_diameter,
            included_angle=self.included_angle,
        )

    @property
    def land(self) -> float:
        """Straight hole between the cones [mm]; minus where they meet."""
        return BothSides(first=self.seat, second=self.seat, thickness=self.thickness).land

    def is_clear(self) -> bool:
        """Whether .03 in of straight hole are left and the slips stand apart."""
        return self.land >= 0.03 * INCH and Question.is_clear(self)

    @property
    def parts(self) -> tuple[Part, ...]:
        """How many seats a hole gets, and what stays between them."""
        thick, depth = self.thickness, self.seat.depth
        wide = self.diameter - self.hole_diameter
        seats = ChoicePart(
            prompt="How many seats does one hole get?",
            options=SEATS,
            right="two",
            wrong=dict(WRONG),
        )
        return (
            seats,
            self.length(
                self.land,
                TWO_STOPS,
                "How long is the straight hole left between the cones?",
                slip("M65", thick - depth, "You took off one cone. The note says both sides."),
                slip("M24", 2 * depth, "You gave both depths. You were asked what is left."),
                slip(
                    "M52",
                    thick - wide,
                    "You took half the difference for each depth. Divide it by the tangent.",
                ),
                slip(
                    "M14",
                    thick - 2 * wide,
                    "You took the difference of the diameters for each depth. Halve, then divide.",
                ),
                slip("M10", thick, "You gave the plate itself. Two cones are cut into it."),
            ),
        )

    def because(self) -> str:
        """Return what BOTH SIDES asks for."""
        return "BOTH SIDES: one hole gets two seats, one from each face."

    def working(self) -> Iterator[WorkedStep]:
        """Yield the triangle of one cone, both cones, and what is left."""
        difference = self.diameter - self.hole_diameter
        yield from across_steps("{diameter}", "{hole_diameter}", difference, first=0)
        yield from angle_steps(self.included_angle, first=2)
        depth = self.seat.depth
        yield WorkedStep(
            "the depth of one cone", "{1} ÷ {3}", depth, FINE_LENGTH, "divide across by the tangent"
        )
        yield WorkedStep("both cones together", "2 × {4}", 2 * depth, FINE_LENGTH, code="M24")
        yield WorkedStep("the straight hole left", "{thickness} − {5}", self.land, LENGTH)
