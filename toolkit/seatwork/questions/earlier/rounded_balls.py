"""Angle of a seat from two gage balls as version 1 asked it: balls rounded to a thousandth."""

from collections.abc import Iterable
from dataclasses import dataclass
from math import asin, atan, degrees
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_ANGLE, FINE_LENGTH, LENGTH, RATIO
from seatwork.questions.shared.real_sizes import balls, flat_head
from seatwork.questions.type.draws import pick
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.seats.gaging import angle_from_two_balls, ball_top

CLEAR_OF_SQUARE = 1.0
"""How far an angle from the axis and one from the face are apart to be two answers [deg]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundedBalls(NumberQuestion):
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

    angles: ClassVar = (82.0, 100.0, 120.0)
    small: float
    large: float
    small_top: float
    large_top: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a seat of one of the angles and two balls that touch its cone."""
        head, angle = flat_head(rng), pick(rng, cls.angles)
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
        yield slip(
            "M45", self.value() / 2, "You gave half the angle. The included angle is twice that."
        )
        yield slip(
            "M45", 2 * degrees(atan(radii / apart)), "You used the tangent. Here it is the sine."
        )
        yield slip(
            "M45",
            2 * degrees(asin(tops)),
            "You used how far the tops lie apart. The triangle has the centers.",
        )
        if abs(180 - 2 * self.value()) > CLEAR_OF_SQUARE:  # of 90° both readings are 90°
            yield slip("M09", 180 - self.value())

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        radii, apart, half = (self.large - self.small) / 2, self.centers_apart(), self.value() / 2
        tops = self.large_top - self.small_top
        label, sum_ = "the difference of the radii", "({large} − {small}) ÷ 2"
        yield WorkedStep(label, sum_, radii, FINE_LENGTH)
        label, sum_ = "the difference of the tops", "{large_top} − {small_top}"
        yield WorkedStep(label, sum_, tops, FINE_LENGTH)
        label, how = "how far the centers lie apart", "take the difference of the radii off"
        yield WorkedStep(label, "{1} − {0}", apart, FINE_LENGTH, how)
        how = "divide the difference of the radii by it: that is the sine of half the angle"
        yield WorkedStep("the sine of half the angle", "{0} ÷ {2}", radii / apart, RATIO, how)
        yield WorkedStep("half the angle", "angle with the sine {3}", half, FINE_ANGLE)
        yield WorkedStep("the included angle", "2 × {4}", 2 * half, ANGLE, "double half the angle")
