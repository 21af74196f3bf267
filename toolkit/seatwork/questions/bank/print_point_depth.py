"""How far the point of a drill reaches below the face."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import TWO_STOPS, PrintQuestion
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import Part
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep, angle_steps
from seatwork.seats.blind_holes import point_length
from seatwork.seats.cones import half_tangent

DRILLS = (
    ("#7", 0.201),
    ("F", 0.257),
    ("5/16", 0.3125),
    ("3/8", 0.375),
    ("27/64", 0.4219),
    ("1/2", 0.5),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintPointDepth(PrintQuestion):
    """Asks how deep the point of a drill goes whose full diameter has a printed depth."""

    id = "print-point-depth"
    goal = "Know that a printed drill depth is full diameter, and where the point ends."
    difficulty = 2
    codes = ("N1", "N2")
    shape = "hole"
    sizes: ClassVar = lengths("diameter", "depth") | {"point_angle": ANGLE}
    before = "The {name} drill measures {diameter} and has a point of {point_angle}."
    hints = (
        "To where does the printed depth run: to the tip, or as far as the hole is full width?",
        "The point is a cone as wide as the drill. Take one side of it.",
    )

    name: str
    diameter: float
    depth: float
    point_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a drill and a depth."""
        name, diameter = pick(rng, DRILLS)
        return cls(
            name=name,
            diameter=diameter * INCH,
            depth=pick(rng, (0.5, 0.62, 0.75, 0.88, 1.0)) * INCH,
            point_angle=118.0,
        )

    def note(self) -> str:
        """Return the note."""
        return f"{self.name} DRILL ↧{self.stated('depth')}"

    @property
    def point(self) -> float:
        """Length of the point [mm]."""
        return point_length(diameter=self.diameter, point_angle=self.point_angle)

    @property
    def parts(self) -> tuple[Part, ...]:
        """How far the point reaches."""
        depth, radius = self.depth, self.diameter / 2
        return (
            self.length(
                depth + self.point,
                TWO_STOPS,
                "How far below the face does the point reach?",
                slip(
                    "M10",
                    depth,
                    "You left the point out. A depth on a print is where full diameter ends.",
                ),
                slip("M15", depth - self.point, "You took the point off. It goes below the depth."),
                slip("M07", depth + radius, "You took a point of 90°. Read its angle again."),
                slip("M02", depth + 2 * self.point, "You took the whole width. Take half of it."),
                slip(
                    "M04",
                    depth + radius * half_tangent(self.point_angle),
                    "You multiplied by the tangent. Down is across divided by the tangent.",
                ),
            ),
        )

    def because(self) -> str:
        """Return what a printed depth means."""
        return "A depth on a print is full diameter; the point goes below it."

    def working(self) -> Iterator[WorkedStep]:
        """Yield one side of the point, its angle, its length, and where it ends."""
        radius = self.diameter / 2
        yield WorkedStep("across, half the drill", "{diameter} ÷ 2", radius, FINE_LENGTH)
        yield from angle_steps(self.point_angle, "{point_angle}", first=1)
        how = "divide across by the tangent"
        yield WorkedStep("the length of the point", "{0} ÷ {2}", self.point, FINE_LENGTH, how)
        yield WorkedStep("where the point ends", "{depth} + {3}", self.depth + self.point, LENGTH)
