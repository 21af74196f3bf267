"""Which of a seat's sizes is which, picked on the drawing."""

from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.letters import LETTERS
from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.draws import pick, shuffled
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question

SIZES = {
    "diameter": "diameter at the face",
    "hole": "diameter of the hole",
    "depth": "depth of the cone, face to hole edge",
    "apex": "depth to the point of the cone",
    "slant": "width of the cone along its slope",
}
CODES = {
    frozenset(("depth", "apex")): "M03",
    frozenset(("depth", "slant")): "M08",
    frozenset(("apex", "slant")): "M08",
}

POINTED = "You pointed at the {text}. Follow each size with a finger."


@dataclass(frozen=True, slots=True, kw_only=True)
class WhichSize(Question):
    """Asks which letter on the drawing of a seat stands at the size named."""

    id = "which-size"
    version = 2
    goal = "Find each size of a seat on its drawing."
    difficulty = 1
    codes = ("N1", "S4")
    sizes: ClassVar = {"diameter": LENGTH, "hole_diameter": LENGTH, "included_angle": ANGLE}
    asked = (
        "The drawing shows a seat of {included_angle}, cut to {diameter} at the face on a hole of "
        "{hole_diameter}. Letters stand at five of its sizes. Which letter is the {wanted}?"
    )
    hints = (
        "Go along the size with a finger. Where does it begin, and where does it end?",
        "A depth runs straight down. The point of the cone lies below the edge of the hole.",
    )

    wanted: str
    order: str
    diameter: float
    hole_diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head's seat, one of its sizes, and the letters."""
        head = flat_head(rng)
        return cls(
            wanted=SIZES[pick(rng, tuple(SIZES))],
            order=",".join(shuffled(rng, tuple(SIZES))),
            diameter=head.sharp_diameter,
            hole_diameter=head.hole_diameter,
            included_angle=pick(rng, (82.0, 100.0, 120.0)),
        )

    @property
    def letters(self) -> dict[str, str]:
        """The letter of each size."""
        return dict(zip(self.order.split(","), LETTERS.upper(), strict=False))

    @property
    def parts(self) -> tuple[Part, ...]:
        """The letters."""
        right = next(word for word, text in SIZES.items() if text == self.wanted)
        letters = self.letters
        wrong = {
            letters[word]: (CODES.get(frozenset((word, right)), "M44"), POINTED.format(text=text))
            for word, text in SIZES.items()
            if word != right
        }
        options = tuple((letter, letter) for letter in letters.values())
        return (ChoicePart(options=options, right=letters[right], wrong=wrong),)

    def worked(self) -> str:
        """Return every letter with its size."""
        named = sorted((letter, SIZES[word]) for word, letter in self.letters.items())
        return "; ".join(f"{letter} is the {text}" for letter, text in named) + "."
