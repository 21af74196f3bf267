"""What an inspection finds: each value judged, each part with its verdict and what to change."""

from dataclasses import dataclass

from seatwork.errors import SeatworkError
from seatwork.inspection.measured import Measured
from seatwork.plan import SeatPlan

ACCEPT, REJECT, UNKNOWN = "accept", "reject", "cannot tell with this instrument"
MARKS = {ACCEPT: "OK", REJECT: "X", UNKNOWN: "?"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """One measured value against its limits.

    Parameters
    ----------
    key : str
        Which quantity, a key of `QUANTITIES`.
    about : str
        The same in words.
    value : float or None
        As measured [mm or deg]; None for an answer of yes or no.
    least, greatest : float or None
        Limits [mm or deg].
    uncertainty : float
        Expanded uncertainty of the measurement [mm or deg].
    instrument : str
        What it was measured with.
    source : str
        Who sets the limits.
    verdict : {"accept", "reject", "cannot tell with this instrument"}
        What may be said.
    """

    key: str
    about: str
    value: float | None
    least: float | None = None
    greatest: float | None = None
    uncertainty: float = 0.0
    instrument: str = ""
    source: str = ""
    verdict: str

    @property
    def mark(self) -> str:
        """A sign beside the word, so that neither color nor reading is needed."""
        return MARKS[self.verdict]


@dataclass(frozen=True, slots=True, kw_only=True)
class PartVerdict:
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

    @property
    def mark(self) -> str:
        """A sign beside the word."""
        return MARKS[self.verdict]

    def value_of(self, key: str) -> Judged | None:
        """Return a judged quantity; None where it was not measured."""
        return next((one for one in self.judged if one.key == key), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Inspection:
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
