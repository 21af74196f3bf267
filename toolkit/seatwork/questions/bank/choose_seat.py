"""Which seat a head wants: by its underside, where it may stand, and what the face is like."""

from collections.abc import Mapping
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.questions.type.draws import pick, shuffled
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question

OPTIONS: Mapping[str, str] = {
    "countersink": "a countersink",
    "counterbore": "a counterbore",
    "spotface": "a spotface",
    "edge": "none: only break the edge of the hole",
}
CONE_ON_FLAT = "You laid a cone on a flat. Look under this head again."
FLAT_IN_CONE = "You laid a flat underside in a cone. It would touch on one ring."
ABOVE = "You let the head stand above the face. Read again where it must lie."
TOO_DEEP = "You took the head below the face. Nobody asked for that; read again where it may stand."
ROUGH = "You laid the head on a rough face. It rocks; look what makes it flat."
CLEAN = "You faced a face that is flat already. Look what is left to do."

Case = tuple[str, str, str, Mapping[str, tuple[str, str]]]

CASES: tuple[Case, ...] = (
    (
        "An 82° flat head screw holds the {part}. Its head may not stand above the face.",
        "countersink",
        "A cone wants a cone of the same angle.",
        {
            "counterbore": ("M17", CONE_ON_FLAT),
            "spotface": ("M17", CONE_ON_FLAT),
            "edge": ("M23", ABOVE),
        },
    ),
    (
        "A socket head cap screw holds the {part}. Its head must go below the machined face.",
        "counterbore",
        "A flat underside below the face wants a wider bore with a flat floor.",
        {
            "countersink": ("M17", FLAT_IN_CONE),
            "spotface": ("M23", ABOVE),
            "edge": ("M23", ABOVE),
        },
    ),
    (
        "A hex head cap screw holds the {part}. Its head may stand above the face. The face is "
        "cast, as it came out of the sand.",
        "spotface",
        "A flat underside above a rough face wants a ring that is flat and square.",
        {
            "countersink": ("M17", FLAT_IN_CONE),
            "counterbore": ("M66", TOO_DEEP),
            "edge": ("M26", ROUGH),
        },
    ),
    (
        "A hex head cap screw holds the {part}. Its head may stand above the face. The face is "
        "milled, square to the hole.",
        "edge",
        "A flat underside on a flat, square face needs no seat: the edge is broken, no more.",
        {
            "countersink": ("M17", FLAT_IN_CONE),
            "counterbore": ("M66", TOO_DEEP),
            "spotface": ("M66", CLEAN),
        },
    ),
)
"""What is told, the seat it wants and why, and what each other choice shows."""

PARTS = ("hopper plate", "bearing cap", "guard", "lid", "leg of the frame")


@dataclass(frozen=True, slots=True, kw_only=True)
class ChooseSeat(Question):
    """Asks for the seat of one of four heads on their faces."""

    id = "choose-seat"
    goal = "Look under a head and at the face, and name the seat it wants."
    difficulty = 1
    codes = ("S1",)
    undrawn = "a picture of the head in its seat would answer it"
    sizes: ClassVar = {}
    asked = "{told} Which seat does it want?"
    hints = (
        "What is under the head: a cone, or a flat?",
        "May the head stand above the face? If so, what is the face like?",
    )

    told: str
    right: str
    order: str

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw one of the four heads, what it holds, and the order of the options."""
        told, right, _, _ = pick(rng, CASES)
        return cls(
            told=told.format(part=pick(rng, PARTS)),
            right=right,
            order=",".join(shuffled(rng, tuple(OPTIONS))),
        )

    @property
    def case(self) -> Case:
        """What is known of the head that is told of."""
        return next(case for case in CASES if case[1] == self.right)

    @property
    def parts(self) -> tuple[Part, ...]:
        """The seats as shown."""
        options = tuple((word, OPTIONS[word]) for word in self.order.split(","))
        return (ChoicePart(options=options, right=self.right, wrong=dict(self.case[3])),)

    def worked(self) -> str:
        """Return what the head wants, and why."""
        return f"{self.case[2]} It wants {OPTIONS[self.right].removeprefix('none: ')}."
