"""Quill travel from touching off with the lips on the edge of the hole."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.seat_question import SeatQuestion, height_slips
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, cone_steps


@dataclass(frozen=True, slots=True, kw_only=True)
class EdgeTravel(SeatQuestion):
    """Asks for the travel after the tool's lips touch the edge of a drilled hole."""

    id = "edge-travel"
    goal = "Set the stop from the moment the lips touch the edge of the hole."
    difficulty = 2
    codes = ("S4", "S5")
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "Touching off and a stop hold about .001 in each.")
    sizes: ClassVar = {
        "diameter": LENGTH,
        "hole_diameter": LENGTH,
        "nose_diameter": LENGTH,
        "included_angle": ANGLE,
    }
    asked = (
        "Countersink: {included_angle} included angle, flat nose of {nose_diameter}. Hole: "
        "{hole_diameter}. The seat is to measure {diameter} at the face. The tool comes down "
        "until its lips touch the edge of the hole. How far must the quill travel from there?"
    )
    hints = (
        "Draw the tool at the moment its lips touch. Where is its nose then?",
        "At that moment the cone is as wide at the face as the hole.",
        "The travel is the height between that width and the width of the finished seat.",
    )

    nose_diameter: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head's seat over its hole, and a nose that enters the hole."""
        head = flat_head(rng)
        return cls(
            diameter=head.sharp_diameter + step_between(rng, 0, 0.012, 0.002) * INCH,
            hole_diameter=head.hole_diameter,
            nose_diameter=step_between(rng, 0.060, 0.120, 0.005) * INCH,
            included_angle=pick(rng, (82.0, 82.0, 100.0)),
        )

    def value(self) -> float:
        """Return the travel [mm]."""
        return self.seat().travel_from_hole_edge()

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        seat, half = self.seat(), (self.diameter - self.hole_diameter) / 2
        yield slip("M11", seat.travel_from_face(self.nose_diameter))
        yield slip("M03", seat.apex_depth)
        yield slip("M12", seat.apex_depth, twin_of="M03")
        yield from height_slips(half, self.included_angle)

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "When the lips touch, the nose is down in the hole and no longer counts: the cone is "
            "as wide at the face as the hole."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        return cone_steps(self, "diameter", "hole_diameter", "the travel")
