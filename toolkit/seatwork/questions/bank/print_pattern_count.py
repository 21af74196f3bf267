"""How many seats a job has: count, flanges and parts."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, COUNT, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import WHOLE, PrintQuestion
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import Part
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintPatternCount(PrintQuestion):
    """Asks how many seats a job has in all."""

    id = "print-pattern-count"
    goal = "Count the seats of a job before the cutter is set up."
    difficulty = 1
    codes = ("N1", "W1")
    shape = "pattern"
    sizes: ClassVar = {
        "count": COUNT,
        "parts_made": COUNT,
        "hole_diameter": LENGTH,
        "diameter": LENGTH,
        "included_angle": ANGLE,
    }
    before = "The part has two flanges, and {parts_made} parts are made."
    hints = (
        "A number with X right behind it is a count. Of what?",
        "How many flanges has a part, and how many parts are there?",
    )

    count: int
    parts_made: int
    hole_diameter: float
    diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a count on each of two flanges and a number of parts."""
        return cls(
            count=pick(rng, (4, 6, 8)),
            parts_made=pick(rng, (7, 9, 12, 15, 20)),
            hole_diameter=0.201 * INCH,
            diameter=0.385 * INCH,
            included_angle=82.0,
        )

    def note(self) -> str:
        """Return the note."""
        return (
            f"{self.stated('count')}X ⌀{self.stated('hole_diameter')} THRU ⌵ "
            f"⌀{self.stated('diameter')} X {self.stated('included_angle')}, EACH FLANGE"
        )

    @property
    def parts(self) -> tuple[Part, ...]:
        """How many seats in all."""
        count, made = self.count, self.parts_made
        return (
            self.number(
                COUNT,
                2 * count * made,
                WHOLE,
                "How many seats are cut in all?",
                slip("M65", 2 * count, "You counted one part. All of them are made."),
                slip("M65", count * made, "You counted one flange of each part. There are two."),
                slip(
                    "M65",
                    count,
                    "You counted one flange of one part. Read on to the end of the note.",
                ),
                slip("M15", count + 2 + made, "You added. So many on each is multiplied."),
                slip("M65", 2 * made, "You counted one seat on each flange. The note has more."),
            ),
        )

    def working(self) -> Iterator[WorkedStep]:
        """Yield the seats of one part, then of all."""
        one = 2 * self.count
        yield WorkedStep("the seats of one part", "{count} × 2", one, COUNT, code="M65")
        yield WorkedStep(
            "the seats of all parts", "{0} × {parts_made}", one * self.parts_made, COUNT
        )
