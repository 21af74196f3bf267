"""Time in the cut of one seat."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.cutting import time_in_cut
from seatwork.entries.measures import FEED, LENGTH, RATIO, SECONDS, SPINDLE_SPEED
from seatwork.quantities import INCH
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep

FLUTES = (3, 4, 6)


@dataclass(frozen=True, slots=True, kw_only=True)
class CuttingTime(NumberQuestion):
    """Asks how long one seat takes at a speed and a feed."""

    id = "cutting-time"
    goal = "Work out the time in the cut from speed and feed."
    difficulty = 2
    codes = ("M2",)
    undrawn = "a travel and a clock; no part to show"
    measure = SECONDS
    accepted = Tolerance("0.2", "0.2", "A stopwatch in the hand holds two tenths of a second.")
    sizes: ClassVar = {"travel": LENGTH, "feed": FEED, "speed": SPINDLE_SPEED}
    asked = (
        "A countersink with {flutes} flutes turns at {speed} and is fed {feed}. From touching "
        "the edge of the hole it travels {travel}. How many seconds is it in the cut?"
    )
    hints = (
        "How many turns does the travel take?",
        "How many turns does the spindle make in a second?",
    )

    flutes: int
    travel: float
    feed: float
    speed: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a travel, a feed and a slow speed."""
        return cls(
            flutes=pick(rng, FLUTES),
            travel=step_between(rng, 0.090, 0.240, 0.002) * INCH,
            feed=pick(rng, (0.002, 0.003, 0.004, 0.005)) * INCH,
            speed=pick(rng, (115.0, 190.0, 210.0, 240.0, 300.0, 325.0)),
        )

    def value(self) -> float:
        """Return the time in the cut [s]."""
        return time_in_cut(travel=self.travel, spindle_speed=self.speed, feed=self.feed)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        right = self.value()
        yield slip(
            "M36", right / self.flutes, "You took the feed for each flute. It is for each turn."
        )
        yield slip(
            "M36", self.travel / self.feed, "You found the turns. You were asked for the seconds."
        )
        yield slip(
            "M36",
            right * self.flutes,
            "You shared the feed among the flutes. It is for the whole turn.",
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        yield WorkedStep(
            "the turns of the travel", "{travel} ÷ {feed}", self.travel / self.feed, RATIO
        )
        yield WorkedStep("the turns in a second", "{speed} ÷ 60", self.speed / 60, RATIO)
        how = "divide the turns by the turns in a second"
        yield WorkedStep("the time in the cut", "{0} ÷ {1}", self.value(), SECONDS, how)
