"""A blank sheet of readings: a file that a spreadsheet fills in and `read_readings` reads back."""

from collections.abc import Iterator, Mapping
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.files import write_table
from seatwork.inspection.columns import COLUMNS, FEATURE, PART, REMARK, UNIT, UNITS, WITH, Column
from seatwork.inspection.cuts import Cut, cuts_of, readings_of
from seatwork.inspection.judging import limits_of
from seatwork.inspection.measured import QUANTITIES
from seatwork.plan import Plan, SeatPlan
from seatwork.shop import HouseRules
from seatwork.shop import rules as rules_in_force
from seatwork.units import show_angle, show_length

MOST_ROWS = 20  # of one feature
LIMITED = ("diameter", "depth", "angle", "stand", "protrusion")


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


def limits_words(column: Column, cut: Cut, rules: HouseRules | None = None) -> str:
    """Return what a reading may be, in the print's system and without a unit.

    Parameters
    ----------
    column : Column
        The reading.
    cut : Cut
        The seat, and the system of its print.
    rules : HouseRules, optional
        The rules in force; the workbook folder's if not given.

    Returns
    -------
    str
        Such as ``".385 to .411"``; empty where the plan has no limits for it.
    """
    key = column.name.replace(" ", "_")
    if key not in LIMITED:
        return ""
    bounds = limits_of(key, cut.seat, system=cut.system, rules=rules or rules_in_force())
    if bounds is None:
        return ""
    if QUANTITIES[key].kind == "angle":
        return f"{show_angle(bounds.least)} to {show_angle(bounds.greatest)}"
    sizes = (show_length(size, cut.system) for size in (bounds.least, bounds.greatest))
    return " to ".join(size.removesuffix(f" {UNITS[cut.system]}") for size in sizes)


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
