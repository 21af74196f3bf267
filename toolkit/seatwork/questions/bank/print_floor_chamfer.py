"""A chamfer on the floor of a bore: from where the second sign counts."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import STOP, PrintQuestion
from seatwork.questions.shared.real_sizes import socket_cap
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import Part
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep, across_steps


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintFloorChamfer(PrintQuestion):
    """Asks how far below the outer face a chamfer on the floor of a bore ends."""

    id = "print-floor-chamfer"
    goal = "Know from where a second sign counts."
    difficulty = 3
    codes = ("N1", "B1")
    shape = "bore"
    sizes: ClassVar = lengths("hole_diameter", "diameter", "depth", "mouth") | {
        "included_angle": ANGLE
    }
    hints = (
        "Signs stand in the order of the cuts. What is there when the chamfer is cut?",
        "At 90° a chamfer is as deep as one side of it is wide.",
    )

    hole_diameter: float
    diameter: float
    depth: float
    mouth: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a socket head cap screw's bore and the break of its hole's edge."""
        screw = socket_cap(rng)
        return cls(
            hole_diameter=screw.hole_diameter,
            diameter=screw.head_diameter + INCH / 32,
            depth=screw.height + 0.010 * INCH,
            mouth=screw.hole_diameter + 2 * pick(rng, (0.008, 0.010, 0.012, 0.015)) * INCH,
            included_angle=90.0,
        )

    def note(self) -> str:
        """Return the note."""
        return (
            f"⌀{self.stated('hole_diameter')} THRU ⌴ ⌀{self.stated('diameter')} "
            f"↧{self.stated('depth')} ⌵ ⌀{self.stated('mouth')} X {self.stated('included_angle')}"
        )

    @property
    def leg(self) -> float:
        """Depth of the chamfer [mm]; at 90° it is one side."""
        return (self.mouth - self.hole_diameter) / 2

    @property
    def parts(self) -> tuple[Part, ...]:
        """Where the chamfer ends."""
        depth, leg = self.depth, self.leg
        return (
            self.length(
                depth + leg,
                STOP,
                "How far below the outer face does the chamfer end?",
                slip(
                    "M24",
                    leg,
                    "You counted from the outer face. The chamfer lies on the floor of the bore.",
                ),
                slip("M23", depth, "You stopped at the floor of the bore. The chamfer goes on."),
                slip("M02", depth + 2 * leg, "You took both sides. One side is half of it."),
                slip("M15", depth - leg, "You took the chamfer off. It goes down from the floor."),
                slip(
                    "M03",
                    depth + self.mouth / 2,
                    "You went down to the point of the cone. It ends at the hole.",
                ),
            ),
        )

    def because(self) -> str:
        """Return from where the chamfer counts."""
        return "What stands behind ⌴ is cut on the floor of the bore."

    def working(self) -> Iterator[WorkedStep]:
        """Yield one side of the chamfer, which at 90° is its depth, and where it ends."""
        yield from across_steps("{mouth}", "{hole_diameter}", 2 * self.leg)
        label = "down, as much as one side at 90°"
        yield WorkedStep(label, "{1}", self.leg, FINE_LENGTH)
        yield WorkedStep("the end of the chamfer", "{depth} + {2}", self.depth + self.leg, LENGTH)
