"""What an inspection finds: each part with its verdict and what to change."""

from dataclasses import dataclass

from seatwork.errors import SeatworkError
from seatwork.inspection.measured import Measured
from seatwork.inspection.records import MARKS, Judged
from seatwork.inspection.rows import value_row
from seatwork.plan import SeatPlan
from seatwork.rows import Blocks, Row, Rows, Shown


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class PartVerdict(Shown):
    """One part: its values judged, the verdict, why it is off and what to change.

    Parameters
    ----------
    measured : Measured
        As written on the sheet.
    seat : SeatPlan
        What it should be.
    judged : tuple of Judged
        Value by value.
    verdict : {"accept", "reject", "cannot tell with this instrument"}
        Of the whole part: the worst of its values.
    reasons : tuple of str
        Why it is off, or why it cannot be told.
    changes : tuple of str
        What to change before the next part.
    system : {"inch", "metric"}
        System of its print.
    """

    measured: Measured
    seat: SeatPlan
    judged: tuple[Judged, ...]
    verdict: str
    reasons: tuple[str, ...] = ()
    changes: tuple[str, ...] = ()
    system: str = "inch"

    def _line(self) -> str:
        return f"{self.measured.part}: [{self.mark}] {self.verdict}"

    def _blocks(self) -> Blocks:
        yield "", self.rows()

    def rows(self, system: str | None = None) -> Rows:
        """Return its verdict with its mark, value by value, why, and what to change.

        Parameters
        ----------
        system : {"inch", "metric"}, optional
            Which unit system stands first; the print's if not given.
        """
        first = system or self.system
        lines = (
            Row(label=self.measured.part, text=f"[{self.mark}] {self.verdict}"),
            *(value_row(one, first) for one in self.judged),
            *(Row(label="why", text=reason) for reason in self.reasons),
            *(Row(label="change", text=change) for change in self.changes),
        )
        return Rows(lines)

    @property
    def mark(self) -> str:
        """A sign beside the word."""
        return MARKS[self.verdict]

    def value_of(self, key: str) -> Judged | None:
        """Return a judged quantity; None where it was not measured."""
        return next((one for one in self.judged if one.key == key), None)


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Inspection(Shown):
    """All parts of a sheet.

    Parameters
    ----------
    parts : tuple of PartVerdict
        In the order of the sheet, which is the order of cutting.
    faults : tuple of str
        One sentence for each row that could not be judged: file, row, column, reason.
    blank : int
        Rows of the sheet that nobody filled in.
    """

    parts: tuple[PartVerdict, ...]
    faults: tuple[str, ...] = ()
    blank: int = 0

    def _line(self) -> str:
        return self.summary

    def _blocks(self) -> Blocks:
        for part in self.parts:
            yield "", part.rows()
        yield "To mend", tuple(Row(label="row", text=fault) for fault in self.faults)

    @property
    def summary(self) -> str:
        """How many parts have each verdict, and how many rows could not be judged."""
        text = ", ".join(f"{count} {verdict}" for verdict, count in self.counts().items())
        mend = f" To mend: {len(self.faults)}." if self.faults else ""
        left = f" Rows not filled in: {self.blank}." if self.blank else ""
        parts = "1 part" if len(self.parts) == 1 else f"{len(self.parts)} parts"
        return f"{parts}: {text}.{mend}{left}"

    def part(self, mark: str) -> PartVerdict:
        """Return the part with a mark, such as L05-1.

        Raises
        ------
        SeatworkError
            If no part of the sheet has it.
        """
        for one in self.parts:
            if one.measured.part == mark:
                return one
        known = ", ".join(one.measured.part for one in self.parts) or "none"
        raise SeatworkError(mark, "no part has that mark", f"known are {known}")

    def counts(self) -> dict[str, int]:
        """Return how many parts have each verdict."""
        found = dict.fromkeys(MARKS, 0)
        for part in self.parts:
            found[part.verdict] += 1
        return found
