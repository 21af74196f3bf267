"""The order of drilling and spotfacing on a sloped pad."""

from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.questions.draws import pick, shuffled
from seatwork.questions.parts import LETTERS, OrderPart, Part
from seatwork.questions.question import Question

STEPS = {
    "removable pilot": (
        "clamp the casting over a support",
        "drill the hole",
        "deburr the hole and brush the chips out",
        "put the pilot in by hand, spindle stopped",
        "spotface until the flat is whole",
    ),
    "end mill in a rigid spindle": (
        "clamp the casting over a support",
        "mill the flat until it is whole",
        "spot the middle of the flat",
        "drill the hole",
        "deburr the hole",
    ),
}
WHY = {
    "removable pilot": ("M48", "the pilot has no hole yet; a piloted tool needs the hole first"),
    "end mill in a rigid spindle": (
        "M48",
        "the drill meets the slope first and runs off; a rigid tool makes the flat first",
    ),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class FirstCut(Question):
    """Asks for the order of work on a sloped pad, by the tool at hand."""

    id = "first-cut"
    goal = "Order the cuts on a sloped pad by the tool at hand."
    difficulty = 2
    sizes: ClassVar = {}
    asked = (
        "A sloped cast pad gets a hole and a spotface. The tool at hand is a spotface cutter with "
        "a {tool}. Put the steps in order."
    )
    hints = (
        "What guides this tool: the hole, or the spindle alone?",
        "A drill that starts on a slope runs off.",
    )

    tool: str
    order: str

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a tool and the order in which the steps are shown."""
        return cls(tool=pick(rng, tuple(STEPS)), order="".join(shuffled(rng, "01234")))

    def text(self) -> str:
        """Return what is asked for this tool."""
        if self.tool == "removable pilot":
            return self.asked.format(tool=self.tool)
        return (
            "A sloped cast pad gets a hole and a flat round it. The tool at hand is an "
            f"{self.tool}. Put the steps in order."
        )

    @property
    def parts(self) -> tuple[Part, ...]:
        """The steps as shown."""
        right = "".join(LETTERS[self.order.index(str(place))] for place in range(5))
        code, sentence = WHY[self.tool]
        pairs = ((1, 4), (3, 4)) if self.tool == "removable pilot" else ((1, 3), (2, 3))
        wrong = tuple((right[first], right[then], code, sentence) for first, then in pairs)
        return (
            OrderPart(
                steps=tuple(STEPS[self.tool][int(place)] for place in self.order),
                right=right,
                wrong=(*wrong, (right[0], right[1], "M24", "nothing is cut before it is clamped")),
            ),
        )

    def worked(self) -> str:
        """Return the steps in order."""
        return "In order: " + "; ".join(STEPS[self.tool]) + "."
