"""One seat for a whole box: how far the greatest head stands, how far the least lies below."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import FINE_LENGTH
from seatwork.quantities import INCH
from seatwork.questions.earlier.first_lot_of_heads import FirstLotOfHeads
from seatwork.questions.shared.real_sizes import flat_head_of
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import Question, Tolerance
from seatwork.questions.type.slips import Mistake, slip

SIZES = ("5/16", "3/8", "7/16", "1/2")
"""Sizes whose heads may differ enough that half a difference is not the answer."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LotOfHeads(FirstLotOfHeads):
    """Asks for both ends of what the heads of a box do in one seat."""

    version = 2
    earlier: ClassVar[Mapping[int, type[Question]]] = {1: FirstLotOfHeads}
    measure = FINE_LENGTH
    accepted = Tolerance("0.0004", "0.01", "The sum goes to .0001 in; the rest is rounding.")

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a box with the greatest head of the list and one near the least of its gage."""
        head = flat_head_of(pick(rng, SIZES))
        greatest = round(head.sharp_diameter / INCH, 3)
        least = round(head.least_sharp_diameter / INCH, 3) + step_between(rng, 0, 0.001, 0.001)
        share = step_between(rng, 0.4, 0.6, 0.02)
        return cls(
            size=head.size,
            greatest_sharp=greatest * INCH,
            diameter=round(greatest - share * (greatest - least), 3) * INCH,
            least_sharp=least * INCH,
            included_angle=82.0,
        )

    def _slips_of(self, own: float, other: float) -> Callable[[], Iterable[Mistake]]:
        known = super(LotOfHeads, self)._slips_of(own, other)
        return lambda: (slip("M52", own / 2), *known())
