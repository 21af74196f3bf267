"""A box of heads as it was asked in version 1, whose heads spread more than a list allows."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import flat_head
from seatwork.questions.type.draws import step_between
from seatwork.questions.type.parts import Part
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep, across_steps, angle_steps
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class FirstLotOfHeads(NumberQuestion):
    """Asks for both ends of what the heads of a box do in one seat."""

    id = "lot-of-heads"
    goal = "Foresee the worst proud and the worst low head of a box."
    difficulty = 3
    codes = ("S6",)
    unmarked = "two amounts are asked for, one on each side of the face"
    measure = LENGTH
    accepted = Tolerance("0.001", "0.025", "A depth micrometer over a head holds about .001 in.")
    sizes: ClassVar = {
        "least_sharp": LENGTH,
        "greatest_sharp": LENGTH,
        "diameter": LENGTH,
        "included_angle": ANGLE,
    }
    asked = (
        "The heads in a box of {size} flat head screws measure {least_sharp} to {greatest_sharp} "
        "across their theoretical sharp diameter. All seats are cut to {diameter} at the face; "
        "head and seat have {included_angle}."
    )
    hints = (
        "Take one head at a time: the greatest, then the least.",
        "Each of them is an ordinary head in a seat of its own angle.",
        "One side holds half of what head and seat differ in diameter.",
    )

    size: str
    least_sharp: float
    greatest_sharp: float
    diameter: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw heads up to .034 in wider and up to .056 in narrower than the seat."""
        head = flat_head(rng)
        above = step_between(rng, 0.022, 0.034, 0.001) * INCH
        below = step_between(rng, 0.034, 0.056, 0.001) * INCH
        return cls(
            size=head.size,
            greatest_sharp=head.sharp_diameter,
            diameter=head.sharp_diameter - above,
            least_sharp=head.sharp_diameter - above - below,
            included_angle=82.0,
        )

    def rise(self, difference: float) -> float:
        """Return the height that belongs to a difference in diameter [mm]."""
        return difference / 2 / half_tangent(self.included_angle)

    def value(self) -> float:
        """Return how far the least head lies below [mm]."""
        return self.rise(self.diameter - self.least_sharp)

    @property
    def parts(self) -> tuple[Part, ...]:
        """How far the greatest head stands proud, how far the least lies below."""
        up, down = self.greatest_sharp - self.diameter, self.diameter - self.least_sharp
        return (
            self.number(
                self.rise(up), self._slips_of(up, down), "How far does the greatest stand proud?"
            ),
            self.number(
                self.rise(down), self._slips_of(down, up), "How far does the least lie below?"
            ),
        )

    def _slips_of(self, own: float, other: float) -> Callable[[], Iterable[Mistake]]:
        return lambda: (
            slip("M14", own),
            slip("M02", 2 * self.rise(own)),
            slip(
                "M49",
                self.rise(own + other),
                "You set the greatest against the least. Each head lies in a seat of its own.",
            ),
        )

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips of the second part."""
        return self._slips_of(
            self.diameter - self.least_sharp, self.greatest_sharp - self.diameter
        )()

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        up, down = self.greatest_sharp - self.diameter, self.diameter - self.least_sharp
        how = "divide across by the tangent of half the angle"
        yield from across_steps("{greatest_sharp}", "{diameter}", up, part=0)
        yield from angle_steps(self.included_angle, part=0)
        label = "how far the greatest head stands proud"
        yield WorkedStep(label, "{1} ÷ {3}", self.rise(up), self.measure, how, part=0)
        yield from across_steps("{diameter}", "{least_sharp}", down, first=5)
        label = "how far the least lies below"
        yield WorkedStep(label, "{6} ÷ {3}", self.rise(down), self.measure, how)
