"""Which of three cures comes first when a countersink sings, and why."""

from collections.abc import Mapping
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import SPINDLE_SPEED
from seatwork.questions.earlier.first_quieter_cut import FirstQuieterCut
from seatwork.questions.type.draws import pick, shuffled
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question

CURES = {
    "clamp": "clamp the part closer, lock the quill",
    "slower": "turn the spindle slower",
    "feed": "feed steadily, enough to make a chip",
    "flutes": "take a cutter with fewer flutes",
    "sharpen": "sharpen the cutter",
}
"""The cures in the order of the shop: common practice, no source."""

REASONS = {
    "clamp": "what hangs loose swings, whatever turns in it",
    "slower": "slow waves are short, and the flank behind the lip rubs them flat",
    "feed": "a lip without a chip rubs and starts to sing",
    "flutes": "with fewer lips in the cut the song begins later",
    "sharpen": "a dull lip pushes the metal off",
}
EARLIER = (
    "M46",
    "You took a cure that helps, too. Another of the three costs less time.",
)
OTHER = ("M46", "You told what another cure does. Ask what the first one changes.")


@dataclass(frozen=True, slots=True, kw_only=True)
class QuieterCut(Question):
    """Asks which of three real cures is tried first, and what it does."""

    id = "quieter-cut"
    version = 2
    earlier: ClassVar[Mapping[int, type[Question]]] = {1: FirstQuieterCut}
    goal = "Do the right thing first when a countersink sings."
    difficulty = 2
    codes = ("M3", "T1", "H1")
    undrawn = "a cure to be chosen; no part to show"
    sizes: ClassVar = {"speed": SPINDLE_SPEED}
    asked = (
        "A {flutes}-flute countersink sings at {speed} in the {machine}. You eased off and "
        "stopped. Three cures are left to try, and each of them can help."
    )
    hints = (
        "The shop goes from what is done in a minute to what wants another tool.",
        "Ask of each cure what it changes: the hold, the speed, the feed or the cutter.",
    )

    flutes: int
    machine: str
    cures: str
    reasons: str
    speed: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a cutter, a machine, a speed too high, three cures, and the order of both lists."""
        cures = shuffled(rng, tuple(CURES))[:3]
        return cls(
            flutes=pick(rng, (3, 4, 6)),
            machine=pick(rng, ("bench drill press", "knee mill")),
            cures=",".join(cures),
            reasons=",".join(shuffled(rng, tuple(cures))),
            speed=pick(rng, (680.0, 840.0, 910.0, 1150.0, 1500.0)),
        )

    @property
    def first(self) -> str:
        """The one of the three that comes first in the order of the shop."""
        return min(self.cures.split(","), key=tuple(CURES).index)

    @property
    def parts(self) -> tuple[Part, ...]:
        """The cures as shown, then what each of them does."""
        right, cures, reasons = self.first, self.cures.split(","), self.reasons.split(",")
        return (
            ChoicePart(
                prompt="Which is tried first?",
                options=tuple((word, CURES[word]) for word in cures),
                right=right,
                wrong={word: EARLIER for word in cures if word != right},
            ),
            ChoicePart(
                prompt="Why does it help?",
                options=tuple((word, REASONS[word]) for word in reasons),
                right=right,
                wrong={word: OTHER for word in reasons if word != right},
            ),
        )

    def worked(self) -> str:
        """Return the order of the shop, and what its first cure does here."""
        order = "; ".join(CURES.values())
        return (
            f"The shop's order: {order}. Of these three comes first: {CURES[self.first]}. "
            f"Why: {REASONS[self.first]}. Never push through a singing cut."
        )
