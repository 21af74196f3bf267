"""Reading the note of a countersunk hole."""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import partial
from random import Random
from typing import ClassVar, Self

from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.common_slips import common_slips
from seatwork.questions.type.draws import pick
from seatwork.questions.type.measures import ANGLE, COUNT, LENGTH, Measure
from seatwork.questions.type.parts import NumberPart, Part
from seatwork.questions.type.question import Question, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.units import show_note

COUNTED = Tolerance("0.5", "0.5", "A count is a whole number and read off exactly.")
READ = Tolerance("0.001", "0.02", "A size in a note is read off exactly; .001 in is rounding.")
WHOLE = Tolerance("0.5", "0.5", "Angles in notes are whole degrees, half a degree is rounding.")


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadNote(Question):
    """Asks for the fields of a note: count, hole, seat, angle."""

    id = "read-note"
    goal = "Read a countersink note field by field."
    difficulty = 1
    codes = ("N1",)
    unmarked = "the note stands there as on the print"
    sizes: ClassVar = {
        "count": COUNT,
        "hole_diameter": LENGTH,
        "diameter": LENGTH,
        "included_angle": ANGLE,
    }
    asked = (
        "The print is in {unit_name} and says:  {count}X ⌀{hole_diameter} THRU ⌵ ⌀{diameter} X "
        "{included_angle}"
    )
    hints = (
        "A number with X right behind it, no space, is a count.",
        "⌀ stands before a diameter; the sign before it says of what. ⌵ is a countersink.",
    )

    count: int
    hole_diameter: float
    diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a count, a flat head and an angle."""
        head = flat_head(rng)
        return cls(
            count=pick(rng, (2, 3, 4, 5, 6, 8, 10, 12)),
            hole_diameter=head.hole_diameter,
            diameter=head.sharp_diameter,
            included_angle=pick(rng, (82.0, 90.0, 100.0)),
        )

    def stated(self, name: str) -> str:
        """Write a size as notes do: without unit, the print's unit is said apart."""
        if name in ("hole_diameter", "diameter"):
            return show_note(getattr(self, name), self.system)
        return Question.stated(self, name)

    @property
    def unit_name(self) -> str:
        """Unit of the print in words."""
        return "inches" if self.system == "inch" else "millimeters"

    def text(self) -> str:
        """Return the note with the unit of its print."""
        stated = {name: self.stated(name) for name in self.sizes}
        return self.asked.format(unit_name=self.unit_name, **stated)

    @property
    def parts(self) -> tuple[Part, ...]:
        """The four fields."""
        hole, seat = self.hole_diameter, self.diameter
        in_hole = slip(
            "M44", seat, "You took the diameter of the seat. Look which number stands behind ⌵."
        )
        in_seat = slip(
            "M44", hole, "You took the diameter of the hole. Look which number stands before THRU."
        )
        half = slip("M01", self.included_angle / 2, "You gave half the angle. Notes give it whole.")
        return (
            self._part(COUNT, self.count, "How many holes?", COUNTED),
            self._part(
                LENGTH, hole, "Diameter of the holes?", READ, in_hole, slip("M13", hole / 2)
            ),
            self._part(
                LENGTH,
                seat,
                "Diameter of the seat at the face?",
                READ,
                in_seat,
                slip("M13", seat / 2),
            ),
            self._part(ANGLE, self.included_angle, "Included angle of the seat?", WHOLE, half),
        )

    def _part(
        self, measure: Measure, value: float, prompt: str, accepted: Tolerance, *slips: Mistake
    ) -> NumberPart:
        return NumberPart(
            measure=measure,
            system=self.system,
            value=value,
            tolerance=accepted.amount(self.system),
            mistakes=lambda: slips,
            prompt=prompt,
            reason=accepted.reason,
            more=partial(common_slips, self),
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield what each field is."""
        yield WorkedStep("the number of holes", "", self.count, COUNT, part=0)
        yield WorkedStep("the diameter of the holes", "", self.hole_diameter, LENGTH, part=1)
        yield WorkedStep("the diameter of the seat", "", self.diameter, LENGTH, part=2)
        yield WorkedStep("the included angle", "", self.included_angle, ANGLE)

    def worked(self) -> str:
        """Return the fields in order."""
        count, hole, seat = (self.stated(name) for name in ("count", "hole_diameter", "diameter"))
        return (
            f"{count}X: {count} holes. ⌀{hole} THRU: each {hole} in diameter, all the way. ⌵ "
            f"⌀{seat}: countersunk to {seat} at the face. X {self.stated('included_angle')}: by "
            "that included angle."
        )
