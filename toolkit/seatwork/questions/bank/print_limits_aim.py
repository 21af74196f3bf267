"""Limits written in three ways, and the middle to aim at."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import ANGLE, LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import PrintQuestion
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.parts import Part
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep

FORMS = {
    "limits": "{first}/{second}",
    "one way": "{first} +{second}/-{nothing}",
    "both ways": "{first} ±{second}",
}
SUMS = {
    "limits": ("", "", "({first} + {second}) ÷ 2"),
    "one way": ("", "{first} + {second}", "{first} + {second} ÷ 2"),
    "both ways": ("{first} − {second}", "{first} + {second}", ""),
}
EXACT = Tolerance("0.001", "0.02", "Limits are read off or worked out exactly; this is rounding.")


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintLimitsAim(PrintQuestion):
    """Asks for both limits of a seat's diameter and for the size to aim at."""

    id = "print-limits-aim"
    goal = "Read limits in three ways of writing, and aim at the middle."
    difficulty = 1
    codes = ("N1", "N2")
    sizes: ClassVar = lengths("hole_diameter", "first", "second") | {"included_angle": ANGLE}
    hints = (
        "One sign for both ways goes up and down by as much; two signs say each way by itself.",
        "Between least and greatest, where is the same room on both sides?",
    )

    form: str
    hole_diameter: float
    first: float
    second: float
    included_angle: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw limits and a way of writing them."""
        least = step_between(rng, 0.380, 0.640, 0.005)
        width, form = pick(rng, (0.012, 0.016, 0.020, 0.026)), pick(rng, tuple(FORMS))
        first, second = {
            "limits": (least + width, least),
            "one way": (least, width),
            "both ways": (least + width / 2, width / 2),
        }[form]
        return cls(
            form=form,
            hole_diameter=0.266 * INCH,
            first=first * INCH,
            second=second * INCH,
            included_angle=82.0,
        )

    def note(self) -> str:
        """Return the note, its limits in one of the three ways."""
        size = FORMS[self.form].format(
            first=self.stated("first"),
            second=self.stated("second"),
            nothing=".000" if self.system == "inch" else "0",
        )
        hole, angle = self.stated("hole_diameter"), self.stated("included_angle")
        return f"⌀{hole} THRU ⌵ ⌀{size} X {angle}"

    @property
    def least(self) -> float:
        """Least diameter [mm]."""
        return {
            "limits": self.second,
            "one way": self.first,
            "both ways": self.first - self.second,
        }[self.form]

    @property
    def greatest(self) -> float:
        """Greatest diameter [mm]."""
        return self.first if self.form == "limits" else self.first + self.second

    @property
    def parts(self) -> tuple[Part, ...]:
        """Least, greatest, and the size to aim at."""
        least, greatest = self.least, self.greatest
        width, aim = greatest - least, (least + greatest) / 2
        both = "You gave the other limit. Read which is asked for."
        return (
            self.length(
                least,
                EXACT,
                "Least diameter of the seat?",
                slip("M49", greatest, both),
                slip("M63", least - width / 2, "You went past the limit. Read ± and + again."),
            ),
            self.length(
                greatest,
                EXACT,
                "Greatest diameter of the seat?",
                slip("M49", least, both),
                slip("M63", greatest + width / 2, "You went past the limit. Read ± and + again."),
            ),
            self.length(
                aim,
                EXACT,
                "At what size do you aim?",
                slip("M49", least, "You aim at the low limit. Half of your parts would be under."),
                slip("M49", greatest, "You aim at the high limit. Half of them would be over."),
                slip("M63", width, "You gave the width of the limits. Aim at a size between them."),
                slip("M63", width / 2, "You gave half the width. Add it to the low limit."),
                slip(
                    "M63",
                    least + 1.5 * width,
                    "You went past the limit, by half their width. Aim between them.",
                ),
            ),
        )

    def because(self) -> str:
        """Return why the middle is aimed at."""
        return "The middle leaves the same room for the stop on both sides."

    def working(self) -> Iterator[WorkedStep]:
        """Yield both limits and the middle."""
        least, greatest, aim = SUMS[self.form]
        middle = (self.least + self.greatest) / 2
        yield WorkedStep("the least diameter", least, self.least, LENGTH, part=0)
        yield WorkedStep("the greatest diameter", greatest, self.greatest, LENGTH, part=1)
        yield WorkedStep("the middle, to aim at", aim, middle, LENGTH, part=2)
