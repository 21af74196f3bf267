"""A tapped hole with its chamfer: two depths, the order, and how deep the chamfer is."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from random import Random
from typing import ClassVar, Self

from seatwork import hardware
from seatwork.entries.letters import LETTERS
from seatwork.entries.measures import ANGLE, LENGTH, ROUGH_LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import READ, STOP, PrintQuestion, read_off
from seatwork.questions.type.draws import pick, shuffled, step_between
from seatwork.questions.type.parts import OrderPart, Part
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep, across_steps

THREADS = ("1/4-20", "5/16-18", "3/8-16", "7/16-14", "1/2-13")
STEPS = ("drill", "chamfer", "tap")
HELD = (
    (0, 1, "M51", "You chamfer before the hole is there. The chamfer follows the drilled hole."),
    (
        1,
        2,
        "M51",
        "You tap before the chamfer. So the tap starts on a sharp edge and lifts a burr.",
    ),
)


@cache
def tapped(thread: str) -> tuple[str, float, float]:
    """Return the name and diameter of the tap drill, and the thread's own diameter [mm]."""
    drill = hardware.tap_drill(thread)
    return drill.name, drill.diameter, drill.thread.diameter


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintThreadSeat(PrintQuestion):
    """Asks for the depths of drill and thread, the order of work, and the chamfer's depth."""

    id = "print-thread-seat"
    goal = "Read a tapped hole with its chamfer, and cut the chamfer before the tap."
    difficulty = 2
    codes = ("N1", "E1")
    shape = "thread"
    sizes: ClassVar = {
        "drill": LENGTH,
        "major": LENGTH,
        "drilled": ROUGH_LENGTH,
        "threaded": ROUGH_LENGTH,
        "mouth": LENGTH,
        "included_angle": ANGLE,
    }
    before = "The {name} drill measures {drill}, the thread {major}."
    hints = (
        "DP stands behind a depth. The first is the drill's, the second the thread's.",
        "A chamfer of 90° is as deep as one side of it is wide.",
        "Where does the cone end: at the thread to come, or at the hole that is there?",
    )

    thread: str
    name: str
    drill: float
    major: float
    drilled: float
    threaded: float
    mouth: float
    included_angle: float
    order: str

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a thread, its depths and a mouth a little wider than it."""
        thread = pick(rng, THREADS)
        name, drill, major = tapped(thread)
        deep = pick(rng, (0.38, 0.44, 0.50, 0.56, 0.62, 0.69, 0.75, 0.81))
        return cls(
            thread=thread,
            name=name,
            drill=drill,
            major=major,
            drilled=(deep + 0.25) * INCH,
            threaded=deep * INCH,
            mouth=major + step_between(rng, 0.016, 0.032, 0.002) * INCH,
            included_angle=90.0,
            order="".join(shuffled(rng, "012")),
        )

    def note(self) -> str:
        """Return the note, in words as on older prints."""
        drill = self.name if self.name.startswith("#") else f"{self.name} DRILL"
        return (
            f"{drill} X {self.stated('drilled')} DP, {self.thread} UNC-2B X "
            f"{self.stated('threaded')} DP, CSK ⌀{self.stated('mouth')} X "
            f"{self.stated('included_angle')}"
        )

    @property
    def deep(self) -> float:
        """Depth of the chamfer [mm]; at 90° it is one side."""
        return (self.mouth - self.drill) / 2

    @property
    def parts(self) -> tuple[Part, ...]:
        """Two depths, the order, the depth of the chamfer."""
        swapped = "You swapped the two depths. The drill stands first and goes deeper."
        return (
            self.length(self.drilled, READ, "How deep is the drill?",
                        slip("M44", self.threaded, swapped)),
            self.length(self.threaded, READ, "How deep is the thread?",
                        slip("M44", self.drilled, swapped)),
            self._order(),
            self.length(
                self.deep,
                STOP,
                "How deep is the chamfer?",
                slip("M02", 2 * self.deep, "You gave both sides. One side is half of it."),
                slip(
                    "M19",
                    (self.mouth - self.major) / 2,
                    "You measured to the thread. The cone ends at the drilled hole.",
                ),
                slip(
                    "M03",
                    self.mouth / 2,
                    "You went down to the point of the cone. It ends at the drilled hole.",
                ),
            ),
        )  # fmt: skip

    def _order(self) -> OrderPart:
        right = "".join(LETTERS[self.order.index(place)] for place in "012")
        return OrderPart(
            prompt="In which order is it made?",
            steps=tuple(STEPS[int(place)] for place in self.order),
            right=right,
            wrong=tuple((right[one], right[then], code, said) for one, then, code, said in HELD),
        )

    def because(self) -> str:
        """Return the order, and why."""
        return "Drill, chamfer, tap: the chamfer leads the tap in and leaves no burr."

    def working(self) -> Iterator[WorkedStep]:
        """Yield the two depths, then the chamfer's triangle, whose tangent is 1."""
        yield read_off("the depth of the drill", self.drilled, 0, ROUGH_LENGTH)
        yield read_off("the depth of the thread", self.threaded, 1, ROUGH_LENGTH)
        yield from across_steps("{mouth}", "{drill}", self.mouth - self.drill, first=2, part=3)
        yield WorkedStep(
            "the depth of the chamfer, as deep as one side is wide",
            "{3}",
            self.deep,
            LENGTH,
            part=3,
        )
