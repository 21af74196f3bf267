"""Frequency of a chatter from the marks it leaves."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import COUNT, FREQUENCY, RATIO, SPINDLE_SPEED
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class ChatterMarks(NumberQuestion):
    """Asks for the frequency that a count of marks round a cone tells."""

    id = "chatter-marks"
    goal = "Turn a count of chatter marks into a frequency."
    difficulty = 2
    codes = ("M3",)
    unmarked = "a tone is heard, not seen on the part"
    measure = FREQUENCY
    accepted = Tolerance("5", "5", "One mark more or less is some 10 Hz; a count is no better.")
    sizes: ClassVar = {"marks": COUNT, "speed": SPINDLE_SPEED}
    asked = (
        "A countersink sang at {speed} and left {marks} marks evenly round the cone. What is "
        "the frequency of the chatter? (In a whirl one mark more or less belongs to it.)"
    )
    hints = (
        "How many marks are cut in one turn?",
        "How many turns does the spindle make in a second?",
    )

    marks: float
    speed: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw 7 to 30 marks and a speed that gives 80 to 500 Hz."""
        return cls(
            marks=step_between(rng, 9, 30, 1),
            speed=pick(rng, (410.0, 520.0, 550.0, 640.0, 680.0, 840.0, 910.0)),
        )

    def value(self) -> float:
        """Return the frequency [Hz]."""
        return self.marks * self.speed / 60

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip(
            "M36",
            self.marks * self.speed,
            "You found the marks in a minute. Hertz is marks in a second.",
        )
        yield slip(
            "M36",
            self.speed / 60,
            "You found the turns in a second. Each turn leaves all the marks.",
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        yield WorkedStep("the turns in a second", "{speed} ÷ 60", self.speed / 60, RATIO)
        yield WorkedStep("the frequency", "{marks} × {0}", self.value(), FREQUENCY)
