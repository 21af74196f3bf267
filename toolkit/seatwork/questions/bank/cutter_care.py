"""What a cutter needs before it goes back: sharpened, cleaned, dried, stored."""

from collections.abc import Mapping
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.questions.type.draws import pick, shuffled
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question

HARDER = "You made up for a dull lip by force. It gets hotter and duller."
ONE_LIP = "You touched one lip alone. Then one lip does all the work."
CHIP = "You left a chip on the shank. The cutter runs out, however tight it is held."
WET = "You put it away wet. High speed steel rusts by the morning."
LIPS = "You let lips touch each other. They are dull before the next cut."
UNMARKED = "You gave it no mark. 82° and 90° look alike in a drawer."


CASES: tuple[tuple[str, str, Mapping[str, tuple[str, str, str]], str], ...] = (
    (
        "A three-flute countersink comes back. One lip has a bright line along its edge, the "
        "other two are fine. What do you do?",
        "have all three lips sharpened together",
        {
            "press": ("M46", "use it, with more feed", HARDER),
            "fast": ("M46", "use it, with more speed", HARDER),
            "one": ("M65", "stone the bright lip alone", ONE_LIP),
        },
        "A bright line is a dull lip. All lips are sharpened together, or one does all the work.",
    ),
    (
        "A countersink ran true in the morning. Now it cuts off-round; its lips are sharp. There "
        "is a chip on its shank. What do you do?",
        "stop, wipe shank and chuck clean, hold it again",
        {
            "tight": ("M51", "pull the chuck tighter", CHIP),
            "slow": ("M46", "run it slower", CHIP),
            "stone": ("M65", "stone the lip that cuts most", ONE_LIP),
        },
        "A chip on the shank makes the cutter run out. Clean it after the job, and before it.",
    ),
    (
        "The evening ends. A high speed steel countersink has coolant and chips on it. What do "
        "you do with it?",
        "brush the flutes, dry it, oil it lightly",
        {
            "wipe": ("M51", "brush the flutes and put it away", WET),
            "drawer": ("M65", "dry it and lay it in the drawer with the others", LIPS),
            "leave": ("M51", "leave it in the chuck for tomorrow", WET),
        },
        "Brush the flutes, wipe the shank, dry what had coolant on it, oil it lightly.",
    ),
    (
        "Six cutters of 82° and 90° are clean and oiled. Where do they go?",
        "each in its own hole of a block, the angle written beside it",
        {
            "drawer": ("M65", "all in one drawer, lips up", LIPS),
            "block": ("M07", "each in its own hole of a block, smallest first", UNMARKED),
            "tin": ("M65", "all in one tin with oil", LIPS),
        },
        "No lip touches anything, and the angle stands on its place: a wrong one costs a part.",
    ),
)
"""What is seen, what is right, each wrong choice with its slip, and why."""

RIGHT = "care"


@dataclass(frozen=True, slots=True, kw_only=True)
class CutterCare(Question):
    """Asks what is done with a cutter that is dull, dirty, wet or to be put away."""

    id = "cutter-care"
    goal = "Look a cutter over, clean it, and put it away so that it is sharp and known again."
    difficulty = 1
    codes = ("T2",)
    undrawn = "what is done with a tool; no part to show"
    sizes: ClassVar = {}
    asked = "{seen}"
    hints = (
        "What is wrong with it now, and what would still be wrong tomorrow?",
        "Think of each lip, of the shank, of rust, and of who takes it next.",
    )

    seen: str
    order: str

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw what is seen, and the order of the choices."""
        seen, _, wrong, _ = pick(rng, CASES)
        return cls(seen=seen, order=",".join(shuffled(rng, (RIGHT, *wrong))))

    @property
    def parts(self) -> tuple[Part, ...]:
        """The choices as shown."""
        _, right, wrong, _ = self._case
        words = {RIGHT: right} | {word: told for word, (_, told, _) in wrong.items()}
        options = tuple((word, words[word]) for word in self.order.split(","))
        slips = {word: (code, said) for word, (code, _, said) in wrong.items()}
        return (ChoicePart(options=options, right=RIGHT, wrong=slips),)

    def worked(self) -> str:
        """Return why it is done so."""
        return self._case[3]

    @property
    def _case(self) -> tuple[str, str, Mapping[str, tuple[str, str, str]], str]:
        return next(case for case in CASES if case[0] == self.seen)
