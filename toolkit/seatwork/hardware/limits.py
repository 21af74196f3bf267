"""Limits of holes by tolerance grade: H12, H13, H14."""

from dataclasses import dataclass

from seatwork import tables
from seatwork.errors import Length, SeatworkError
from seatwork.hardware.facts import Fact, caution, needed

TABLE = "iso_286_grades"


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """The least and the greatest a size may be.

    Parameters
    ----------
    least, greatest : float
        The limits [mm].
    source : str
        Where the tolerance comes from.
    confirmed : str
        ``two-source``, ``one-source`` or ``memory``.
    """

    least: float
    greatest: float
    source: str
    confirmed: str

    @property
    def caution(self) -> str:
        """What must be said beside the limits; empty where nothing must."""
        return caution(self.confirmed)


def hole_limits(diameter: float, grade: str) -> Limits:
    """Return the limits of a hole whose tolerance starts at its size.

    Parameters
    ----------
    diameter : float
        Nominal diameter [mm], up to 120.
    grade : {"H12", "H13", "H14"}
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
        raise SeatworkError(grade, "no such tolerance of a hole is held", "say H12, H13 or H14")
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
    for row in tables.rows(table):
        over, up_to = row["over_mm"] or 0.0, row["up_to_mm"] or float("inf")
        first = row["over_mm"] is None or (over == 0.5 and size == over)
        fits = isinstance(over, float) and isinstance(up_to, float) and over < size <= up_to
        if (fits or (first and size == over)) and all(
            row[key] == word for key, word in same.items()
        ):
            return needed(table, row, column)
    raise SeatworkError(
        size, f"{tables.about(table).standard} has no tolerance here for that size", "state one"
    )
