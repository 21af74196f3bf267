"""A flatter head that lies flush in a steeper seat: right to look at, and wrong."""

from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.slip_sentences import SLIPS

PLACES = (
    ("cone", "all along the cone"),
    ("rim", "only on a line at its rim"),
    ("hole edge", "only at the edge of the hole"),
)
ACCEPTED = (
    ("yes", "yes, it is flush"),
    ("no", "no, flush alone accepts no seat"),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class FlushContact(Question):
    """Asks where a flush head touches a seat of another angle, and whether it is good."""

    id = "flush-contact"
    goal = "See that a flush head can be carried on a line."
    difficulty = 2
    codes = ("S3", "S6")
    sizes: ClassVar = {
        "head_angle": ANGLE,
        "sharp_diameter": LENGTH,
        "included_angle": ANGLE,
        "hole_diameter": LENGTH,
    }
    asked = (
        "Head: {head_angle}, theoretical sharp diameter {sharp_diameter}. Seat: "
        "{included_angle}, cut to the same diameter. Hole: {hole_diameter}. A fingernail finds "
        "no step: the head is flush."
    )
    hints = (
        "Sketch both slopes with the head's top in the face.",
        "Which cone is narrower just below the face, the head's or the seat's?",
        "Where the head is narrower than its seat, it cannot touch it.",
    )

    head_angle: float
    sharp_diameter: float
    included_angle: float
    hole_diameter: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flatter head in a steeper seat of the same diameter."""
        head = flat_head(rng)
        head_angle, seat_angle = pick(rng, ((90.0, 82.0), (100.0, 82.0), (100.0, 90.0)))
        return cls(
            head_angle=head_angle,
            sharp_diameter=head.sharp_diameter,
            included_angle=seat_angle,
            hole_diameter=head.hole_diameter,
        )

    @property
    def parts(self) -> tuple[Part, ...]:
        """Where it touches, and whether the seat is accepted."""
        wrong = {"cone": ("M17", SLIPS["M17"]), "hole edge": ("M18", SLIPS["M18"])}
        flush = "You took flush for good. Angle and contact are checks of their own."
        return (
            ChoicePart(prompt="Where does it touch?", options=PLACES, right="rim", wrong=wrong),
            ChoicePart(
                prompt="Can the seat be accepted?",
                options=ACCEPTED,
                right="no",
                wrong={"yes": ("M17", flush)},
            ),
        )

    def worked(self) -> str:
        """Return the answer worked out."""
        return (
            f"The head of {self.stated('head_angle')} narrows faster than the seat of "
            f"{self.stated('included_angle')}. They have the same width in the face, so below it "
            "the head stands free: it is carried on a line at its rim. Flush, and wrong."
        )
