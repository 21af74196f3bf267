"""The drill under a blind thread as it was accepted in version 1: either way of the least depth."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import COUNT, FINE_LENGTH, LENGTH, ROUGH_LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import PrintQuestion
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import Part
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep

THREADS = (("#10", 24), ("1/4", 20), ("5/16", 18), ("3/8", 16), ("1/2", 13))
HELD = Tolerance("0.005", "0.13", "A drill depth on a print is held to about .01 in.")


@dataclass(frozen=True, slots=True, kw_only=True)
class FirstBlindTapDrill(PrintQuestion):
    """Asks for the least depth of the drill under a blind thread."""

    id = "print-blind-tap-drill"
    goal = "Drill a blind hole deep enough for the lead of the tap."
    difficulty = 3
    codes = ("N1", "N2")
    shape = "thread"
    sizes: ClassVar = {"threads": COUNT, "lead": COUNT, "threaded": ROUGH_LENGTH}
    before = (
        "The tap has {threads} threads to the inch. Its lead, the tapered start, takes {lead} "
        "threads; leave one thread more under it."
    )
    hints = (
        "The printed depth is full thread. What of the tap goes below it?",
        "How long is one thread, if so many of them make an inch?",
    )

    size: str
    threads: int
    lead: int
    threaded: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a thread, its depth and the lead of the tap."""
        size, threads = pick(rng, THREADS)
        return cls(
            size=size,
            threads=threads,
            lead=pick(rng, (3, 4, 5)),
            threaded=pick(rng, (0.38, 0.50, 0.62, 0.75, 1.0)) * INCH,
        )

    def note(self) -> str:
        """Return the note."""
        return f"{self.size}-{self.stated('threads')} UNC-2B ↧{self.stated('threaded')}"

    @property
    def pitch(self) -> float:
        """Length of one thread [mm]."""
        return INCH / self.threads

    @property
    def below(self) -> float:
        """What is drilled below the full thread [mm]."""
        return (self.lead + 1) * self.pitch

    @property
    def parts(self) -> tuple[Part, ...]:
        """The depth of the drill."""
        full = self.threaded
        sixteenths = None if self.threads == 16 else full + (self.lead + 1) * INCH / 16
        return (
            self.length(
                full + self.below,
                HELD,
                "How deep is the drill, full diameter, at least?",
                slip(
                    "M23",
                    full,
                    "You gave the depth of the thread. It is full only above the lead of the tap.",
                ),
                slip(
                    "M15",
                    full - self.below,
                    "You took the lead off. The drill goes deeper than the thread.",
                ),
                slip(
                    "M33",
                    full + self.pitch,
                    "You added one thread only. The lead itself goes below, too.",
                ),
                slip(
                    "M50",
                    sixteenths,
                    "You took each thread for 1/16 in. Count the threads to the inch.",
                ),
                slip("M28", 2 * full, "You doubled the thread. The lead is counted in threads."),
            ),
        )

    def because(self) -> str:
        """Return what goes below the thread."""
        return "The thread is full only above the lead of the tap, so the drill goes deeper."

    def working(self) -> Iterator[WorkedStep]:
        """Yield one thread, what goes below, and the drill."""
        inch = "1 in" if self.system == "inch" else "25.4 mm"
        yield WorkedStep(
            "the length of one thread", f"{inch} ÷ {{threads}}", self.pitch, FINE_LENGTH
        )
        yield WorkedStep(
            "what goes below the full thread", "({lead} + 1) × {0}", self.below, FINE_LENGTH
        )
        yield WorkedStep(
            "the depth of the drill", "{threaded} + {1}", self.threaded + self.below, LENGTH
        )
