"""A question type to begin with: copied into a workbook's ``questions/`` folder."""

TEMPLATE = '''"""One line: what this question asks for."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.questions import LENGTH, Mistake, NumberQuestion, Tolerance, pick, slip


@dataclass(frozen=True, slots=True, kw_only=True)
class MyQuestion(NumberQuestion):
    """Asks for the diameter of a hole with a chamfer on it."""

    id = "my-question"  # the name a sheet uses
    goal = "Say in one sentence what a learner can do after it."
    difficulty = 1  # 1, 2 or 3
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "Say why just this much is accepted.")
    sizes: ClassVar = {"hole_diameter": LENGTH, "leg": LENGTH}
    asked = (
        "A hole of {hole_diameter} gets a chamfer with a leg of {leg}. "
        "How wide is its mouth?"
    )
    hints = ("A first step, without the formula.", "A second step.")

    hole_diameter: float
    leg: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw from sizes a shop really has, in mm."""
        return cls(hole_diameter=pick(rng, (6.6, 9.0, 11.0)), leg=pick(rng, (0.5, 0.8, 1.0)))

    def value(self) -> float:
        """Return the right answer [mm]."""
        return self.hole_diameter + 2 * self.leg

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips, each with what it gives."""
        yield slip("M41", self.hole_diameter + self.leg)

    def worked(self) -> str:
        """Return the answer worked out, with its triangle in words."""
        return f"{self.said('hole_diameter')} + 2 × {self.said('leg')} = {self.show(self.value())}."
'''
