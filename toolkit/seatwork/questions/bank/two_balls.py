"""Angle of a seat from two gage balls."""

from collections.abc import Iterable
from dataclasses import dataclass
from math import asin, atan, degrees
from random import Random
from typing import ClassVar, Self

from seatwork.questions.shared.real_sizes import balls, flat_head
from seatwork.questions.type.draws import pick
from seatwork.questions.type.measures import ANGLE, FINE_LENGTH, LENGTH
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.seats.gaging import angle_from_two_balls, ball_top


@dataclass(frozen=True, slots=True, kw_only=True)
class TwoBalls(NumberQuestion):
    """Asks for the included angle that two balls in a seat tell."""

    id = "two-balls"
    goal = "Gage the angle of a seat with two balls."
    difficulty = 3
    codes = ("G1",)
    measure = ANGLE
    accepted = Tolerance("0.5", "0.5", ".001 in on the height of a ball is about half a degree.")
    sizes: ClassVar = {
        "small": LENGTH,
        "large": LENGTH,
        "small_top": FINE_LENGTH,
        "large_top": FINE_LENGTH,
    }
    asked = (
        "Two gage balls, {small} and {large} in diameter, are laid into a seat one after the "
        "other. The top of the small one stands {small_top} above the face, the top of the "
        "large one {large_top}. Which included angle does the seat have?"
    )
    hints = (
        "Work with the centers of the balls: each lies one radius under its top.",
        "Both centers are on the axis. How far apart are they?",
        "The radii differ by what the slope takes over that distance.",
    )

    small: float
    large: float
    small_top: float
    large_top: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a seat of 82°, 100° or 120° and two balls that touch its cone."""
        head, angle = flat_head(rng), pick(rng, (82.0, 100.0, 120.0))
        seat = head.seat(angle)
        fitting = balls(seat)
        half = len(fitting) // 2
        small, large = pick(rng, fitting[:half]), pick(rng, fitting[half:])
        return cls(
            small=small,
            large=large,
            small_top=max(ball_top(small, seat), 0.0),
            large_top=max(ball_top(large, seat), 0.0),
        )

    def centers_apart(self) -> float:
        """Return how far the centers of the balls lie apart [mm]."""
        return self.large_top - self.small_top - (self.large - self.small) / 2

    def is_clear(self) -> bool:
        """Whether both balls stand above the face and the slips stand apart."""
        apart = 0 < (self.large - self.small) / 2 < self.centers_apart()
        return self.small_top > 0.1 and apart and NumberQuestion.is_clear(self)

    def value(self) -> float:
        """Return the included angle [deg]."""
        return angle_from_two_balls(
            small_diameter=self.small,
            large_diameter=self.large,
            small_top=self.small_top,
            large_top=self.large_top,
        )

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        radii, apart = (self.large - self.small) / 2, self.centers_apart()
        tops = radii / (self.large_top - self.small_top)
        yield slip("M45", self.value() / 2, "half the angle; the included angle is twice that")
        yield slip("M45", 2 * degrees(atan(radii / apart)), "the tangent; here it is the sine")
        yield slip("M45", 2 * degrees(asin(tops)), "the tops' distance for that of the centers")
        yield slip("M09", 180 - self.value())

    def worked(self) -> str:
        """Return the answer worked out."""
        radii, apart = (self.large - self.small) / 2, self.centers_apart()
        return (
            f"The radii differ by {LENGTH.show_finely(radii, self.system)}, the centers lie "
            f"{FINE_LENGTH.show(apart, self.system)} apart. The sine of half the angle is "
            f"{radii / apart:.4f}: {self.fine(self.value() / 2)}, and twice that is "
            f"{self.show(self.value())}."
        )
