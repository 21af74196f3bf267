"""MAX and MIN on one note: the nearer wall decides."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import STOP, PrintQuestion
from seatwork.questions.shared.real_sizes import socket_cap
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep

RULES = (
    ("max", "MAX, the depth of the bore"),
    ("floor", "MIN, the floor under it"),
    ("both", "both at the same depth"),
)
PASSED = "You took the wall that comes later. Which one does the cutter meet first?"
BOTH = "You let both decide. They lie at two depths; the cutter meets one first."


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintMaxMin(PrintQuestion):
    """Asks which of MAX depth and MIN floor decides, and how deep the bore may be."""

    id = "print-max-min"
    goal = "Obey MAX and MIN together."
    difficulty = 2
    codes = ("N1", "B1")
    shape = "bore"
    sizes: ClassVar = lengths("hole_diameter", "diameter", "most", "least_floor", "thickness")
    before = "The plate is {thickness} thick."
    hints = (
        "MAX is a wall for the depth. How deep may the bore be by MAX alone?",
        "MIN is a wall for what is left. How deep may the bore be by MIN alone?",
        "The cutter meets one of the two walls first.",
    )

    hole_diameter: float
    diameter: float
    most: float
    least_floor: float
    thickness: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a plate, a floor and a depth; each rule decides in about half of the forms."""
        thick, floor = pick(rng, (0.5, 0.625, 0.75, 0.875)), pick(rng, (0.12, 0.18, 0.25))
        screw = socket_cap(rng)
        off = step_between(rng, 0.02, 0.12, 0.01) * pick(rng, (1, -1))
        return cls(
            hole_diameter=screw.hole_diameter,
            diameter=screw.head_diameter + pick(rng, (1 / 32, 1 / 16)) * INCH,
            most=round(thick - floor + off, 2) * INCH,
            least_floor=floor * INCH,
            thickness=thick * INCH,
        )

    def note(self) -> str:
        """Return the note."""
        return (
            f"⌀{self.stated('hole_diameter')} THRU ⌴ ⌀{self.stated('diameter')} "
            f"↧{self.stated('most')} MAX, FLOOR {self.stated('least_floor')} MIN"
        )

    @property
    def by_floor(self) -> float:
        """How deep the bore may be by the floor alone [mm]."""
        return self.thickness - self.least_floor

    @property
    def deepest(self) -> float:
        """How deep the bore may be [mm]."""
        return min(self.most, self.by_floor)

    def is_clear(self) -> bool:
        """Whether the walls lie apart, a floor is left and the slips stand apart."""
        apart = abs(self.most - self.by_floor) >= 0.018 * INCH
        left = self.thickness - self.most >= 0.05 * INCH
        return apart and left and Question.is_clear(self)

    @property
    def parts(self) -> tuple[Part, ...]:
        """Which rule decides, and the deepest bore."""
        right, other = ("max", "floor") if self.most < self.by_floor else ("floor", "max")
        rule = ChoicePart(
            prompt="Which rule decides?",
            options=RULES,
            right=right,
            wrong={other: ("M66", PASSED), "both": ("M66", BOTH)},
        )
        later = max(self.most, self.by_floor)
        deep = self.length(
            self.deepest,
            STOP,
            "How deep may the bore be at most?",
            slip("M66", later, PASSED),
            slip(
                "M24",
                self.thickness - self.deepest,
                "You gave the floor that is left. You were asked for the bore.",
            ),
            slip("M10", self.thickness, "You gave the plate itself. A floor must be left."),
            slip("M44", self.least_floor, "You took the floor for the depth. FLOOR is left."),
            slip(
                "M49",
                (self.deepest + later) / 2,
                "You took the middle of the two walls. The nearer one may not be passed.",
            ),
        )
        return (rule, deep)

    def because(self) -> str:
        """Return what the two words mean."""
        return "MAX is a wall above, MIN is a wall below; the nearer one decides."

    def working(self) -> Iterator[WorkedStep]:
        """Yield how deep each rule allows, and the less deep of the two."""
        yield WorkedStep("the depth by MAX", "", self.most, LENGTH, "read MAX off the note")
        yield WorkedStep("the depth by MIN", "{thickness} − {least_floor}", self.by_floor, LENGTH)
        yield WorkedStep(
            "the deepest bore", "the less of {0} and {1}", self.deepest, LENGTH, "take the less"
        )
