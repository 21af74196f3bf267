"""Length of a flat head screw that neither bottoms nor is left short."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.earlier.first_screw_length import FirstScrewLength
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.screw_lengths import (
    LONGEST,
    NOT_THERE,
    STEP,
    THREADS,
    UP,
    box_step,
    in_system,
    is_sure,
    listed,
    pitch_step,
)
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import NumberQuestion, Question, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class ScrewLength(NumberQuestion):
    """Asks for the longest flat head screw of a box that does not bottom in its thread."""

    id = "screw-length"
    version = 2
    earlier: ClassVar[Mapping[int, type[Question]]] = {1: FirstScrewLength}
    goal = "Order a flat head screw by its overall length, and keep it off the bottom."
    difficulty = 2
    codes = ("S2",)
    unmarked = "from where to where its length runs is what is asked"
    measure = LENGTH
    is_listed = True
    accepted = Tolerance("0.003", "0.08", "Screws come in steps of 1/8 in; .003 in is nothing.")
    sizes: ClassVar = {"thickness": LENGTH, "full": LENGTH, "height": LENGTH}
    asked = (
        "A guard {thickness} thick is held by a {size}-{threads} flat head screw, head {height} "
        "high, flush with its face. The hole in the frame behind is blind, with {full} of full "
        "thread. The screw must stay one pitch off the end of the thread. The box has lengths in "
        "steps of 1/8 in. How long is the longest screw that will do?"
    )
    hints = (
        "From where to where is a flat head screw measured? Its head lies within the guard.",
        "One pitch is an inch divided by the threads in an inch.",
        "No such length in the box? One of its two neighbors bottoms.",
    )

    size: str
    threads: int
    thickness: float
    full: float
    height: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a screw, a guard thicker than its head, and a thread deeper than it is wide."""
        head = flat_head(rng)
        thick = round(head.height / INCH * pick(rng, (1.6, 2.0, 2.4)) * 16) / 16
        full = round(head.diameter / INCH * step_between(rng, 1.5, 2.5, 0.25) * 16) / 16
        return cls(
            size=head.size,
            threads=THREADS[head.size],
            thickness=thick * INCH,
            full=full * INCH,
            height=head.height,
        )

    def text(self) -> str:
        """Return what is asked; an eighth of an inch is a step of 3.175 mm in metric."""
        return in_system(super(ScrewLength, self).text(), self.system)

    @property
    def most(self) -> float:
        """Length at which the screw is one pitch off the end of the thread [mm]."""
        return self.thickness + self.full - INCH / self.threads

    def is_clear(self) -> bool:
        """Whether no rounding moves the answer to another length in the box."""
        return is_sure(self.most) and super(ScrewLength, self).is_clear()

    def value(self) -> float:
        """Return the length [mm]."""
        return listed(self.most)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip("M34", self.value() + STEP, UP)
        yield slip("M34", self.most, NOT_THERE)
        under = listed(self.most - self.height)
        if under < self.value():
            yield slip("M47", under)
        yield slip(
            "M24",
            self.full,
            "You counted the thread in the frame alone. The screw starts at the face.",
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "A flat head screw is measured overall, head included. Flush, it may run from the "
            "face to one pitch off the end of the thread."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        yield pitch_step(self.threads, self.system)
        yield WorkedStep(LONGEST, "{thickness} + {full} − {0}", self.most, LENGTH)
        yield box_step(1, self.value())

    def remark(self) -> str:
        """Return what else they show."""
        return (
            f"Look again at what is left: {self.show(self.value() - self.thickness)} in the thread."
        )
