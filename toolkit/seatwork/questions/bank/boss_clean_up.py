"""Depth at which a spotface on a round boss is clean."""

from collections.abc import Iterable
from dataclasses import dataclass
from math import sqrt
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import FINE_LENGTH, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class BossCleanUp(NumberQuestion):
    """Asks how far below the crown of a round boss a spotface is clean."""

    id = "boss-clean-up"
    goal = "Find the depth at which a flat on a round boss is clean."
    difficulty = 3
    codes = ("F1",)
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")
    sizes: ClassVar = {"boss_diameter": LENGTH, "diameter": LENGTH}
    asked = (
        "A round boss, {boss_diameter} in diameter, is spotfaced to {diameter} across its side, "
        "square to a hole through its middle. How far below the crown does the flat lie when it "
        "is just clean all round?"
    )
    hints = (
        "Sketch the boss as a circle and the flat as a chord.",
        "Join the center of the circle to one end of the chord and to its middle.",
        "That is a right triangle: two of its sides are known.",
    )

    boss_diameter: float
    diameter: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a boss of 1-1/2 to 3 in and a flat of .4 to .65 of it."""
        boss = step_between(rng, 1.5, 3, 0.125)
        flat = round(boss * pick(rng, (0.4, 0.45, 0.5, 0.55, 0.6, 0.65)) * 16) / 16
        return cls(boss_diameter=boss * INCH, diameter=flat * INCH)

    def value(self) -> float:
        """Return the depth below the crown [mm]."""
        return _sagitta(self.boss_diameter / 2, self.diameter / 2) or 0.0

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        radius, half = self.boss_diameter / 2, self.diameter / 2
        yield slip(
            "M13",
            _sagitta(radius, self.diameter),
            "You used the whole flat. The triangle has half of it.",
        )
        yield slip(
            "M13",
            _sagitta(self.boss_diameter, half),
            "You used the diameter of the boss. The triangle has its radius.",
        )
        yield slip(
            "M13",
            self.diameter**2 / radius,
            "You used the rule of thumb without its 8. It is the square of the flat over 8 "
            "times the radius.",
        )
        yield slip(
            "M24",
            radius - (_sagitta(radius, half) or 0.0),
            "You gave the height above the middle. You were asked for the depth below the crown.",
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        radius, half = self.boss_diameter / 2, self.diameter / 2
        yield WorkedStep("the radius of the boss", "{boss_diameter} ÷ 2", radius, FINE_LENGTH)
        yield WorkedStep("half the flat", "{diameter} ÷ 2", half, FINE_LENGTH)
        label, above = "the height of the flat above the middle", radius - self.value()
        yield WorkedStep(label, "√(({0})² − ({1})²)", above, FINE_LENGTH)
        how = "take that height off the radius"
        yield WorkedStep("the depth below the crown", "{0} − {2}", self.value(), LENGTH, how)


def _sagitta(radius: float, half: float) -> float | None:
    """Return the height of an arc over half its chord, None if the chord is too long."""
    return radius - sqrt(radius**2 - half**2) if half < radius else None
