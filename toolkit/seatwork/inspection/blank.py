"""A blank sheet of readings: a file that a spreadsheet fills in and `read_readings` reads back."""

from collections.abc import Iterator, Mapping
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.files import write_table
from seatwork.inspection.columns import COLUMNS, FEATURE, PART, REMARK, UNIT, UNITS, WITH, Column
from seatwork.inspection.cuts import Cut, cuts_of, readings_of
from seatwork.plan import Plan, SeatPlan

MOST_ROWS = 20  # of one feature


def columns_of(*seats: SeatPlan) -> tuple[Column, ...]:
    """Return the columns of all readings that these seats take, in the order of the list.

    The printed gage sheet and the blank file are both made from it.

    Examples
    --------
    >>> from seatwork import notes, plan
    >>> made = plan.make(notes.read("17/32 THRU, ⌀1-1/4 S.F."),
    ...                  material="gray iron", machine="knee mill")
    >>> [one.name for one in columns_of(made.seats[0])]
    ['diameter', 'diameter with', 'cleaned', 'burr']
    """
    taken = {one.column for seat in seats for one in readings_of(seat)}
    return tuple(one for name, one in COLUMNS.items() if name.removesuffix(WITH) in taken)


def write_blank(plans: Mapping[str, Plan], path: Path, *, replace: bool = False) -> int:
    """Write a blank sheet for the seats of plans.

    Parameters
    ----------
    plans : mapping of str to Plan
        The plan of each feature by its name.
    path : Path
        The CSV to write.
    replace : bool
        Whether a file that is there may be written over.

    Returns
    -------
    int
        How many rows it has: one for each place of a note, at most 20 a feature.

    Raises
    ------
    SeatworkError
        If no plan has a seat to measure, or the file is there or cannot be written.
    """
    cuts = cuts_of(plans)
    if not cuts:
        raise SeatworkError(path.name, "no part given here has a seat to measure", "name one")
    there = path.exists() or path.is_symlink()
    if there and (not replace or path.is_symlink() or not path.is_file()):
        raise SeatworkError(
            str(path), "that file is there already", "name another, or add --replace"
        )
    columns = columns_of(*(cut.seat for cut in cuts.values()))
    systems = {cut.system for cut in cuts.values()}
    system = systems.pop() if len(systems) == 1 else None
    heads = (PART, FEATURE, *(() if system else (UNIT,)))
    rows = list(_rows(cuts, (*heads, *(one.name for one in columns), REMARK)))
    write_table(path, (*heads, *(one.heading(system) for one in columns), REMARK), rows)
    return len(rows)


def _rows(cuts: Mapping[str, Cut], names: tuple[str, ...]) -> Iterator[list[str]]:
    for name, cut in cuts.items():
        known = {FEATURE: name, UNIT: UNITS[cut.system]}
        for _ in range(min(max(cut.seat.count, 1), MOST_ROWS)):
            yield [known.get(column, "") for column in names]
