"""Limits on flushness turned into limits on the diameter of the seat."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import SUM, PrintQuestion
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import Part
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, angle_steps
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintFlushLimits(PrintQuestion):
    """Asks for the least and the greatest diameter of a seat that keeps a head below flush."""

    id = "print-flush-limits"
    goal = "Turn limits on flushness into limits on the diameter."
    difficulty = 3
    codes = ("N1", "S6")
    sizes: ClassVar = lengths("sharp_diameter", "least_below", "greatest_below") | {
        "included_angle": ANGLE
    }
    before = (
        "The head of the screw has {included_angle} and measures {sharp_diameter} across its "
        "theoretical sharp edge."
    )
    hints = (
        "At which diameter of the seat would the head be just flush?",
        "A head that goes down leaves a cone above it that opens on both sides.",
        "You know down and half the angle. What is across?",
    )

    size: str
    sharp_diameter: float
    least_below: float
    greatest_below: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head and how far below it may lie."""
        head = flat_head(rng)
        return cls(
            size=head.size,
            sharp_diameter=head.sharp_diameter,
            least_below=pick(rng, (0.002, 0.004, 0.005)) * INCH,
            greatest_below=pick(rng, (0.015, 0.018, 0.020, 0.025)) * INCH,
            included_angle=82.0,
        )

    def note(self) -> str:
        """Return the note."""
        limits = f"{self.stated('least_below')} TO {self.stated('greatest_below')}"
        return f"⌵ FOR {self.size} FLAT HEAD, {limits} BELOW FLUSH"

    def growth(self, below: float) -> float:
        """Return how much wider than the head the seat is, both sides together [mm]."""
        return 2 * below * half_tangent(self.included_angle)

    @property
    def parts(self) -> tuple[Part, ...]:
        """The least and the greatest diameter."""
        least, greatest = self.least_below, self.greatest_below
        return (
            self.length(
                self.sharp_diameter + self.growth(least),
                SUM,
                "Least diameter of the seat at the face?",
                *self._either(least, greatest),
            ),
            self.length(
                self.sharp_diameter + self.growth(greatest),
                SUM,
                "Greatest diameter of the seat at the face?",
                *self._either(greatest, least),
                *self._widened(greatest),
            ),
        )

    def _either(self, below: float, other: float) -> Iterator[Mistake]:
        """Yield the slips that stand apart for a small limit, too."""
        sharp = self.sharp_diameter
        yield slip(
            "M15",
            sharp - self.growth(below),
            "You took off where you add. A head that lies deeper wants a wider seat.",
        )
        yield slip("M49", sharp + self.growth(other), "You took the other limit. Read both again.")

    def _widened(self, below: float) -> Iterator[Mistake]:
        """Yield the slips of how much the cone opens."""
        sharp = self.sharp_diameter
        yield slip(
            "M14",
            sharp + below,
            "You added the depth to the diameter. The cone opens on two sides, by its slope.",
        )
        yield slip(
            "M13",
            sharp + self.growth(below) / 2,
            "You added one side. The cone opens on both sides of the head.",
        )
        yield slip("M07", sharp + 2 * below, "You added twice the depth. That holds at 90° only.")

    def because(self) -> str:
        """Return what a depth below makes of a diameter."""
        return "Flush, the seat is as wide as the head's sharp edge; deeper, it opens on two sides."

    def working(self) -> Iterator[WorkedStep]:
        """Yield the angle, then for each limit one side and the diameter."""
        yield from angle_steps(self.included_angle, first=0, part=0)
        for part, name in enumerate(("least_below", "greatest_below")):
            below, first = getattr(self, name), 2 + 2 * part
            yield WorkedStep(
                "across, on one side",
                f"{{{name}}} × {{1}}",
                self.growth(below) / 2,
                FINE_LENGTH,
                "multiply down by the tangent",
                part=part,
            )
            yield WorkedStep(
                f"the {('least', 'greatest')[part]} diameter",
                f"{{sharp_diameter}} + 2 × {{{first}}}",
                self.sharp_diameter + self.growth(below),
                LENGTH,
                part=part,
            )
