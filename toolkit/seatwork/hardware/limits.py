"""Limits of holes by tolerance grade: H7 of reamed holes, H12, H13, H14."""

from dataclasses import dataclass

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Fact, Sourced, needed
from seatwork.quantities import Length
from seatwork.tables.reading import Cell
from seatwork.units import show_both

TABLE = "iso_286_grades"
SMALLEST_EDGE = 0.5  # mm; ISO 2768-1 gives its first range both ends


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Limits(Sourced):
    """The least and the greatest a size may be.

    Parameters
    ----------
    least, greatest : float
        The limits [mm].
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    least: float
    greatest: float

    def _line(self) -> str:
        return f"{show_both(self.least)} to {show_both(self.greatest)}, {self.document}"


def hole_limits(diameter: float, grade: str) -> Limits:
    """Return the limits of a hole whose tolerance starts at its size.

    Parameters
    ----------
    diameter : float
        Nominal diameter [mm], up to 120.
    grade : {"H7", "H12", "H13", "H14"}
        Tolerance of the hole.

    Raises
    ------
    SeatworkError
        If grade or size is not in the table.

    Examples
    --------
    >>> hole_limits(11, "H13").greatest
    11.27
    """
    column = f"IT{grade[1:]}_um" if isinstance(grade, str) and grade[:1] == "H" else ""
    if column not in tables.about(TABLE).columns:
        raise SeatworkError(grade, "no such tolerance of a hole is held", "say H7, H12, H13 or H14")
    width = in_range(TABLE, Length(diameter), column)
    return Limits(
        least=diameter,
        greatest=diameter + width.value,
        source=width.source,
        confirmed=width.confirmed,
    )


def in_range(table: str, size: Length, column: str, **same: str) -> Fact:
    """Return the cell of the row whose range ``over_mm`` to ``up_to_mm`` holds the size.

    Parameters
    ----------
    table : str
        A table with such ranges.
    size : Length
        The size [mm].
    column : str
        The column wanted.
    **same : str
        Further columns that must hold a word.
    """
    fitting = [
        row
        for row in tables.rows(table)
        if all(row[key] == word for key, word in same.items())
        and _holds(row["over_mm"], size, row["up_to_mm"])
    ]
    if fitting:
        return needed(table, fitting[0], column)
    raise SeatworkError(
        size, f"{tables.about(table).standard} has no tolerance here for that size", "state one"
    )


def _holds(over: Cell, size: float, up_to: Cell) -> bool:
    """Tell whether a range holds the size; the smallest edge, 0.5 mm, is in its range."""
    low = over if isinstance(over, float) else 0.0
    high = up_to if isinstance(up_to, float) else float("inf")
    return low < size <= high or size == low == SMALLEST_EDGE
