"""A hole note in the ISO way: the bore above the line, the hole below it."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import COUNT, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import PrintQuestion, read_off
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import Part
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep

SCREWS = (
    (5.5, 10.0, 5.4),
    (6.6, 11.0, 6.4),
    (9.0, 15.0, 8.6),
    (11.0, 18.0, 10.6),
    (13.5, 20.0, 12.6),
)
"""Hole, bore and depth for M5 to M12 [mm]: ISO 273 medium and DIN 974-1."""

READ_MM = Tolerance("0.002", "0.05", "A size in a note is read off exactly; this is rounding.")


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintSlashStack(PrintQuestion):
    """Asks for hole, bore and depth of a note written as ISO 15786 has it."""

    id = "print-slash-stack"
    goal = "Read a hole note in the ISO way."
    difficulty = 2
    codes = ("N1", "N2")
    shape = "bore"
    sizes: ClassVar = {"count": COUNT} | lengths("diameter", "depth", "hole_diameter")
    hints = (
        "What stands before the stroke is cut into the face; what stands behind it goes through.",
        "Two sizes with a sign between them are so wide by so deep. U means a flat floor.",
    )

    count: int
    diameter: float
    depth: float
    hole_diameter: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a count and a metric socket head cap screw's bore."""
        hole, bore, depth = pick(rng, SCREWS)
        return cls(
            system="metric",
            count=pick(rng, (2, 4, 6)),
            diameter=bore,
            depth=depth,
            hole_diameter=hole,
        )

    def stated(self, name: str) -> str:
        """Write a size as prints do, in millimeters with a comma."""
        said = PrintQuestion.stated(self, name)
        return said.replace(".", ",") if self.system == "metric" else said

    def note(self) -> str:
        """Return the note."""
        return (
            f"{self.stated('count')}× ⌀{self.stated('diameter')} × {self.stated('depth')} U / "
            f"⌀{self.stated('hole_diameter')}"
        )

    @property
    def parts(self) -> tuple[Part, ...]:
        """The hole, the bore, its depth."""
        hole, wide, deep = self.hole_diameter, self.diameter, self.depth
        unit = 1.0 if self.system == "metric" else INCH
        return (
            self.length(
                hole,
                READ_MM,
                "Diameter of the hole?",
                slip("M44", wide, "You gave the bore. The hole stands behind the stroke."),
                slip("M44", deep, "You gave the depth of the bore. ⌀ stands before a diameter."),
            ),
            self.length(
                wide,
                READ_MM,
                "Diameter of the bore?",
                slip("M44", hole, "You gave the hole. The bore stands before the stroke."),
                slip("M13", wide / 2, "You gave the radius. ⌀ stands before a diameter."),
            ),
            self.length(
                deep,
                READ_MM,
                "Depth of the bore?",
                slip("M44", hole, "You gave the hole. The depth stands behind ×."),
                slip("M44", wide, "You gave the bore's width. Its depth stands behind ×."),
                slip("M38", 10 * deep, "You missed the comma. It stands where a point would."),
                slip("M28", wide * deep / unit, "You multiplied. Here × is read as by."),
                slip("M13", deep / 2, "You halved the depth. Only a radius is a half."),
            ),
        )

    def working(self) -> Iterator[WorkedStep]:
        """Yield the three sizes."""
        yield read_off("the diameter of the hole", self.hole_diameter, 0)
        yield read_off("the diameter of the bore", self.diameter, 1)
        yield read_off("the depth of the bore", self.depth, 2)
