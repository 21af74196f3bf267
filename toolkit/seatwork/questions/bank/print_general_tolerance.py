"""Limits from the title block, by the number of decimal places."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH, lengths
from seatwork.quantities import EXACT_INCH, INCH
from seatwork.questions.shared.print_question import SUM, PrintQuestion
from seatwork.questions.type.draws import pick
from seatwork.questions.type.parts import NumberPart, Part
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep
from seatwork.units import show_note
from seatwork.units.showing import rounded

SIGNS = {"inch": (".XX", ".XXX"), "metric": (".X", ".XX")}
PLACES = {"inch": (2, 3), "metric": (1, 2)}


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintGeneralTolerance(PrintQuestion):
    """Asks for the limits of a bore without a tolerance of its own."""

    id = "print-general-tolerance"
    goal = "Take the limits from the title block by the number of decimal places."
    difficulty = 2
    codes = ("N1", "N2")
    shape = "bore"
    sizes: ClassVar = lengths("hole_diameter", "diameter", "coarse", "fine", "depth")
    before = "The title block has {coarse_sign} ±{coarse} and {fine_sign} ±{fine}."
    hints = (
        "Count the decimal places of the bore as it is printed.",
        "That many X behind the point: which line of the block is it?",
    )

    hole_diameter: float
    diameter: float
    depth: float
    is_fine: bool
    coarse: float
    fine: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a bore with few or many places, and a title block."""
        coarse, fine = pick(rng, ((0.015, 0.005), (0.020, 0.005), (0.010, 0.003)))
        is_fine = rng.random() < 0.5
        whole = round(0.30 + 0.01 * int(rng.random() * 40), 2)
        return cls(
            hole_diameter=0.266 * INCH,
            diameter=(whole + (0.001 * (1 + int(rng.random() * 8)) if is_fine else 0)) * INCH,
            depth=0.250 * INCH,
            is_fine=is_fine,
            coarse=coarse * INCH,
            fine=fine * INCH,
        )

    def stated_in(self, system: str) -> Self:
        """Return the question in `system`, the bore with the places it is printed with."""
        found = PrintQuestion.stated_in(self, system)
        amount = LENGTH.amount(found.diameter, system)
        printed = rounded(amount, PLACES[system][self.is_fine])
        scale = EXACT_INCH if system == "inch" else 1
        return replace(found, diameter=float(printed * scale))

    def stated(self, name: str) -> str:
        """Write a size as prints do; the bore keeps the places that choose its line."""
        if name != "diameter":
            return PrintQuestion.stated(self, name)
        places = PLACES[self.system][self.is_fine]
        shown = f"{rounded(LENGTH.amount(self.diameter, self.system), places):f}"
        return shown.removeprefix("0") if self.system == "inch" else shown

    def text(self) -> str:
        """Return the lines of the block and the note."""
        coarse, fine = SIGNS[self.system]
        told = self.before.format(
            coarse_sign=coarse, fine_sign=fine, coarse=self._line(0), fine=self._line(1)
        )
        note = self.asked.format(
            unit_name="inches" if self.system == "inch" else "millimeters", note=self.note()
        )
        return f"{told} {note}"

    def _line(self, place: int) -> str:
        return show_note((self.coarse, self.fine)[place], self.system)

    def block(self) -> tuple[str, ...]:
        """Return the lines of the title block."""
        coarse, fine = SIGNS[self.system]
        lines = (f"{coarse}  ±{self._line(0)}", f"{fine}  ±{self._line(1)}")
        return (*PrintQuestion.block(self), *lines)

    def note(self) -> str:
        """Return the note."""
        return (
            f"⌀{self.stated('hole_diameter')} THRU ⌴ ⌀{self.stated('diameter')} "
            f"↧{self.stated('depth')}"
        )

    @property
    def tolerance_of_line(self) -> float:
        """The tolerance that the places choose [mm]."""
        return self.fine if self.is_fine else self.coarse

    @property
    def parts(self) -> tuple[Part, ...]:
        """Least and greatest diameter."""
        return (
            self._limit("Least diameter of the bore?", -1),
            self._limit("Greatest diameter of the bore?", 1),
        )

    def _limit(self, prompt: str, way: int) -> NumberPart:
        size, own = self.diameter, self.tolerance_of_line
        other = self.coarse if self.is_fine else self.fine
        return self.length(
            size + way * own,
            SUM,
            prompt,
            slip(
                "M50",
                size + way * other,
                "You took the other line of the block. Count the places as printed.",
            ),
            slip("M63", size + 2 * way * own, "You took the tolerance twice. ± is each way."),
            slip("M49", size - way * own, "You gave the other limit. Read which is asked for."),
            slip("M63", size, "You gave the size as printed. The block leaves room both ways."),
            slip("M63", size + way * own / 2, "You took half the tolerance. ± is all of it."),
        )

    def because(self) -> str:
        """Return which line of the block it is."""
        count = PLACES[self.system][self.is_fine]
        return f"The bore is printed with {count} place{'s' if count > 1 else ''}: that line."

    def working(self) -> Iterator[WorkedStep]:
        """Yield both limits."""
        name, own = "fine" if self.is_fine else "coarse", self.tolerance_of_line
        for part, (sign, way) in enumerate((("−", -1), ("+", 1))):
            yield WorkedStep(
                f"the {('least', 'greatest')[part]} diameter",
                f"{{diameter}} {sign} {{{name}}}",
                self.diameter + way * own,
                LENGTH,
                part=part,
            )
