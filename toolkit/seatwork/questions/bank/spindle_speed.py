"""Spindle speed of a countersink from the drilling speed and the shop's rule."""

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from math import pi
from random import Random
from typing import ClassVar, Self

from seatwork import cutting
from seatwork.entries.measures import SPINDLE_SPEED, SURFACE_SPEED, lengths
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.speed_steps import drill_speed_steps
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep

MATERIALS = (("1018 steel", 80, 110), ("gray iron", 60, 90), ("6061 aluminum", 150, 250))
FOOT = 0.3048
SHARE = 20  # 5 %


@dataclass(frozen=True, slots=True, kw_only=True)
class SpindleSpeed(NumberQuestion):
    """Asks for the spindle speed of a countersink at half the drilling speed."""

    id = "spindle-speed"
    goal = "Work out the spindle speed at the largest cutting diameter."
    difficulty = 2
    codes = ("M1",)
    unmarked = "a speed is no size of the part"
    measure = SPINDLE_SPEED
    accepted = Tolerance("5", "5", "5 %: the short formula with 4 is 4.7 % high, and good enough.")
    sizes: ClassVar = lengths("diameter", "hole_diameter") | {"surface_speed": SURFACE_SPEED}
    asked = (
        "A part of {material} is drilled at {surface_speed}. A seat of {diameter} at the face is "
        "countersunk on a hole of {hole_diameter}. This shop turns countersinks at half the "
        "drilling speed for their largest cutting diameter. Which spindle speed is wanted, before "
        "a step is chosen?"
    )
    hints = (
        "Which diameter of the cutter runs fastest over the metal?",
        "How long is the way round at that diameter, in the unit of the surface speed?",
        "The rule of the shop comes last.",
    )

    material: str
    surface_speed: float
    diameter: float
    hole_diameter: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a material, its speed and a flat head's seat."""
        material, slow, fast = pick(rng, MATERIALS)
        head = flat_head(rng)
        return cls(
            material=material,
            surface_speed=step_between(rng, slow, fast, 5) * FOOT,
            diameter=head.sharp_diameter,
            hole_diameter=head.hole_diameter,
        )

    def value(self) -> float:
        """Return the spindle speed [rev/min]."""
        full = cutting.spindle_speed(cutting_speed=self.surface_speed, diameter=self.diameter)
        return full / 2

    def allowed(self, value: float) -> Decimal:
        """Return 5 % of the speed, whole [rev/min]."""
        return Decimal(round(value / SHARE))

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        right = self.value()
        yield slip("M33", 2 * right, "You left out the rule of the shop. It comes last.")
        yield slip("M29", 2 * right, twin_of="M33")
        yield slip("M33", right / 2, "You used the rule of the shop twice. You need it once.")
        yield slip("M28", pi * right, "You left π out. The way round is π times the diameter.")
        yield slip("M32", right * self.diameter / self.hole_diameter)
        if self.system == "inch":
            yield slip("M28", right / 12, "You mixed feet and inches. 12 in make a foot.")

    def because(self) -> str:
        """Return why these are the steps."""
        return "The cutter is widest at the face, and there it runs fastest."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        yield from drill_speed_steps("{diameter}", self.diameter, self.surface_speed, self.system)
        how = "halve it: that is the rule of this shop"
        yield WorkedStep("the speed wanted", "{1} ÷ 2", self.value(), SPINDLE_SPEED, how)
