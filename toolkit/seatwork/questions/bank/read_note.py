"""Reading the note of a countersunk hole."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, COUNT, LENGTH
from seatwork.questions.shared.print_question import READ, WHOLE, PrintQuestion, read_off
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import Part
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep

ANGLES = Tolerance("0.5", "0.5", "Angles in notes are whole degrees, half a degree is rounding.")


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadNote(PrintQuestion):
    """Asks for the fields of a note: count, hole, seat, angle."""

    id = "read-note"
    goal = "Read a countersink note field by field."
    difficulty = 1
    codes = ("N1",)
    sizes: ClassVar = {
        "count": COUNT,
        "hole_diameter": LENGTH,
        "diameter": LENGTH,
        "included_angle": ANGLE,
    }
    hints = (
        "A number with X right behind it, no space, is a count.",
        "⌀ stands before a diameter; the sign before it says of what. ⌵ is a countersink.",
    )

    count: int
    hole_diameter: float
    diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a count, a flat head and an angle."""
        head = flat_head(rng)
        return cls(
            count=pick(rng, (2, 3, 4, 5, 6, 8, 10, 12)),
            hole_diameter=head.hole_diameter,
            diameter=head.sharp_diameter,
            included_angle=pick(rng, (82.0, 90.0, 100.0)),
        )

    def note(self) -> str:
        """Return the note."""
        stated = {name: self.stated(name) for name in self.sizes}
        return "{count}X ⌀{hole_diameter} THRU ⌵ ⌀{diameter} X {included_angle}".format(**stated)

    @property
    def parts(self) -> tuple[Part, ...]:
        """The four fields."""
        hole, seat = self.hole_diameter, self.diameter
        in_hole = slip(
            "M44", seat, "You took the diameter of the seat. Look which number stands behind ⌵."
        )
        in_seat = slip(
            "M44", hole, "You took the diameter of the hole. Look which number stands before THRU."
        )
        half = slip("M01", self.included_angle / 2, "You gave half the angle. Notes give it whole.")
        return (
            self.number(COUNT, self.count, WHOLE, "How many holes?"),
            self.length(hole, READ, "Diameter of the holes?", in_hole, slip("M13", hole / 2)),
            self.length(
                seat, READ, "Diameter of the seat at the face?", in_seat, slip("M13", seat / 2)
            ),
            self.number(ANGLE, self.included_angle, ANGLES, "Included angle of the seat?", half),
        )

    def because(self) -> str:
        """Return the fields in order."""
        return (
            "In order: count, hole and how deep it goes, the sign of the cut, its size, its angle."
        )

    def working(self) -> Iterator[WorkedStep]:
        """Yield the four fields."""
        yield read_off("the count of holes", self.count, 0, COUNT)
        yield read_off("the diameter of the holes", self.hole_diameter, 1)
        yield read_off("the diameter of the seat at the face", self.diameter, 2)
        yield read_off("the included angle", self.included_angle, 3, ANGLE)
