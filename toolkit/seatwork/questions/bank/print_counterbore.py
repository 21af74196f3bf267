"""A counterbore note: the bore, its depth, and the floor left under the head."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import COUNT, LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import READ, STOP, PrintQuestion, read_off
from seatwork.questions.shared.real_sizes import socket_cap
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.parts import Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintCounterbore(PrintQuestion):
    """Asks for the bore, its depth, and how thick the floor under the head is."""

    id = "print-counterbore"
    goal = "Read a counterbore note and see what is left under the head."
    difficulty = 1
    codes = ("N1", "B1")
    shape = "bore"
    sizes: ClassVar = {"count": COUNT} | lengths("hole_diameter", "diameter", "depth", "thickness")
    before = "The plate is {thickness} thick."
    hints = (
        "⌴ stands before the bore, ↧ before its depth.",
        "The bore is cut from the face down. What is left of the plate under it?",
    )

    count: int
    hole_diameter: float
    diameter: float
    depth: float
    thickness: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a socket head cap screw with its hole, a bore round it and a plate."""
        screw = socket_cap(rng)
        return cls(
            count=pick(rng, (2, 3, 4, 6)),
            hole_diameter=screw.hole_diameter,
            diameter=screw.head_diameter + pick(rng, (1 / 32, 1 / 16)) * INCH,
            depth=screw.height + 0.010 * INCH,
            thickness=step_between(rng, 0.625, 1.25, 0.125) * INCH,
        )

    def note(self) -> str:
        """Return the note."""
        return (
            f"{self.stated('count')}X ⌀{self.stated('hole_diameter')} THRU ⌴ "
            f"⌀{self.stated('diameter')} ↧{self.stated('depth')}"
        )

    @property
    def floor(self) -> float:
        """What is left of the plate under the bore [mm]."""
        return self.thickness - self.depth

    def is_clear(self) -> bool:
        """Whether .12 in are left under the bore and the slips stand apart."""
        return self.floor >= 0.12 * INCH and Question.is_clear(self)

    @property
    def parts(self) -> tuple[Part, ...]:
        """The bore, its depth, the floor."""
        thick, depth = self.thickness, self.depth
        bore = self.length(
            self.diameter,
            READ,
            "Diameter of the bore?",
            slip("M44", self.hole_diameter, "You gave the hole. The bore stands behind ⌴."),
            slip("M13", self.diameter / 2, "You gave the radius. ⌀ stands before a diameter."),
        )
        deep = self.length(
            depth,
            READ,
            "Depth of the bore?",
            slip("M44", self.diameter, "You gave the bore's width. Its depth stands behind ↧."),
            slip("M24", self.floor, "You gave what is left under the bore. ↧ is what is cut."),
        )
        floor = self.length(
            self.floor,
            STOP,
            "How thick is the floor under the head?",
            slip("M24", depth, "You gave the depth itself. The floor is what is left under it."),
            slip(
                "M44",
                thick - self.diameter,
                "You took off the width of the bore. Its depth stands behind ↧.",
            ),
            slip(
                "M44",
                thick - self.hole_diameter,
                "You took off the hole. The depth of the bore stands behind ↧.",
            ),
            slip("M15", thick + depth, "You added. What is cut is taken off the plate."),
            slip("M65", thick - 2 * depth, "You cut from both faces. The note has one bore."),
        )
        return (bore, deep, floor)

    def working(self) -> Iterator[WorkedStep]:
        """Yield what is read off, then the floor."""
        yield read_off("the diameter of the bore", self.diameter, 0)
        yield read_off("the depth of the bore", self.depth, 1)
        yield WorkedStep("the floor", "{thickness} − {depth}", self.floor, LENGTH)
