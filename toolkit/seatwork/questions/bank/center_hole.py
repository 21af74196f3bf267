"""The cone of a center hole for a lathe center."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork import hardware
from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.wrong_trig import half_sine
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, cone_steps
from seatwork.seats import Countersink
from seatwork.seats.cones import half_tangent

DRILLS = ("#4", "#5", "#6", "#7", "#8")  # smaller ones have cones too short to tell slips apart


@dataclass(frozen=True, slots=True, kw_only=True)
class CenterHole(NumberQuestion):
    """Asks how deep the cone of a center hole is for a mouth of that diameter."""

    id = "center-hole"
    version = 2
    goal = "Drill a center hole that carries a 60° lathe center."
    difficulty = 2
    codes = ("C1",)
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "A tailstock quill is read to about .001 in.")
    sizes: ClassVar = {"mouth": LENGTH, "pilot": LENGTH, "included_angle": ANGLE}
    asked = (
        "The crank shaft is turned between centers. A {name} center drill with a pilot of {pilot} "
        "and a cone of {included_angle} goes in until the mouth measures {mouth}. How deep is the "
        "cone, from the end of the shaft down to the edge of the pilot hole?"
    )
    hints = (
        "Draw the center hole cut in half. Which part of it is the cone?",
        "The cone begins at the edge of the small hole and ends at the mouth.",
        "One side leans by half the angle of a lathe center.",
    )

    name: str
    mouth: float
    pilot: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a center drill and a mouth below its body."""
        tool = hardware.center_drill(pick(rng, DRILLS))
        body = round(tool.body_diameter / INCH, 4)
        return cls(
            name=tool.name,
            mouth=step_between(rng, round(body - 0.030, 3), round(body - 0.010, 3), 0.002) * INCH,
            pilot=tool.drill_diameter,
            included_angle=tool.included_angle,
        )

    def cone(self) -> Countersink:
        """Return the cone asked about."""
        return Countersink(
            diameter=self.mouth, hole_diameter=self.pilot, included_angle=self.included_angle
        )

    def value(self) -> float:
        """Return the depth of the cone [mm]."""
        return self.cone().depth

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        half = (self.mouth - self.pilot) / 2
        yield slip("M07", half / half_tangent(82), "You used 82°. Lathe centers have 60°.")
        yield slip("M02", 2 * self.value())
        yield slip("M03", self.cone().apex_depth)
        yield slip("M04", half * half_tangent(60))
        yield slip("M01", half * half_tangent(60), twin_of="M04")
        yield slip("M08", half / half_sine(60))

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        return cone_steps(self, "mouth", "pilot", "the depth of the cone")
