"""A head in a seat of another angle: which end touches, and how far the head stands."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.shared.seat_question import SeatQuestion, width_for_depth
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slip_sentences import SLIPS
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, across_steps, angle_steps
from seatwork.seats import Head, fit
from seatwork.seats.cones import half_tangent

PLACES = {
    "hole edge": "at the narrow end, the edge of the hole",
    "rim": "at the wide end, by the rim",
    "cone": "all along the cone",
}

MET = {True: "{hole_diameter}", False: "{diameter}"}
"""Size at which head and seat meet, by whether the head is the steeper."""


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
        "Head: {head_angle}, {head_diameter} (theoretical sharp). Seat: {included_angle}, "
        "{diameter} at the face. Hole: {hole_diameter}. You lay the head in the seat."
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

    @property
    def counting_angle(self) -> str:
        """Name of the angle that the answer goes by: a flatter head shows its own slope alone."""
        return "included_angle" if self.head_angle < self.included_angle else "head_angle"

    def at_angle(self, angle: float) -> Self | None:
        """Return the question with another angle that counts, if it touches at the same end."""
        other = super(WrongAngle, self).at_angle(angle)
        alike = other is not None and other.counting_angle == self.counting_angle
        return other if alike else None

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        head, seat = half_tangent(self.head_angle), half_tangent(self.included_angle)
        rim = (self.head_diameter - self.diameter) / 2
        yield slip("M17", 0.0)
        if self.head_angle < self.included_angle:
            points = self.head_diameter / (2 * head) - self.diameter / (2 * seat)
            yield slip(
                "M03", points, "You measured both cones down to their points. They meet higher up."
            )
            yield slip("M02", 2 * self.value())
            return
        at_hole = (self.head_diameter - self.hole_diameter) / (2 * head)
        yield slip("M18", at_hole - (self.diameter - self.hole_diameter) / (2 * seat))
        yield slip(
            "M07",
            rim / seat,
            "You used the angle of the seat. Above the face the slope of the head counts.",
        )
        yield width_for_depth(2 * rim, self.head_angle)

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "The head is steeper than the seat, so it meets the edge of the hole."
            if self.head_angle < self.included_angle
            else "The head is flatter than the seat, so it meets the edge of the seat."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        steeper = self.head_angle < self.included_angle
        met, name = (self.hole_diameter if steeper else self.diameter), MET[steeper]
        on_head = (self.head_diameter - met) / 2 / half_tangent(self.head_angle)
        yield from across_steps("{head_diameter}", name, self.head_diameter - met)
        yield from angle_steps(self.head_angle, "{head_angle}")
        stands, how = (
            "how far the head stands proud",
            "divide across by the tangent of half the angle",
        )
        if not steeper:
            yield WorkedStep(stands, "{1} ÷ {3}", on_head, LENGTH, how)
            return
        yield WorkedStep("the height on the head", "{1} ÷ {3}", on_head, FINE_LENGTH, how)
        yield from across_steps("{diameter}", name, self.diameter - met, first=5)
        yield from angle_steps(self.included_angle, first=7)
        in_seat = (self.diameter - met) / 2 / half_tangent(self.included_angle)
        yield WorkedStep("the height in the seat", "{6} ÷ {8}", in_seat, FINE_LENGTH, how)
        how = "take the height in the seat off the height on the head"
        yield WorkedStep(stands, "{4} − {9}", self.value(), LENGTH, how)
