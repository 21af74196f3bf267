"""Whether a head stands proud or lies below, and by how much."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.seat_question import height_slips, width_for_depth
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake
from seatwork.questions.type.working import WorkedStep, across_steps, angle_steps
from seatwork.seats.cones import half_tangent

STATES = (("proud", "proud"), ("flush", "flush"), ("below", "below flush"))

MIXED = "You mixed up wider and narrower. Which of the two is wider at the face?"


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing(NumberQuestion):
    """Asks how a head lies in a seat of its own angle and another diameter."""

    id = "standing"
    goal = "Tell from two diameters whether a head is proud or below, and how far."
    difficulty = 2
    codes = ("S6",)
    unmarked = "whether it stands proud is what is asked"
    measure = LENGTH
    accepted = Tolerance("0.001", "0.025", "A depth micrometer over a head holds about .001 in.")
    sizes: ClassVar = {"sharp_diameter": LENGTH, "diameter": LENGTH, "included_angle": ANGLE}
    asked = (
        "Seat: {included_angle}, {diameter} at the face. Head: {size} flat head, the same "
        "angle, theoretical sharp diameter {sharp_diameter}. You lay the head in the seat."
    )
    hints = (
        "Head and seat are the same cone, so they touch all along it.",
        "Which is wider at the face? The wider head stays up, the narrower one goes down.",
        "One side is a triangle: half of what the diameters differ, and the slope of the cone.",
    )

    size: str
    sharp_diameter: float
    diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a seat .022 to .060 in too narrow or too wide."""
        head, angle = flat_head(rng), pick(rng, (82.0, 82.0, 100.0))
        off = step_between(rng, 0.022, 0.060, 0.001) * pick(rng, (-1, 1))
        return cls(
            size=head.size,
            sharp_diameter=head.sharp_diameter,
            diameter=head.sharp_diameter + off * INCH,
            included_angle=angle,
        )

    def value(self) -> float:
        """Return how far the head stands or lies [mm]."""
        return abs(self.sharp_diameter - self.diameter) / 2 / half_tangent(self.included_angle)

    @property
    def parts(self) -> tuple[Part, ...]:
        """Which way, then how far."""
        is_proud = self.diameter < self.sharp_diameter
        right, other = ("proud", "below") if is_proud else ("below", "proud")
        which = ChoicePart(
            prompt="How does the head lie?",
            options=STATES,
            right=right,
            wrong={
                other: ("M15", MIXED),
                "flush": (
                    "M17",
                    "You took head and seat for equal. Compare the two diameters at the face.",
                ),
            },
        )
        return which, self.number(self.value(), self.mistakes, "By how much?")

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        off = abs(self.sharp_diameter - self.diameter)
        yield width_for_depth(off, self.included_angle)
        yield from height_slips(off / 2, self.included_angle)

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "The seat is narrower than the head: the head stands proud."
            if self.diameter < self.sharp_diameter
            else "The seat is wider than the head: the head lies below."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        names = ("{sharp_diameter}", "{diameter}")
        wide, narrow = names if self.diameter < self.sharp_diameter else reversed(names)
        yield from across_steps(wide, narrow, abs(self.sharp_diameter - self.diameter))
        yield from angle_steps(self.included_angle)
        how = "divide across by the tangent of half the angle"
        yield WorkedStep("the height of the step", "{1} ÷ {3}", self.value(), LENGTH, how)
