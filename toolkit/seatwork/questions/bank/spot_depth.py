"""Depth of a cone on solid metal: a spot for a hole to come."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.seat_question import SeatQuestion, height_slips
from seatwork.questions.shared.wrong_trig import half_sine
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, angle_steps


@dataclass(frozen=True, slots=True, kw_only=True)
class SpotDepth(SeatQuestion):
    """Asks how deep the point of a spotting drill goes for a mouth of that diameter."""

    id = "spot-depth"
    goal = "Spot solid metal so that the chamfer is there before the hole is drilled."
    difficulty = 2
    codes = ("E1", "T1")
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")
    sizes: ClassVar = {"diameter": LENGTH, "hole_diameter": LENGTH, "included_angle": ANGLE}
    asked = (
        "A hole of {hole_diameter} will be drilled later. Before that, the solid face is spotted "
        "with a pointed tool of {included_angle} included angle until the mouth measures "
        "{diameter}. How deep does the point go below the face?"
    )
    hints = (
        "Draw what is cut now, not what will be there after drilling.",
        "The cone runs down to a point: the whole mouth belongs to it.",
        "One side is a triangle with half the mouth along the face.",
    )

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a clearance hole and a mouth .030 to .060 in wider."""
        hole = flat_head(rng).hole_diameter
        return cls(
            diameter=hole + step_between(rng, 0.030, 0.060, 0.002) * INCH,
            hole_diameter=hole,
            included_angle=pick(rng, (82.0, 100.0, 120.0)),
        )

    def value(self) -> float:
        """Return the depth of the point [mm]."""
        return self.seat().apex_depth

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        seat, half = self.seat(), self.diameter / 2
        yield from height_slips(half, self.included_angle)
        yield slip("M48", seat.depth, "You took the hole off. It is not drilled yet.")
        yield slip("M09", half * seat.tangent, twin_of="M04")
        yield slip("M08", half / half_sine(self.included_angle))

    def because(self) -> str:
        """Return why these are the steps."""
        return "The face is solid, so the cone is whole."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        half = self.diameter / 2
        yield WorkedStep("half the mouth", "{diameter} ÷ 2", half, FINE_LENGTH, code="M52")
        yield from angle_steps(self.included_angle, first=1)
        how = "divide half the mouth by the tangent of half the angle"
        yield WorkedStep("the depth of the point", "{0} ÷ {2}", self.value(), LENGTH, how)
