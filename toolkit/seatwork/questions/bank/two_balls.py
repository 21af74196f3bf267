"""Angle of a seat from two gage balls."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import ClassVar

from seatwork.entries.measures import FINE_LENGTH
from seatwork.questions.earlier.rounded_balls import RoundedBalls
from seatwork.questions.type.question import Question

BALL = replace(FINE_LENGTH, places={"inch": 5, "metric": 3})
"""A ball of the drawer, in 32nds of an inch: exact to five places."""

NEAR = 0.25  # deg; half of what is accepted


@dataclass(frozen=True, slots=True, kw_only=True)
class TwoBalls(RoundedBalls):
    """Asks for the included angle that two balls, stated as they are, in a seat tell."""

    id = "two-balls"
    version = 2
    angles: ClassVar = (60.0, 82.0, 90.0)
    earlier: ClassVar[Mapping[int, type[Question]]] = {1: RoundedBalls}
    sizes: ClassVar = {
        "small": BALL,
        "large": BALL,
        "small_top": FINE_LENGTH,
        "large_top": FINE_LENGTH,
    }

    def is_clear(self) -> bool:
        """Whether the stated sizes still give the angle that the seat was drawn with, too."""
        clear = RoundedBalls.is_clear(self)
        return clear and min(abs(self.value() - angle) for angle in self.angles) <= NEAR
