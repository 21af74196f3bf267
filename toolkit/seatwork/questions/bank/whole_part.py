"""A whole part as a chain: seat diameter, depth, spindle speed, time in the cut."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork import cutting
from seatwork.entries.measures import (
    ANGLE,
    FEED,
    FINE_LENGTH,
    LENGTH,
    RATIO,
    SECONDS,
    SPINDLE_SPEED,
    SURFACE_SPEED,
)
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.speed_steps import drill_speed_steps
from seatwork.questions.type.chain import ChainQuestion, Step
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slip_sentences import TOOK_OFF
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep, across_steps, angle_steps
from seatwork.seats import Countersink
from seatwork.seats.cones import half_tangent

FOOT = 0.3048
STOP = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")
CALIPER = Tolerance("0.003", "0.08", "A caliper across a seat's edge holds about .003 in.")
PLATE = Tolerance("12", "12", "The short formula with 4 is 4.7 % high, and good enough.")
WATCH = Tolerance("0.4", "0.4", "A stopwatch and a step of the machine hold no more than that.")


@dataclass(frozen=True, slots=True, kw_only=True)
class WholePart(ChainQuestion):
    """Asks for a seat from screw to time in the cut, one step from the other."""

    id = "whole-part"
    goal = "Take a seat from the screw to the machine, one step from the other."
    difficulty = 3
    codes = ("P1",)
    sizes: ClassVar = {
        "sharp_diameter": LENGTH,
        "below": LENGTH,
        "hole_diameter": LENGTH,
        "included_angle": ANGLE,
        "surface_speed": SURFACE_SPEED,
        "feed": FEED,
    }
    asked = (
        "The hopper plate gets seats of {included_angle} for {size} flat head screws, theoretical "
        "sharp diameter {sharp_diameter}, on holes of {hole_diameter}. The heads are to lie "
        "{below} below the face. The plate is drilled at {surface_speed}; this shop turns "
        "countersinks at half of that at their largest diameter, and feeds them {feed}. Travel "
        "starts at the hole's edge. Each step goes on from your own step before."
    )
    hints = (
        "First the diameter: flush would be the sharp diameter; deeper widens the seat.",
        "Then one side of the cone gives the depth, and the widest diameter the speed.",
        "Last: turns over the travel, turns in a second.",
    )

    size: str
    sharp_diameter: float
    below: float
    hole_diameter: float
    included_angle: float
    surface_speed: float
    feed: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head, an amount below, a speed and a feed."""
        head = flat_head(rng)
        return cls(
            size=head.size,
            sharp_diameter=head.sharp_diameter,
            below=step_between(rng, 0.008, 0.014, 0.001) * INCH,
            hole_diameter=head.hole_diameter,
            included_angle=82.0,
            surface_speed=pick(rng, (80.0, 90.0, 100.0, 110.0)) * FOOT,
            feed=pick(rng, (0.002, 0.003)) * INCH,
        )

    def depth(self, diameter: float) -> float:
        """Return the depth of a seat of that diameter [mm], zero if it is no seat."""
        if not self.hole_diameter < diameter < 1000:
            return 0.0
        return Countersink(
            diameter=diameter,
            hole_diameter=self.hole_diameter,
            included_angle=self.included_angle,
        ).depth

    def speed(self, diameter: float) -> float:
        """Return half the drilling speed at that diameter [rev/min]."""
        size = min(max(diameter, 0.1), 1000.0)
        return cutting.spindle_speed(cutting_speed=self.surface_speed, diameter=size) / 2

    def time(self, depth: float, speed: float) -> float:
        """Return the time in the cut [s]."""
        return depth / self.feed / max(speed, 1.0) * 60

    def steps(self) -> tuple[Step, ...]:
        """Return the four steps."""
        return self._diameter(), self._depth(), self._speed(), self._time()

    def _diameter(self) -> Step:
        sharp, wider = self.sharp_diameter, 2 * half_tangent(self.included_angle) * self.below
        return Step(
            prompt="Which diameter does the seat have at the face?",
            measure=LENGTH,
            accepted=CALIPER,
            formula=lambda _: sharp + wider,
            mistakes=lambda _: (
                slip("M23", sharp, "You gave the flush seat. The head is to lie below."),
                slip("M15", sharp - wider, TOOK_OFF),
            ),
        )

    def _depth(self) -> Step:
        slope, hole = half_tangent(self.included_angle), self.hole_diameter
        return Step(
            prompt="How deep is it, face to hole edge?",
            measure=LENGTH,
            accepted=STOP,
            formula=lambda own: self.depth(own[0]),
            mistakes=lambda own: (
                slip("M02", 2 * self.depth(own[0])),
                slip("M03", own[0] / 2 / slope),
                slip("M04", (own[0] - hole) / 2 * slope),
            ),
        )

    def _speed(self) -> Step:
        return Step(
            prompt="Which spindle speed is wanted?",
            measure=SPINDLE_SPEED,
            accepted=PLATE,
            formula=lambda own: self.speed(own[0]),
            mistakes=lambda own: (
                slip(
                    "M33",
                    2 * self.speed(own[0]),
                    "You left out the rule of the shop. It comes last.",
                ),
                slip(
                    "M33",
                    self.speed(own[0]) / 2,
                    "You used the rule of the shop twice. You need it once.",
                ),
            ),
        )

    def _time(self) -> Step:
        return Step(
            prompt="How many seconds is the cutter in the cut?",
            measure=SECONDS,
            accepted=WATCH,
            formula=lambda own: self.time(own[1], own[2]),
            mistakes=lambda own: (
                slip(
                    "M36",
                    self.time(own[1], own[2]) / 60,
                    "You found minutes. You were asked for seconds.",
                ),
                slip(
                    "M36",
                    own[1] / self.feed,
                    "You found the turns. You were asked for the seconds.",
                ),
            ),
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        diameter, depth, speed, time = self.values()
        yield from self._seat_working(diameter, depth)
        name, cutting_speed = "{3}", self.surface_speed
        yield from drill_speed_steps(name, diameter, cutting_speed, self.system, first=7, part=2)
        how = "halve it: that is the rule of this shop"
        yield WorkedStep("the speed wanted", "{8} ÷ 2", speed, SPINDLE_SPEED, how, part=2)
        yield WorkedStep("the turns of the travel", "{6} ÷ {feed}", depth / self.feed, RATIO)
        yield WorkedStep("the turns in a second", "{9} ÷ 60", speed / 60, RATIO)
        how = "divide the turns by the turns in a second"
        yield WorkedStep("the time in the cut", "{10} ÷ {11}", time, SECONDS, how)

    def _seat_working(self, diameter: float, depth: float) -> Iterable[WorkedStep]:
        """Yield the steps to the diameter, then to the depth."""
        yield from angle_steps(self.included_angle, first=0, part=0)
        label, grown = "how much wider the seat is", diameter - self.sharp_diameter
        how = "double the tangent and multiply by the amount below"
        yield WorkedStep(label, "2 × {1} × {below}", grown, FINE_LENGTH, how, part=0)
        label, sum_ = "the diameter of the seat", "{sharp_diameter} + {2}"
        yield WorkedStep(label, sum_, diameter, LENGTH, "add it to the sharp diameter", part=0)
        difference = diameter - self.hole_diameter
        yield from across_steps("{3}", "{hole_diameter}", difference, first=4, part=1)
        how = "divide across by the tangent of half the angle"
        yield WorkedStep("the depth", "{5} ÷ {1}", depth, LENGTH, how, part=1)
