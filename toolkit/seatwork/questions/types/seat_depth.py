"""Depth of a countersink from its two diameters and its angle."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.questions import wrong_trig
from seatwork.questions.draws import pick, step_between
from seatwork.questions.measures import ANGLE, LENGTH
from seatwork.questions.question import NumberQuestion, Tolerance
from seatwork.questions.real_sizes import WRONG_STANDARD, flat_head
from seatwork.questions.slips import Mistake
from seatwork.seats import Countersink
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatDepth(NumberQuestion):
    """Asks how deep a cone is, from the face to the edge of the hole."""

    id = "seat-depth"
    goal = "Set a depth stop for a countersink from the diameters on the print."
    difficulty = 2
    measure = LENGTH
    accepted = Tolerance(
        inch="0.002", metric="0.05", reason="A depth stop is set and read to about .001 in."
    )
    sizes: ClassVar = {"diameter": LENGTH, "hole_diameter": LENGTH, "included_angle": ANGLE}
    hints = (
        "Draw one side of the cone: a triangle from the face down to the edge of the hole.",
        "Along the face that triangle is half as wide as the two diameters differ.",
        "The angle at its bottom is half the included angle. Which ratio holds both sides?",
    )

    diameter: float
    hole_diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head's seat, up to .012 in larger than the head."""
        head = flat_head(rng)
        return cls(
            diameter=head.sharp_diameter + 25.4 * step_between(rng, 0, 0.012, 0.001),
            hole_diameter=head.hole_diameter,
            included_angle=pick(rng, (82.0, 82.0, 100.0)),
        )

    def text(self) -> str:
        """Return what is asked."""
        return (
            f"A hole of {self.said('hole_diameter')} is countersunk to {self.said('diameter')} "
            f"at the face, {self.said('included_angle')} included angle. "
            "How deep is the cone, from the face down to the edge of the hole?"
        )

    def seat(self) -> Countersink:
        """Return the seat asked about."""
        return Countersink(
            diameter=self.diameter,
            hole_diameter=self.hole_diameter,
            included_angle=self.included_angle,
        )

    def value(self) -> float:
        """Return the depth [mm]."""
        return self.seat().depth

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        seat, half_width = self.seat(), (self.diameter - self.hole_diameter) / 2
        other = WRONG_STANDARD[self.included_angle]
        whole = wrong_trig.whole_angle_tangent(self.included_angle)
        radian = wrong_trig.radian_mode_tangent(self.included_angle)
        if whole:
            yield Mistake(
                code="M01",
                value=half_width / whole,
                sentence="the whole included angle in the tangent; the triangle holds half of it",
            )
        yield Mistake(
            code="M02",
            value=2 * seat.depth,
            sentence="the full difference of the diameters; one side of the cone has half of it",
        )
        yield Mistake(
            code="M03",
            value=seat.apex_depth,
            sentence="the depth to the point of the cone; this cone ends at the edge of the hole",
        )
        yield Mistake(
            code="M04",
            value=half_width * half_tangent(self.included_angle),
            sentence="times the tangent where it belongs below the line",
        )
        yield Mistake(
            code="M09",
            value=half_width * half_tangent(self.included_angle),
            sentence="the angle measured from the face; the included angle is measured across",
            twin_of="M04",
        )
        yield Mistake(
            code="M05",
            value=half_width / wrong_trig.half_sine(self.included_angle),
            sentence="the sine, which gives the length along the slope; depth is straight down",
        )
        if radian:
            yield Mistake(
                code="M06",
                value=half_width / radian,
                sentence="a calculator in radian mode; angles here are degrees",
            )
        yield Mistake(
            code="M07",
            value=half_width / half_tangent(other),
            sentence=f"an angle of {other:g}°; this seat is {self.said('included_angle')}",
        )

    def worked(self) -> str:
        """Return the answer worked out."""
        half_width = (self.diameter - self.hole_diameter) / 2
        return (
            f"One side of the cone is a triangle. Along the face it measures half of "
            f"{self.said('diameter')} less {self.said('hole_diameter')}: {self.fine(half_width)}. "
            f"The angle at its bottom is half of {self.said('included_angle')}, with tangent "
            f"{half_tangent(self.included_angle):.4f}. Depth = {self.fine(half_width)} / "
            f"{half_tangent(self.included_angle):.4f} = {self.show(self.value())}."
        )
