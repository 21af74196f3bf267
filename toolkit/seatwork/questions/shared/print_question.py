"""What questions that read a print share: the note as printed, the plate beside it, a number."""

from dataclasses import dataclass, fields
from functools import partial
from typing import Any, ClassVar

from seatwork.entries.measures import LENGTH, Measure
from seatwork.questions.type.common_slips import common_slips
from seatwork.questions.type.parts import NumberPart
from seatwork.questions.type.question import Question, Tolerance
from seatwork.questions.type.slips import Mistake
from seatwork.questions.type.working import WorkedStep
from seatwork.units import show_note

READ = Tolerance("0.001", "0.02", "A size in a note is read off exactly; .001 in is rounding.")
WHOLE = Tolerance("0.5", "0.5", "A count is a whole number and is read off exactly.")
STOP = Tolerance("0.002", "0.05", "A depth stop holds about .001 in, and sizes are rounded.")
TWO_STOPS = Tolerance("0.003", "0.08", "Two stops hold about .001 in each, and sizes are rounded.")
SUM = Tolerance("0.0005", "0.01", "The sum is exact; half of .001 in is rounding.")
UNITS = {"inch": "inches", "metric": "millimeters"}


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintQuestion(Question):
    """A question about a note, shown as on the print: in its signs and without units.

    What a note says is worked out from the drawn sizes, since reading a note takes longer than
    all else of a draw; the tests read the drawn notes back and hold the two together.
    """

    unmarked = "what is asked is read off the print or worked out from it"
    shape: ClassVar[str] = "seat"
    """What the hole looks like from above on the print; see ``drawings.sketches.prints``."""
    before: ClassVar[str] = ""
    """What is said before the note, with the names of sizes in braces."""
    asked = "The print is in {unit_name} and says:  {note}"

    def note(self) -> str:
        """Return the note as it stands on the print."""
        raise NotImplementedError

    def block(self) -> tuple[str, ...]:
        """Return the lines of the title block."""
        return (f"DIMENSIONS IN {UNITS[self.system].upper()}",)

    def from_above(self) -> str:
        """Return what the hole looks like from above."""
        return self.shape

    def chart(self) -> tuple[tuple[str, str], ...]:
        """Return the rows of a chart beside the note; most prints have none."""
        return ()

    @property
    def thick(self) -> str:
        """Thickness of the plate as it stands on the print; empty where it does not matter."""
        return self.stated("thickness") if "thickness" in self.sizes else ""

    def stated(self, name: str) -> str:
        """Write a size as prints do: without unit, which the print says once for all."""
        measure, value = self.sizes[name], getattr(self, name)
        if measure.name != LENGTH.name:
            return measure.show(value, self.system)
        return show_note(value, self.system, measure.places[self.system])

    def text(self) -> str:
        """Return what is said before the note, and the note."""
        names = {item.name: str(getattr(self, item.name)) for item in fields(self)}
        names |= {name: self.stated(name) for name in self.sizes}
        told = self.asked.format(unit_name=UNITS[self.system], note=self.note())
        return " ".join(filter(None, (self.before.format(**names), told)))

    def number(
        self, measure: Measure, value: float, accepted: Tolerance, prompt: str, *slips: Mistake
    ) -> NumberPart:
        """Return a part that asks for `value`."""
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

    def length(self, value: float, accepted: Tolerance, prompt: str, *slips: Mistake) -> NumberPart:
        """Return a part that asks for a length."""
        return self.number(LENGTH, value, accepted, prompt, *slips)


def read_off(label: str, value: Any, part: int, measure: Measure = LENGTH) -> WorkedStep:
    """Return the step of a size that is only read off."""
    return WorkedStep(label, "", value, measure, f"read {label} off the note", "M59", part)
