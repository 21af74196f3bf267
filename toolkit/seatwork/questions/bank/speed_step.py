"""Which step of the machine is set for a wanted speed and a limit, if it has one slow enough."""

from collections.abc import Mapping
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.cutting import pick_step
from seatwork.entries.measures import SPINDLE_SPEED
from seatwork.questions.earlier.typed_speed_step import MACHINES, TypedSpeedStep
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question

NONE = "none"
TOO_FAST = "none of them: this machine is too fast for it"
KINDS = ("free", "free", "held", "held", "too fast")
"""How often the limit does not bind, binds, and no step is slow enough."""

OVER = ("M35", "You took a step faster than the speed that rules. Which speed does?")
UNDER = ("M34", "You went farther down than the rule asks.")
GIVEN_UP = ("M34", "You gave the machine up. Look at its slowest steps once more.")


@dataclass(frozen=True, slots=True, kw_only=True)
class SpeedStep(Question):
    """Asks for the step to set: the next one down, never above the limit, or none at all."""

    id = "speed-step"
    version = 3
    earlier: ClassVar[Mapping[int, type[Question]]] = {1: TypedSpeedStep, 2: TypedSpeedStep}
    goal = "Set the next step down, never above a limit, and see where a machine is too fast."
    difficulty = 1
    codes = ("M2",)
    undrawn = "the steps of a machine; no part to show"
    sizes: ClassVar = {"wanted": SPINDLE_SPEED, "limit": SPINDLE_SPEED}
    asked = (
        "A speed of {wanted} was worked out. This shop turns countersinks at {limit} at most. "
        "The rule is the next step down. The {machine} has these steps, in rev/min:\n"
        "{steps}\n"
        "Which step is set?"
    )
    hints = (
        "Two numbers hold the speed down. Which is lower?",
        "Walk up the steps until the next one would be too fast. What if the first one is?",
    )

    machine: str
    steps: str
    wanted: float
    limit: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a machine, and a speed and a limit of one of three kinds."""
        machine, kind = pick(rng, tuple(MACHINES)), pick(rng, KINDS)
        steps, limit = MACHINES[machine], pick(rng, (300.0, 300.0, 500.0))
        low, high = {
            "free": (1.05 * steps[0], 0.95 * limit),
            "held": (1.3 * limit, 3 * limit),
            "too fast": (0.55 * steps[0], 0.9 * steps[0]),
        }[kind]
        wanted = step_between(rng, round(low), round(high), 1)
        return cls(machine=machine, steps=", ".join(map(str, steps)), wanted=wanted, limit=limit)

    def step(self, speed: float) -> int | None:
        """Return the step below a speed [rev/min], None if all are faster."""
        found = pick_step(spindle_speed=speed, steps=MACHINES[self.machine]).spindle_speed
        return None if found is None else round(found)

    @property
    def right(self) -> int | None:
        """The step to set [rev/min]; None where none is slow enough."""
        return self.step(min(self.wanted, self.limit))

    @property
    def shown(self) -> list[int]:
        """The steps to choose from [rev/min]: round the right one, and where no limit held it."""
        steps, right = MACHINES[self.machine], self.right
        place = -1 if right is None else steps.index(right)
        near = set(steps[max(place - 1, 0) : max(place, 0) + 3])
        return sorted(near | {self.step(self.wanted) or steps[0]})

    @property
    def parts(self) -> tuple[Part, ...]:
        """The steps as shown, and none of them."""
        right = self.right
        wrong = {
            str(step): OVER if right is None or step > right else UNDER
            for step in self.shown
            if step != right
        }
        if right is not None:
            wrong[NONE] = GIVEN_UP
        options = [(str(step), f"{step} rev/min") for step in self.shown]
        answer = NONE if right is None else str(right)
        return (ChoicePart(options=(*options, (NONE, TOO_FAST)), right=answer, wrong=wrong),)

    def is_clear(self) -> bool:
        """Whether speed and limit are no steps themselves."""
        return not {self.wanted, self.limit} & set(map(float, MACHINES[self.machine]))

    def worked(self) -> str:
        """Return which speed rules and which step stands below it."""
        lower = "wanted" if self.wanted < self.limit else "limit"
        rules = f"The lower of the two rules: {self.stated(lower)}."
        if self.right is None:
            slowest = MACHINES[self.machine][0]
            return (
                f"{rules} The slowest step, {slowest}, is faster: set none. Take a machine with "
                "back gear; a small countersink can be turned by hand in a brace."
            )
        return f"{rules} The next step down from it is {self.right} rev/min."
