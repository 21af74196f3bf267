"""The order of drilling and spotfacing on a sloped pad: what every version of it shares."""

from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.letters import LETTERS
from seatwork.questions.type.draws import pick, shuffled
from seatwork.questions.type.parts import OrderPart, Part
from seatwork.questions.type.question import Question

PILOTED, RIGID = "removable pilot", "end mill in a rigid spindle"
# Place in the right order of a step, of the one that must follow it, slip, sentence.
Pair = tuple[int, int, str, str]

CLAMPED = (0, 1, "M51", "You cut before the part was clamped. Look what must hold it.")
NO_HOLE = "You let a piloted tool cut where there is no hole. Look what guides its pilot."
NO_PILOT = "You cut without the pilot. Look what guides the cut."
RUNS_OFF = "You drilled into the slope. A drill that meets a slope runs off."
RIGID_STEPS = (
    "clamp the casting over a support",
    "mill the flat until it is whole",
    "spot the middle of the flat",
    "drill the hole",
    "deburr the hole",
)
RIGID_PAIRS = (
    (1, 3, "M48", RUNS_OFF),
    (2, 3, "M48", "You drilled without a spot. A drill without a spot wanders."),
    (1, 2, "M51", "You made a spot that is milled away again. Look what is cut after it."),
    CLAMPED,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class SlopedPad(Question):
    """Asks for the order of work on a sloped pad, by the tool at hand."""

    id = "first-cut"
    goal = "Order the cuts on a sloped pad by the tool at hand."
    difficulty = 2
    codes = ("F1", "H1")
    sizes: ClassVar = {}
    asked = (
        "A sloped cast pad gets a hole and a spotface. The tool at hand is a spotface cutter with "
        "a {tool}. Put the steps in order."
    )
    hints = (
        "What guides this tool: the hole, or the spindle alone?",
        "A drill that starts on a slope runs off.",
    )
    steps: ClassVar[dict[str, tuple[str, ...]]]
    """By tool: the steps in the right order."""
    pairs: ClassVar[dict[str, tuple[Pair, ...]]]
    """By tool: the steps that must keep their order."""

    tool: str
    order: str

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a tool and the order in which the steps are shown."""
        tool = pick(rng, tuple(cls.steps))
        places = "".join(str(place) for place in range(len(cls.steps[tool])))
        return cls(tool=tool, order="".join(shuffled(rng, places)))

    def text(self) -> str:
        """Return what is asked for this tool."""
        if self.tool == PILOTED:
            return self.asked.format(tool=self.tool)
        return (
            "A sloped cast pad gets a hole and a flat round it. The tool at hand is an "
            f"{self.tool}. Put the steps in order."
        )

    @property
    def parts(self) -> tuple[Part, ...]:
        """The steps as shown."""
        steps = self.steps[self.tool]
        right = "".join(LETTERS[self.order.index(str(place))] for place in range(len(steps)))
        return (
            OrderPart(
                steps=tuple(steps[int(place)] for place in self.order),
                right=right,
                wrong=tuple(
                    (right[first], right[then], code, sentence)
                    for first, then, code, sentence in self.pairs[self.tool]
                ),
            ),
        )

    def worked(self) -> str:
        """Return the steps in order."""
        return "In order: " + "; ".join(self.steps[self.tool]) + "."
