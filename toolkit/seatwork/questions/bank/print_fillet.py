"""The fillet under a head: whether the hole's edge is broken for it, and how wide."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import FINE_LENGTH, LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import SUM, PrintQuestion
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep

SCREWS = (
    ("5/16", 0.3125, 0.328, 0.346, 0.469, 0.312),
    ("3/8", 0.375, 0.391, 0.415, 0.562, 0.375),
    ("7/16", 0.4375, 0.453, 0.483, 0.656, 0.438),
    ("1/2", 0.5, 0.516, 0.552, 0.750, 0.500),
    ("5/8", 0.625, 0.641, 0.689, 0.938, 0.625),
    ("3/4", 0.75, 0.766, 0.828, 1.125, 0.750),
)
"""Size, thread, close hole, fillet, head and its height [in]: the counterbore list beside ASME
B18.3, from memory; what counts is printed in the question."""

ANSWERS = (
    ("yes", "yes, the fillet is wider than the hole"),
    ("no", "no, the fillet goes into the hole"),
)
STANDS = "You left the edge sharp. The screw drops in, but its head stands on the fillet."
NONE = "You broke an edge that needs it not. Hold the fillet against the hole."


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintFillet(PrintQuestion):
    """Asks whether the edge of the hole is broken for the fillet under a head, and by how much."""

    id = "print-fillet"
    goal = "Give the fillet under a head room at the mouth of its hole."
    difficulty = 3
    codes = ("B1", "N2")
    shape = "bore"
    sizes: ClassVar = lengths("thread", "hole_diameter", "fillet", "bore", "depth")
    before = (
        "The {size} socket head cap screw measures {thread} over its thread. The fillet under "
        "its head reaches ⌀{fillet}."
    )
    hints = (
        "The fillet is the round corner under the head. Does it go into the hole?",
        "Both sides of the hole are broken. One leg is one side.",
    )

    size: str
    thread: float
    hole_diameter: float
    fillet: float
    bore: float
    depth: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a socket head cap screw; in a fifth of the forms its hole is wide enough."""
        size, thread, hole, fillet, head, height = pick(rng, SCREWS)
        wide = rng.random() < 0.2
        return cls(
            size=size,
            thread=thread * INCH,
            hole_diameter=(round(fillet + 0.006, 3) if wide else hole) * INCH,
            fillet=fillet * INCH,
            bore=(head + 1 / 32) * INCH,
            depth=(height + 0.010) * INCH,
        )

    def note(self) -> str:
        """Return the note."""
        return (
            f"⌀{self.stated('hole_diameter')} THRU ⌴ ⌀{self.stated('bore')} ↧{self.stated('depth')}"
        )

    @property
    def is_needed(self) -> bool:
        """Whether the fillet is wider than the hole."""
        return self.fillet > self.hole_diameter

    @property
    def past(self) -> float:
        """How far the fillet reaches past the hole's edge, or stays short of it [mm]."""
        return abs(self.fillet - self.hole_diameter) / 2

    @property
    def parts(self) -> tuple[Part, ...]:
        """Whether it is needed, and by how much."""
        right, other = ("yes", "no") if self.is_needed else ("no", "yes")
        needed = ChoicePart(
            prompt="Must the edge of the hole be broken for the fillet?",
            options=ANSWERS,
            right=right,
            wrong={other: ("M23", STANDS if self.is_needed else NONE)},
        )
        past = self.length(
            self.past,
            SUM,
            "On one side, how far does the fillet reach past the hole's edge, or stay short of it?",
            slip("M02", 2 * self.past, "You gave both sides. One side is half of it."),
            slip("M23", 0.0 if self.is_needed else None, STANDS),
            slip(
                "M20",
                (self.fillet - self.thread) / 2,
                "You measured from the screw. The edge is at the hole.",
            ),
            slip("M13", self.fillet, "You gave the whole fillet. Hold it against the hole."),
            slip(
                "M19",
                (self.hole_diameter - self.thread) / 2,
                "You gave the play of the screw in its hole. The fillet is wider than the screw.",
            ),
        )
        return (needed, past)

    def because(self) -> str:
        """Return what the fillet needs."""
        if self.is_needed:
            return "The fillet is wider than the hole: on a sharp edge the head would stand on it."
        return "The fillet is narrower than the hole: it goes in, and no edge break is needed."

    def working(self) -> Iterator[WorkedStep]:
        """Yield the difference and half of it."""
        wide, narrow = ("fillet", "hole_diameter")[:: 1 if self.is_needed else -1]
        both = 2 * self.past
        yield WorkedStep("both sides", f"{{{wide}}} − {{{narrow}}}", both, FINE_LENGTH, code="M02")
        label = "the least leg of the edge break" if self.is_needed else "the room on one side"
        yield WorkedStep(label, "{0} ÷ 2", self.past, LENGTH, "halve it")
