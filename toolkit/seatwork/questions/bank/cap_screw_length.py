"""Length of a cap screw in a counterbore that neither bottoms nor is left short."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.earlier.first_cap_screw_length import FirstCapScrewLength
from seatwork.questions.shared.real_sizes import socket_cap
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
class CapScrewLength(NumberQuestion):
    """Asks for the longest socket head cap screw of a box that does not bottom."""

    id = "cap-screw-length"
    version = 2
    earlier: ClassVar[Mapping[int, type[Question]]] = {1: FirstCapScrewLength}
    goal = "Order a cap screw by its length under the head, and keep it off the bottom."
    difficulty = 2
    codes = ("S2",)
    measure = LENGTH
    is_listed = True
    accepted = Tolerance("0.003", "0.08", "Screws come in steps of 1/8 in; .003 in is nothing.")
    sizes: ClassVar = {"thickness": LENGTH, "depth": LENGTH, "full": LENGTH}
    asked = (
        "A plate {thickness} thick has a counterbore {depth} deep for a {size}-{threads} socket "
        "head cap screw. The hole in the frame behind is blind, with {full} of full thread. The "
        "screw must stay one pitch off the end of the thread. The box has lengths in steps of "
        "1/8 in. How long is the longest screw that will do, measured under its head?"
    )
    hints = (
        "Under the head the screw starts at the floor of the counterbore. How much plate is left?",
        "One pitch is an inch divided by the threads in an inch.",
        "No such length in the box? One of its two neighbors bottoms.",
    )

    size: str
    threads: int
    thickness: float
    depth: float
    full: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a screw, a plate and a thread deeper than it is wide."""
        screw = socket_cap(rng)
        plate = round(screw.height / INCH * pick(rng, (1.6, 2.0, 2.4)) * 16) / 16
        full = round(screw.diameter / INCH * step_between(rng, 1.5, 2.5, 0.25) * 16) / 16
        return cls(
            size=screw.size,
            threads=THREADS[screw.size],
            thickness=plate * INCH,
            depth=screw.height + step_between(rng, 0.010, 0.030, 0.005) * INCH,
            full=full * INCH,
        )

    def text(self) -> str:
        """Return what is asked; an eighth of an inch is a step of 3.175 mm in metric."""
        return in_system(super(CapScrewLength, self).text(), self.system)

    @property
    def beyond(self) -> float:
        """Thread that the screw may fill, one pitch off its end [mm]."""
        return self.full - INCH / self.threads

    @property
    def most(self) -> float:
        """Length under the head at which the screw is one pitch off the end [mm]."""
        return self.thickness - self.depth + self.beyond

    def is_clear(self) -> bool:
        """Whether no rounding moves the answer to another length in the box."""
        return is_sure(self.most) and super(CapScrewLength, self).is_clear()

    def value(self) -> float:
        """Return the length under the head [mm]."""
        return listed(self.most)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip("M34", self.value() + STEP, UP)
        yield slip("M34", self.most, NOT_THERE)
        yield slip(
            "M47",
            listed(self.thickness + self.beyond),
            "You measured from the face. Under the head the screw starts at the floor of the bore.",
        )
        yield slip("M15", listed(self.thickness + self.depth + self.beyond))
        yield slip(
            "M24",
            self.thickness - self.depth,
            "You counted the plate alone. The screw goes on into the frame.",
        )
        yield slip(
            "M24",
            listed(self.depth + self.beyond),
            "You took the depth of the bore for what is left. Under the head there is the rest "
            "of the plate.",
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        left = self.thickness - self.depth
        yield WorkedStep("the plate left under the bore", "{thickness} − {depth}", left, LENGTH)
        yield pitch_step(self.threads, self.system)
        yield WorkedStep(LONGEST, "{0} + {full} − {1}", self.most, LENGTH)
        yield box_step(2, self.value())

    def remark(self) -> str:
        """Return what else they show."""
        return (
            "Look again at what is left: "
            f"{self.show(self.value() - self.thickness + self.depth)} in the thread."
        )
