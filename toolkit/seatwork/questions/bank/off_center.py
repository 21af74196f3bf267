"""A seat beside the axis of its hole."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.quantities import INCH
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.measures import ANGLE, FINE_LENGTH, LENGTH
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class OffCenter(NumberQuestion):
    """Asks how far a head that is held central stands proud in an off-center seat."""

    id = "off-center"
    goal = "See that a seat beside its hole lifts a head held central."
    difficulty = 3
    codes = ("S6",)
    unmarked = "where it lies would give it away"
    measure = FINE_LENGTH
    accepted = Tolerance("0.0002", "0.005", "Small differences are worked to .0001 in.")
    sizes: ClassVar = {"offset": LENGTH, "included_angle": ANGLE}
    asked = (
        "A seat of {included_angle} was cut {offset} beside the axis of its hole. The flat "
        "head screw, same angle and the diameter of the seat, is held on the axis of the hole "
        "by the tapped part below. How far does its head stand proud?"
    )
    hints = (
        "Seen in section, the seat is shifted sideways under the head. Which side touches?",
        "On that side the head must rise until its slope clears the shifted one.",
    )

    offset: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw an offset of .005 to .020 in."""
        return cls(
            offset=step_between(rng, 0.006, 0.020, 0.001) * INCH,
            included_angle=pick(rng, (60.0, 82.0, 100.0, 120.0)),
        )

    def value(self) -> float:
        """Return how far the head stands proud [mm]."""
        return self.offset / half_tangent(self.included_angle)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        slope = half_tangent(self.included_angle)
        yield slip("M17", 0.0, "nothing; the tapped part below keeps the screw from shifting")
        yield slip("M14", self.offset, "the offset itself; the slope turns it into height")
        yield slip("M04", self.offset * slope)
        yield slip("M02", 2 * self.offset / slope)
        yield slip("M13", self.offset / 2 / slope, "half the offset; one side has all of it")

    def worked(self) -> str:
        """Return the answer worked out."""
        slope = half_tangent(self.included_angle)
        return (
            f"One side of the seat stands {self.stated('offset')} closer. To clear it on a slope "
            f"with tangent {slope:.4f}, the head rises {self.stated('offset')} / {slope:.4f} = "
            f"{self.show(self.value())}."
        )
