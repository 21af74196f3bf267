"""The deepest counterbore that leaves a floor."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class DeepestBore(NumberQuestion):
    """Asks how deep a counterbore may be for a floor that must stay."""

    id = "deepest-bore"
    goal = "Keep the floor under a head thick enough."
    difficulty = 1
    codes = ("B1",)
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "Plate and floor are stated to .001 in.")
    sizes: ClassVar = {"thickness": LENGTH, "floor": LENGTH, "drill_point": LENGTH}
    asked = (
        "A plate is {thickness} thick. A counterbore must leave a floor of at least {floor} "
        "under the head. The through hole is already there; its drill had a point "
        "{drill_point} long. How deep may the counterbore be at most?"
    )
    hints = (
        "What is cut and what is left make up the plate.",
        "Which of the three numbers has nothing to do with it?",
    )

    thickness: float
    floor: float
    drill_point: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a plate of 1/2 to 1-1/4 in and a floor of a quarter to two fifths of it."""
        plate = step_between(rng, 0.5, 1.25, 0.0625)
        return cls(
            thickness=plate * INCH,
            floor=round(plate * pick(rng, (0.25, 0.3, 0.35, 0.4)), 2) * INCH,
            drill_point=pick(rng, (0.081, 0.094, 0.122, 0.141)) * INCH,
        )

    def value(self) -> float:
        """Return the greatest depth [mm]."""
        return self.thickness - self.floor

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip(
            "M24", self.floor, "You gave the floor itself. You were asked for the depth above it."
        )
        yield slip(
            "M12",
            self.thickness - self.floor - self.drill_point,
            "You counted the point of the drill. The hole goes through.",
        )
        yield slip("M15", self.thickness + self.floor)

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "What is cut and what is left make up the plate. "
            "The drill's point is gone with the hole."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        yield WorkedStep("the depth of the bore", "{thickness} − {floor}", self.value(), LENGTH)
