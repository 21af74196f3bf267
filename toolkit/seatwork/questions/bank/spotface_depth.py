"""Depth of a spotface on a sloped, scaly pad: from where, and how far from there."""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import partial
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH, RATIO, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import hex_cap
from seatwork.questions.type.common_slips import common_slips
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.parts import ChoicePart, NumberPart, Part
from seatwork.questions.type.question import Question, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.seats.cones import half_tangent

PLACES = (
    ("low", "on the low side"),
    ("axis", "at the edge of the hole"),
    ("high", "on the high side"),
)
NOT_FIRST = "You let the cutter pass metal before it touched. Lay a ruler on the slope and see."
STOP = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")


@dataclass(frozen=True, slots=True, kw_only=True)
class SpotfaceDepth(Question):
    """Asks where the cutter touches first, the travel from there, and the depth at the axis."""

    id = "spotface-depth"
    goal = "Say from where the depth of a spotface is measured, and set the stop from there."
    difficulty = 3
    codes = ("F1", "S5", "N1")
    unmarked = "a mark would say where the cutter touches first"
    sizes: ClassVar = lengths("diameter", "hole_diameter", "scale") | {"slope": ANGLE}
    asked = (
        "A cast pad with a draft of {slope} is spotfaced to {diameter} round a hole of "
        "{hole_diameter}. The cut must be clean all round. Then it goes {scale} deeper, to be "
        "under the scale. The stop is zeroed where the cutter first touches."
    )
    hints = (
        "Sketch the slope, and the cutter coming down square to the hole. What does it meet first?",
        "How much lower is the face at the opposite edge of the cutter? Then add what the scale "
        "needs.",
        "At the axis the face has come down only half of that.",
    )

    diameter: float
    hole_diameter: float
    slope: float
    scale: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a spotface, a draft of 2° to 6° and .015 to .040 in for scale."""
        screw = hex_cap(rng)
        wide = round(1.3 * screw.head_diameter / INCH * 16) / 16
        return cls(
            diameter=(wide + pick(rng, (0.125, 0.25, 0.375))) * INCH,
            hole_diameter=screw.hole_diameter,
            slope=step_between(rng, 2, 6, 0.5),
            scale=step_between(rng, 0.015, 0.040, 0.001) * INCH,
        )

    @property
    def rise(self) -> float:
        """How far the face rises for each millimeter across [1]."""
        return half_tangent(2 * self.slope)

    @property
    def travel(self) -> float:
        """How far the cutter goes from its first touch [mm]."""
        return self.diameter * self.rise + self.scale

    @property
    def at_axis(self) -> float:
        """How far below the sloped face the flat lies at the axis of the hole [mm]."""
        return self.diameter / 2 * self.rise + self.scale

    @property
    def parts(self) -> tuple[Part, ...]:
        """Where it touches first, the travel from there, the depth at the axis."""
        where = ChoicePart(
            prompt="Where does the cutter first touch?",
            options=PLACES,
            right="high",
            wrong={"low": ("M25", NOT_FIRST), "axis": ("M25", NOT_FIRST)},
        )
        travel = "How far does the quill travel from the first touch?"
        axis = "How far below the sloped face does the flat lie, at the axis of the hole?"
        return (
            where,
            self._length(self.travel, tuple(self._of_travel()), travel),
            self._length(self.at_axis, tuple(self._of_axis()), axis),
        )

    def _length(self, value: float, slips: tuple[Mistake, ...], prompt: str) -> NumberPart:
        return NumberPart(
            measure=LENGTH,
            system=self.system,
            value=value,
            tolerance=STOP.amount(self.system),
            mistakes=lambda: slips,
            prompt=prompt,
            reason=STOP.reason,
            more=partial(common_slips, self),
        )

    def _of_travel(self) -> Iterable[Mistake]:
        """Yield the slips of the travel."""
        yield slip(
            "M25", self.at_axis, "You measured from the axis. The stop is zeroed at first touch."
        )
        yield slip(
            "M23",
            self.diameter * self.rise,
            "You left the scale out. The cut would run in the skin.",
        )
        yield slip("M26", self.hole_diameter * self.rise + self.scale)
        yield slip(
            "M25", self.scale, "You gave the scale alone. The far side would not be touched."
        )

    def _of_axis(self) -> Iterable[Mistake]:
        """Yield the slips of the depth at the axis."""
        yield slip(
            "M25",
            self.travel,
            "You found the depth below the high side. You were asked about the axis.",
        )
        yield slip(
            "M23",
            self.diameter / 2 * self.rise,
            "You left the scale out. The cut would run in the skin.",
        )
        yield slip("M26", self.hole_diameter / 2 * self.rise + self.scale)
        yield slip(
            "M13",
            self.diameter / 4 * self.rise + self.scale,
            "You took a quarter of the width. The axis is half of it away.",
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return (
            "The cutter meets the high side first. The cut is clean when it reaches the face at "
            "the low edge, and the axis lies halfway."
        )

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        drop, half = self.diameter * self.rise, self.diameter / 2 * self.rise
        yield WorkedStep("the tangent of the slope", "tangent of {slope}", self.rise, RATIO, part=1)
        label, how = "the drop across the spotface", "multiply the spotface by the tangent"
        yield WorkedStep(label, "{diameter} × {0}", drop, FINE_LENGTH, how, part=1)
        how = "add what the scale needs"
        yield WorkedStep("the travel", "{1} + {scale}", self.travel, LENGTH, how, part=1)
        label, how = "the drop to the axis", "halve the drop across the spotface"
        yield WorkedStep(label, "{1} ÷ 2", half, FINE_LENGTH, how)
        how = "add what the scale needs"
        yield WorkedStep("the depth at the axis", "{3} + {scale}", self.at_axis, LENGTH, how)
