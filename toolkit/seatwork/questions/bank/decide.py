"""Accept, reject or cannot tell: a reading, its doubt, and limits."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
from seatwork.seats import measuring

VERDICTS = (
    ("accept", "accept"),
    ("reject", "reject"),
    ("cannot tell", "cannot tell with this gage"),
)
WORDS = {"inside": "accept", "outside": "reject", "cannot be told": "cannot tell"}
TRUTH = (
    "M60",
    "You took the reading for the truth. Add the doubt, take it off, and look at both.",
)
FAULT = ("M60", "You took the doubt for a fault of the part. It is a fault of the gage.")
SPENT = ("M60", "You let the doubt decide where it cannot. Look how far the limit is.")
WRONG = {
    "accept": {"reject": FAULT, "cannot tell": SPENT},
    "reject": {"accept": TRUTH, "cannot tell": SPENT},
    "cannot tell": {"accept": TRUTH, "reject": FAULT},
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Decide(NumberQuestion):
    """Asks for the verdict on a reading, and from which reading on a part passes."""

    id = "decide"
    goal = "Say accept, reject or cannot tell from reading, doubt and limits."
    difficulty = 2
    codes = ("G1", "N2", "G2")
    measure = LENGTH
    accepted = Tolerance("0.0005", "0.01", "The sum is exact; half of .001 in is rounding.")
    sizes: ClassVar = lengths("least_diameter", "greatest_diameter", "doubt", "reading")
    asked = (
        "A seat may measure {least_diameter} to {greatest_diameter} at the face. The caliper is "
        "sure to {doubt} either way. It reads {reading}."
    )
    hints = (
        "How large may the seat be in truth, and how small, with this reading?",
        "Are both of these within the limits? Are both out of them?",
    )

    least_diameter: float
    greatest_diameter: float
    doubt: float
    reading: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw limits, a doubt, and a reading inside, outside or within the doubt of a limit."""
        least = step_between(rng, 0.380, 0.640, 0.001)
        width, doubt = pick(rng, (0.020, 0.026)), pick(rng, (0.002, 0.003))
        nearest = pick(rng, (-5, -1, 1, 5, 7)) / 1000
        low = rng.random() < 0.5
        return cls(
            least_diameter=least * INCH,
            greatest_diameter=(least + width) * INCH,
            doubt=doubt * INCH,
            reading=(least + nearest if low else least + width - nearest) * INCH,
        )

    def value(self) -> float:
        """Return the lowest reading that passes [mm]."""
        return self.least_diameter + self.doubt

    @property
    def verdict(self) -> str:
        """What may be said of the part."""
        said = measuring.decide(
            self.reading,
            lower=self.least_diameter,
            upper=self.greatest_diameter,
            uncertainty=self.doubt,
        )
        return WORDS[said.verdict]

    @property
    def parts(self) -> tuple[Part, ...]:
        """The verdict, and the lowest reading that passes."""
        verdict = ChoicePart(
            prompt="What do you say?",
            options=VERDICTS,
            right=self.verdict,
            wrong=WRONG[self.verdict],
        )
        lowest = "From which reading on do you pass such a part?"
        return (verdict, self.number(self.value(), self.mistakes, lowest))

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips of the second part."""
        yield slip(
            "M60",
            self.least_diameter,
            "You took the reading for the truth. The gage has its doubt.",
        )
        yield slip(
            "M15",
            self.least_diameter - self.doubt,
            "You took the doubt off. So you would pass parts that are too small.",
        )
        yield slip(
            "M24",
            self.least_diameter + 2 * self.doubt,
            "You added the doubt twice. It counts once, from the limit inward.",
        )
        yield slip(
            "M49",
            (self.least_diameter + self.greatest_diameter) / 2,
            "You gave the middle. You aim there, but you pass parts long before it.",
        )

    def because(self) -> str:
        """Return what the doubt makes of the reading."""
        return (
            f"A reading of {self.stated('reading')} may be {self.show(self.reading - self.doubt)} "
            f"or {self.show(self.reading + self.doubt)}: {self.verdict}. A part passes only if it "
            "is inside by the doubt."
        )

    def working(self) -> Iterator[WorkedStep]:
        """Yield the one step."""
        yield WorkedStep("the lowest reading", "{least_diameter} + {doubt}", self.value(), LENGTH)
