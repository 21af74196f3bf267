"""The step of a machine as version 2 asked it: a number, and some step was always slow enough."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.cutting import pick_step
from seatwork.entries.measures import SPINDLE_SPEED
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep

MACHINES = {
    "bench drill press": (240, 410, 680, 1150, 1900, 2900),
    "knee mill": (80, 135, 210, 325, 550, 910, 1500, 2720),
    "lathe": (70, 115, 190, 310, 520, 840, 1400),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class TypedSpeedStep(NumberQuestion):
    """Asks for the step to set: the next one down, never above the limit."""

    id = "speed-step"
    version = 2
    goal = "Set the next step down, never above a limit."
    difficulty = 1
    codes = ("M2",)
    undrawn = "the steps of a machine; no part to show"
    measure = SPINDLE_SPEED
    accepted = Tolerance("0.5", "0.5", "A step is one number on the plate; no other is near it.")
    sizes: ClassVar = {"wanted": SPINDLE_SPEED, "limit": SPINDLE_SPEED}
    asked = (
        "A speed of {wanted} was worked out. This shop turns countersinks at {limit} at most. "
        "The rule is the next step down. The {machine} has these steps, in rev/min:\n"
        "{steps}\n"
        "Which step is set?"
    )
    hints = (
        "Two numbers hold the speed down. Which is lower?",
        "Walk up the steps until the next one would be too fast.",
    )

    machine: str
    steps: str
    wanted: float
    limit: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a machine, a wanted speed between two of its steps and a limit."""
        machine = pick(rng, tuple(MACHINES))
        steps = MACHINES[machine]
        place = int(rng.random() * (len(steps) - 2))
        low, high = steps[place], steps[place + 1]
        low_part, span = round(low * 1.05), high - low
        wanted = step_between(rng, low_part, low_part + 0.85 * span, 1)
        limit = pick(rng, (300.0, 300.0, 500.0, 800.0))
        return cls(machine=machine, steps=", ".join(map(str, steps)), wanted=wanted, limit=limit)

    def step(self, speed: float) -> float | None:
        """Return the step below a speed [rev/min], None if all are faster."""
        return pick_step(spindle_speed=speed, steps=MACHINES[self.machine]).spindle_speed

    def value(self) -> float:
        """Return the step to set [rev/min]."""
        return self.step(min(self.wanted, self.limit)) or 0.0

    def is_clear(self) -> bool:
        """Whether a step is slow enough, and the slips stand apart."""
        return self.value() > 0 and NumberQuestion.is_clear(self)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        right, steps = self.value(), MACHINES[self.machine]
        higher = [step for step in steps if step > right]
        ignored = self.step(self.wanted)
        if ignored != right:
            yield slip("M35", ignored)
        if self.limit < self.wanted and self.limit not in steps:
            yield slip("M34", self.limit, "You gave the limit itself. The machine has steps.")
        if higher and higher[0] != ignored:
            yield slip("M34", higher[0], "You took the next step up. The rule is down.")
        if self.wanted not in (right, self.limit):
            yield slip(
                "M34", self.wanted, "You gave the speed that was worked out. The machine has steps."
            )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        lower, sum_ = min(self.wanted, self.limit), "lower of {wanted} and {limit}"
        yield WorkedStep("the speed that rules", sum_, lower, SPINDLE_SPEED)
        how = "take the next step down on the machine"
        yield WorkedStep("the step", "next step down from {0}", self.value(), SPINDLE_SPEED, how)
