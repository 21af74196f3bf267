"""A batch of measured parts told to a learner, part by part."""

from dataclasses import dataclass

from seatwork.errors import SeatworkError
from seatwork.inspection import Inspection, inspect_file
from seatwork.plan import example_parts, example_readings, parts
from seatwork.rows import Blocks, Row, Rows, Shown

LID = "lid"


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Batch(Shown):
    """Parts that a class measured, each with its verdict.

    Parameters
    ----------
    inspection : Inspection
        Every part held against its plan.

    Examples
    --------
    >>> from seatwork import show
    >>> show.measured("lid").summary.startswith("11 parts")
    True
    """

    inspection: Inspection

    def __getitem__(self, mark: str) -> Rows:
        """Return the verdict of one part, line by line; an unknown mark is refused."""
        return self.inspection.part(mark).rows()

    @property
    def summary(self) -> str:
        """How many were accepted, rejected or left open."""
        return self.inspection.summary

    def _line(self) -> str:
        return self.inspection.summary

    def _blocks(self) -> Blocks:
        yield "", Rows(Row(label="to mend", text=fault) for fault in self.inspection.faults)


def measured(what: str) -> Batch:
    """Hold the measured parts of the cider mill against their plans.

    Parameters
    ----------
    what : str
        Whose: ``lid``, the parts of the hopper's lid.

    Returns
    -------
    Batch
        Ask it for a part: ``measured("lid")["L02-1"]``.

    Raises
    ------
    SeatworkError
        If no measured parts are kept under that name.

    Examples
    --------
    >>> measured("lid").summary
    '11 parts: 5 accept, 4 reject, 2 cannot tell with this instrument. To mend: 1.'
    """
    if what != LID:
        raise SeatworkError(
            str(what)[:40], "no measured parts are kept under that name", f"write {LID}"
        )
    plans, faults = parts(example_parts())
    if faults:
        raise SeatworkError(LID, "a note of its parts cannot be read", faults[0])
    return Batch(inspection=inspect_file(example_readings(), plans))
