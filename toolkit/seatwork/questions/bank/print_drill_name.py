"""The size of a drill named by number, letter or fraction, from a chart."""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import FINE_LENGTH
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import PrintQuestion, read_off
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import Part
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep

CHARTS = {
    "number": (
        ("#1", 0.228),
        ("#2", 0.221),
        ("#3", 0.213),
        ("#4", 0.209),
        ("#5", 0.2055),
        ("#6", 0.204),
        ("#7", 0.201),
        ("#8", 0.199),
        ("#9", 0.196),
    ),
    "letter": (
        ("C", 0.242),
        ("D", 0.246),
        ("E", 0.250),
        ("F", 0.257),
        ("G", 0.261),
        ("H", 0.266),
        ("I", 0.272),
        ("J", 0.277),
        ("K", 0.281),
    ),
    "fraction": tuple((f"{count}/64", count / 64) for count in range(11, 31, 2)),
}
"""Drill sizes [in]: ASME B94.11M; the tests hold them against the table of the package."""

EXACT = Tolerance("0.0005", "0.012", "A size in a chart is read off exactly; this is rounding.")
ABOVE = "You read the row above. Lay a rule under the row you want."
BELOW = "You read the row below. Lay a rule under the row you want."


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintDrillName(PrintQuestion):
    """Asks for the size of a named drill, three rows of the chart beside it."""

    id = "print-drill-name"
    goal = "Find a drill by number, letter or fraction."
    difficulty = 1
    codes = ("N2",)
    shape = "hole"
    sizes: ClassVar = dict.fromkeys(("row_above", "row_size", "row_below"), FINE_LENGTH)
    before = (
        "The drill chart has {above_name}: {row_above}; {name}: {row_size}; {below_name}: "
        "{row_below}."
    )
    hints = (
        "The name of a drill is no size. Look for the name in the chart.",
        "By number drills get smaller as the number grows; by letter they get larger.",
    )

    above_name: str
    row_above: float
    name: str
    row_size: float
    below_name: str
    row_below: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw three rows of a chart."""
        rows = CHARTS[pick(rng, ("number", "number", "letter", "fraction"))]
        place = 1 + int(rng.random() * (len(rows) - 2))
        above, row, below = rows[place - 1 : place + 2]
        return cls(
            above_name=above[0],
            row_above=above[1] * INCH,
            name=row[0],
            row_size=row[1] * INCH,
            below_name=below[0],
            row_below=below[1] * INCH,
        )

    def note(self) -> str:
        """Return the note."""
        return f"{self.name} DRILL THRU"

    def chart(self) -> tuple[tuple[str, str], ...]:
        """Return the three rows of the chart."""
        return tuple(
            (getattr(self, f"{row}name"), self.stated(size))
            for row, size in (("above_", "row_above"), ("", "row_size"), ("below_", "row_below"))
        )

    @property
    def parts(self) -> tuple[Part, ...]:
        """The size of the drill."""
        return (
            self.number(
                FINE_LENGTH,
                self.row_size,
                EXACT,
                "How large is the hole?",
                slip("M50", self.row_above, ABOVE),
                slip("M50", self.row_below, BELOW),
                *self._misread(),
            ),
        )

    def _misread(self) -> Iterator[Mistake]:
        """Yield what a number or a fraction gives that is read as a size."""
        if self.name.startswith("#"):
            number = int(self.name[1:]) * INCH
            said = "You read the number as {}. It is a name: look it up."
            yield slip("M38", number / 64, said.format("64ths"))
            yield slip("M38", number / 1000, said.format("thousandths"))
            yield slip("M38", number / 32, said.format("32nds"))
        elif "/" in self.name:
            count, _ = self.name.split("/")
            said = "You read the fraction as {}. Look at what stands under the line."
            yield slip("M38", int(count) / 32 * INCH, said.format("32nds"))
            yield slip("M38", int(count) / 100 * INCH, said.format("hundredths"))

    def working(self) -> Iterator[WorkedStep]:
        """Yield the row of the chart."""
        yield read_off("the size of the drill", self.row_size, 0, FINE_LENGTH)
