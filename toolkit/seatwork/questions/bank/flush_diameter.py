"""Which of a head's diameters the seat is cut to."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.questions.shared.real_sizes import ALL_FLAT_HEADS, flat_head_of
from seatwork.questions.type.draws import pick
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class FlushDiameter(NumberQuestion):
    """Asks for the diameter of a seat in which a head lies flush."""

    id = "flush-diameter"
    goal = "Pick the diameter of the head that a flush seat is cut to."
    difficulty = 1
    codes = ("S6",)
    measure = LENGTH
    accepted = Tolerance("0.003", "0.08", "A caliper across a seat's edge holds about .003 in.")
    sizes: ClassVar = {"sharp_diameter": LENGTH, "edge_diameter": LENGTH, "hole_diameter": LENGTH}
    asked = (
        "The list gives for a {size} flat head: theoretical sharp diameter {sharp_diameter}, "
        "greatest edge {edge_diameter}. Its hole is {hole_diameter}. The seat has the head's own "
        "angle. To which diameter must it be cut for the head to lie flush with the face?"
    )
    hints = (
        "The cone of the head goes on, in thought, beyond its rounded or flattened edge.",
        "Flush means that the flat top of the head lies in the face.",
        "In that plane the cone of head and seat have one diameter.",
    )

    size: str
    sharp_diameter: float
    edge_diameter: float
    hole_diameter: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head."""
        head = flat_head_of(pick(rng, ALL_FLAT_HEADS))
        return cls(
            size=head.size,
            sharp_diameter=head.sharp_diameter,
            edge_diameter=head.edge_diameter,
            hole_diameter=head.hole_diameter,
        )

    def value(self) -> float:
        """Return the diameter of the seat [mm]."""
        return self.sharp_diameter

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        middle = (self.sharp_diameter + self.edge_diameter) / 2
        yield slip("M16", self.edge_diameter)
        yield slip(
            "M16", middle, "You took the middle of sharp and edge. The cone of the head decides."
        )
        yield slip("M03", self.hole_diameter, "You took the hole. The head is wider than its hole.")
        yield slip(
            "M13",
            self.sharp_diameter / 2,
            "You gave half the diameter. A seat is called out whole.",
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "Head and seat are the same cone. Flush, the top of the head lies in the face, and "
            "there its cone has the theoretical sharp diameter, however its edge is rounded."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        yield WorkedStep("the diameter of the seat", "", self.value(), LENGTH)

    def remark(self) -> str:
        """Return what else they show."""
        return "Cut to the edge, the head would stand proud."
