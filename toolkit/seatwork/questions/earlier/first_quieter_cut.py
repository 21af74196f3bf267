"""What to try first when a countersink sings, as version 1 asked it: one cure among four faults."""

from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import SPINDLE_SPEED
from seatwork.questions.type.draws import pick, shuffled
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question

OPTIONS = {
    "slower": "stop, slow down, then feed steadily",
    "faster": "speed up until it is smooth",
    "flutes": "change to a cutter with more flutes",
    "lighter": "feed as lightly as possible and let it rub",
    "push": "push through; it stops at full depth",
}
WRONG = {
    "faster": ("M46", "You sped up. Think what speed does to a long circle of edge."),
    "flutes": ("M46", "You took more flutes. Each flute is one more edge that can sing."),
    "lighter": ("M46", "You let the edge rub. An edge without a chip starts to sing."),
    "push": ("M35", "You pushed through a singing cut. Think of the edge, the part and your hand."),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class FirstQuieterCut(Question):
    """Asks for the first remedy when a countersink sings in a drill press."""

    id = "quieter-cut"
    goal = "Do the right thing first when a countersink sings."
    difficulty = 1
    codes = ("M3", "T1", "H1")
    undrawn = "a cure to be chosen; no part to show"
    sizes: ClassVar = {"speed": SPINDLE_SPEED}
    asked = (
        "A {flutes}-flute countersink sings at {speed} in the {machine}. Part clamped, quill "
        "short and snug. What is tried first?"
    )
    hints = (
        "A full circle of edge is in the cut at once.",
        "What does the house rule say about the speed of countersinks?",
    )

    flutes: int
    machine: str
    order: str
    speed: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a cutter, a machine, a speed too high, and the order of the options."""
        return cls(
            flutes=pick(rng, (3, 4, 6)),
            machine=pick(rng, ("bench drill press", "knee mill")),
            order=",".join(shuffled(rng, tuple(OPTIONS))),
            speed=pick(rng, (680.0, 840.0, 910.0, 1150.0, 1500.0)),
        )

    @property
    def parts(self) -> tuple[Part, ...]:
        """The remedies as shown."""
        options = tuple((word, OPTIONS[word]) for word in self.order.split(","))
        return (ChoicePart(options=options, right="slower", wrong=WRONG),)

    def worked(self) -> str:
        """Return what shops do, in their order."""
        return (
            "Ease off, stop, slow down, then a firm steady feed. After that: fewer flutes or a "
            "cross-hole cutter, a sharp edge, another machine. Never push through."
        )
