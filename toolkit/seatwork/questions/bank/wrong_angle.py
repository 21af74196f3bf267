"""A head in a seat of another angle: which end touches, and how far the head stands."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.seat_question import SeatQuestion
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.measures import ANGLE, LENGTH
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slip_sentences import SLIPS
from seatwork.questions.type.slips import Mistake, slip
from seatwork.seats import Head, fit
from seatwork.seats.cones import half_tangent

PLACES = {
    "hole edge": "at the narrow end, the edge of the hole",
    "rim": "at the wide end, by the rim",
    "cone": "all along the cone",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class WrongAngle(SeatQuestion):
    """Asks where a head touches a seat of another angle, and how far it stands proud."""

    id = "wrong-angle"
    goal = "Say what happens when the cutter's angle is not the head's."
    difficulty = 3
    codes = ("S3", "S6")
    unmarked = "where it lies would give it away"
    measure = LENGTH
    accepted = Tolerance("0.001", "0.03", "A depth micrometer over a head holds about .001 in.")
    sizes: ClassVar = {
        "head_diameter": LENGTH,
        "head_angle": ANGLE,
        "diameter": LENGTH,
        "hole_diameter": LENGTH,
        "included_angle": ANGLE,
    }
    asked = (
        "A flat head of {head_angle}, theoretical sharp diameter {head_diameter}, is laid into a "
        "seat cut with {included_angle}: {diameter} at the face, on a hole of {hole_diameter}."
    )
    hints = (
        "Sketch half of the head and half of the seat with their own slopes. Which is steeper?",
        "A steeper head goes down to the narrow end; a flatter one stops at the wide end.",
        "At the place of contact head and seat have the same diameter. How far below its top is "
        "that diameter on the head, and how far below the face is it in the seat?",
    )

    head_diameter: float
    head_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a steeper head in its own diameter, or a flatter one in a seat too small."""
        head = flat_head(rng)
        head_angle, seat_angle = pick(
            rng, ((82.0, 90.0), (82.0, 100.0), (90.0, 100.0), (100.0, 82.0), (90.0, 82.0))
        )
        short = 0.0 if head_angle < seat_angle else step_between(rng, 0.025, 0.060, 0.001)
        return cls(
            head_diameter=head.sharp_diameter,
            head_angle=head_angle,
            diameter=head.sharp_diameter - short * INCH,
            hole_diameter=head.hole_diameter,
            included_angle=seat_angle,
        )

    def head(self) -> Head:
        """Return the head."""
        return Head(sharp_diameter=self.head_diameter, included_angle=self.head_angle)

    def value(self) -> float:
        """Return how far the head stands proud [mm]."""
        return fit(self.head(), self.seat()).amount

    @property
    def parts(self) -> tuple[Part, ...]:
        """Where it touches, then how far it stands."""
        right = "hole edge" if self.head_angle < self.included_angle else "rim"
        other = "rim" if right == "hole edge" else "hole edge"
        where = ChoicePart(
            prompt="Where does the head touch?",
            options=tuple(PLACES.items()),
            right=right,
            wrong={other: ("M18", SLIPS["M18"]), "cone": ("M17", SLIPS["M17"])},
        )
        ask = "How far does the head stand proud of the face?"
        return where, self.number(self.value(), self.mistakes, ask)

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        head, seat = half_tangent(self.head_angle), half_tangent(self.included_angle)
        rim = (self.head_diameter - self.diameter) / 2
        yield slip("M17", 0.0)
        if self.head_angle < self.included_angle:
            points = self.head_diameter / (2 * head) - self.diameter / (2 * seat)
            yield slip("M03", points, "both cones measured down to their points")
            yield slip("M02", 2 * self.value())
            return
        at_hole = (self.head_diameter - self.hole_diameter) / (2 * head)
        yield slip("M18", at_hole - (self.diameter - self.hole_diameter) / (2 * seat))
        yield slip(
            "M07", rim / seat, "the seat's angle; above the face the head's own slope counts"
        )
        yield slip("M14", 2 * rim)

    def worked(self) -> str:
        """Return the answer worked out."""
        met = self.hole_diameter if self.head_angle < self.included_angle else self.diameter
        on_head = (self.head_diameter - met) / 2 / half_tangent(self.head_angle)
        in_seat = (self.diameter - met) / 2 / half_tangent(self.included_angle)
        steeper = "steeper" if self.head_angle < self.included_angle else "flatter"
        place = "the edge of the hole" if steeper == "steeper" else "the edge of the seat"
        return (
            f"The head is {steeper} than the seat, so it meets {place}, at {self.show(met)}. "
            f"On the head that diameter lies {self.fine(on_head)} below its top (half the "
            f"difference over the tangent of half of {self.stated('head_angle')}); in the seat it "
            f"lies {self.fine(in_seat)} below the face. The head stands "
            f"{self.show(self.value())} proud."
        )
