"""Depth of the chamfer cut before a hole is tapped."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import drilled_for
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, across_steps, angle_steps
from seatwork.seats import Countersink
from seatwork.seats.cones import half_tangent

THREADS = ("1/4-20", "5/16-18", "3/8-16", "7/16-14", "1/2-13", "5/8-11", "3/4-10")


@dataclass(frozen=True, slots=True, kw_only=True)
class ThreadChamfer(NumberQuestion):
    """Asks how deep the chamfer of a hole to be tapped is."""

    id = "thread-chamfer"
    version = 2
    goal = "Cut the chamfer of a tapped hole: the countersink cut most often in any shop."
    difficulty = 2
    codes = ("E1",)
    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")
    sizes: ClassVar = lengths("major", "tap_drill", "over") | {"included_angle": ANGLE}
    asked = (
        "Thread {thread}, major diameter {major}. Drill {tap_drill}. The chamfer is "
        "{included_angle} included, {over} wider than the thread. It is cut before the tap. "
        "How deep is it, from the face to the edge of the hole?"
    )
    hints = (
        "Which two diameters does the chamfer lie between?",
        "The wider one follows from the thread, the narrower one is drilled.",
        "At this angle a cone is as deep as it is wide on one side.",
    )

    thread: str
    major: float
    tap_drill: float
    over: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a coarse thread and a chamfer .014 to .030 in over it."""
        drilled = drilled_for(pick(rng, THREADS))
        return cls(
            thread=drilled.thread.name,
            major=drilled.thread.diameter,
            tap_drill=drilled.diameter,
            over=step_between(rng, 0.014, 0.030, 0.002) * INCH,
            included_angle=90.0,
        )

    def seat(self) -> Countersink:
        """Return the chamfer as the cone it is."""
        return Countersink(
            diameter=self.major + self.over,
            hole_diameter=self.tap_drill,
            included_angle=self.included_angle,
        )

    def value(self) -> float:
        """Return the depth of the chamfer [mm]."""
        return self.seat().depth

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        mouth = self.major + self.over
        yield slip("M02", mouth - self.tap_drill)
        yield slip("M03", mouth / 2)
        yield slip(
            "M48",
            (self.major - self.tap_drill) / 2,
            "You went to the diameter of the thread. The chamfer is to be larger.",
        )
        yield slip("M07", self.value() / half_tangent(82), "You used 82°. The question says 90°.")
        yield slip(
            "M20", self.over / 2, "You took the thread for the hole. The hole is drilled smaller."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        mouth = self.major + self.over
        yield WorkedStep("the mouth", "{major} + {over}", mouth, LENGTH)
        yield from across_steps("{0}", "{tap_drill}", mouth - self.tap_drill, first=1)
        yield from angle_steps(self.included_angle, first=3)
        how = "divide across by the tangent of half the angle"
        yield WorkedStep("the depth", "{2} ÷ {4}", self.value(), LENGTH, how)
