"""The six signs of a note and what each means."""

from collections.abc import Mapping
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.letters import LETTERS
from seatwork.questions.type.draws import pick, shuffled
from seatwork.questions.type.parts import OrderPart, Part
from seatwork.questions.type.question import Question

WORDS: Mapping[str, str] = {
    "⌀": "diameter",
    "R": "radius",
    "□": "square section",
    "⌵": "countersink: a cone at the mouth",
    "⌴": "counterbore: a bore with a flat floor",
    "⌴SF": "spotface: flat, only until it is clean",
    "↧": "depth",
}
CHAIN = ("⌴SF", "⌴", "⌵", "↧")
"""Signs that look alike stand side by side."""

PAIRS: Mapping[tuple[str, str], str] = {
    ("⌵", "⌴"): "You mixed up ⌵ and ⌴. Both cut the mouth: one is a cone, one has a floor.",
    ("↧", "⌵"): "You mixed up ↧ and ⌵. An arrow down is a depth; a cone stands open.",
    ("⌴SF", "⌴"): "You mixed up ⌴SF and ⌴. SF has no depth of its own: it stops when clean.",
    ("⌀", "R"): "You mixed up ⌀ and R. A sign through a circle is a diameter.",
    ("⌀", "□"): "You mixed up ⌀ and □. A square on a note is a square section.",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintSigns(Question):
    """Asks which word belongs to each of six signs."""

    id = "print-signs"
    goal = "Read the six signs of a note."
    difficulty = 1
    codes = ("N1",)
    sizes: ClassVar = {}
    asked = "Six signs stand on a print:  {signs}. Put the words in the order of the signs."
    hints = (
        "Begin with the signs that draw what they mean: a cone, a floor, an arrow down.",
        "Two signs look alike. One of them has letters in it.",
    )

    signs: str
    order: str

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw the order of the signs, lookalikes side by side, and that of the words."""
        chain = pick(rng, (CHAIN, CHAIN[::-1]))
        wide = pick(rng, (("⌀", "R"), ("R", "⌀"), ("⌀", "□"), ("□", "⌀")))
        signs = pick(rng, ((*chain, *wide), (*wide, *chain)))
        return cls(signs="  ".join(signs), order="".join(shuffled(rng, "012345")))

    @property
    def shown(self) -> tuple[str, ...]:
        """The signs one by one."""
        return tuple(self.signs.split("  "))

    @property
    def parts(self) -> tuple[Part, ...]:
        """The words as shown."""
        steps = tuple(WORDS[self.shown[int(place)]] for place in self.order)
        letter = {sign: LETTERS[steps.index(WORDS[sign])] for sign in self.shown}
        wrong = tuple(
            (letter[first], letter[then], "M62", sentence)
            for pair, sentence in PAIRS.items()
            if set(pair) <= set(self.shown)
            for first, then in (sorted(pair, key=self.shown.index),)
        )
        return (OrderPart(steps=steps, right="".join(letter.values()), wrong=wrong),)

    def worked(self) -> str:
        """Return each sign with its word."""
        return "; ".join(f"{sign} {WORDS[sign]}" for sign in self.shown) + "."
