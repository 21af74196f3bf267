"""Which of a seat's sizes is which, picked on the drawing."""

from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.questions.draws import pick, shuffled
from seatwork.questions.measures import ANGLE, LENGTH
from seatwork.questions.parts import ChoicePart, Part
from seatwork.questions.pictures import Drawing, seat_picture
from seatwork.questions.question import Question
from seatwork.questions.real_sizes import flat_head
from seatwork.seats import Countersink

SIZES = {
    "diameter": "diameter at the face",
    "hole": "diameter of the hole",
    "depth": "depth of the cone, face to hole edge",
    "apex": "depth to the point of the cone",
    "slant": "width of the cone along its slope",
}
CODES = {"diameter": "M44", "hole": "M44", "depth": "M12", "apex": "M03", "slant": "M08"}


@dataclass(frozen=True, slots=True, kw_only=True)
class WhichSize(Question):
    """Asks which of five lengths of one seat is the one named."""

    id = "which-size"
    goal = "Tell the lengths of a seat apart by what they must measure."
    difficulty = 2
    sizes: ClassVar = {"diameter": LENGTH, "hole_diameter": LENGTH, "included_angle": ANGLE}
    asked = (
        "A seat of {included_angle} has {diameter} at the face on a hole of {hole_diameter}. Five "
        "lengths were read off a sketch of it. Which of them is the {wanted}?"
    )
    hints = (
        "Sketch the section to scale; two of the lengths are given.",
        "Straight down is shorter than along the slope, and the point lies below the hole's edge.",
    )

    wanted: str
    order: str
    diameter: float
    hole_diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a flat head's seat and one of its lengths."""
        head = flat_head(rng)
        return cls(
            wanted=SIZES[pick(rng, ("depth", "apex", "slant"))],
            order=",".join(shuffled(rng, tuple(SIZES))),
            diameter=head.sharp_diameter,
            hole_diameter=head.hole_diameter,
            included_angle=pick(rng, (82.0, 100.0, 120.0)),
        )

    def seat(self) -> Countersink:
        """Return the seat asked about."""
        return Countersink(
            diameter=self.diameter,
            hole_diameter=self.hole_diameter,
            included_angle=self.included_angle,
        )

    def drawing(self) -> Drawing:
        """Return the seat in section, its depth as a question mark."""
        return seat_picture(self.seat(), self.system, "depth")

    def lengths(self) -> dict[str, float]:
        """Return the five lengths by their word [mm]."""
        seat = self.seat()
        return {
            "diameter": seat.diameter,
            "hole": seat.hole_diameter,
            "depth": seat.depth,
            "apex": seat.apex_depth,
            "slant": seat.slant_width,
        }

    @property
    def parts(self) -> tuple[Part, ...]:
        """The lengths as shown."""
        lengths = self.lengths()
        shown = tuple(
            (word, LENGTH.show(lengths[word], self.system)) for word in self.order.split(",")
        )
        right = next(word for word, text in SIZES.items() if text == self.wanted)
        wrong = {
            word: (CODES[word], f"that is the {SIZES[word]}") for word in SIZES if word != right
        }
        return (ChoicePart(options=shown, right=right, wrong=wrong),)

    def worked(self) -> str:
        """Return every length by its name."""
        lengths = self.lengths()
        said = [f"{SIZES[word]} {LENGTH.show(lengths[word], self.system)}" for word in SIZES]
        return "; ".join(said).capitalize() + "."
