"""A value with where it comes from, and how sure of it anyone here can be."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.rows import sized_rows
from seatwork.quantities import EXACT_INCH
from seatwork.rows import Blocks, Shown
from seatwork.tables.reading import Cell
from seatwork.units import show_number

INSIDE = {
    **{"in": EXACT_INCH, "um": Decimal("0.001")},
    **dict.fromkeys(("mm", "deg", "ratio"), Decimal(1)),
}
"""Factor from a table's unit to the unit used inside."""

CHECK_YOUR_COPY = "from memory: check your copy"


def caution(confirmed: str) -> str:
    """Return the words to show beside a value confirmed so; empty where none are needed.

    Examples
    --------
    >>> caution("memory"), caution("two-source")
    ('from memory: check your copy', '')
    """
    return CHECK_YOUR_COPY if confirmed == "memory" else ""


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Sourced(Shown):
    """What every looked-up thing carries.

    Parameters
    ----------
    source : str
        Document it comes from.
    confirmed : str
        ``two-source``, ``one-source`` or ``memory``.
    """

    source: str
    confirmed: str

    @property
    def caution(self) -> str:
        """What must be said beside the value; empty where nothing must."""
        return caution(self.confirmed)

    @property
    def document(self) -> str:
        """The document alone, without where it was read."""
        return document(self.source)

    def _blocks(self) -> Blocks:
        yield "", tuple(sized_rows(self, self.source, self.confirmed))


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Fact(Sourced):
    """One published value.

    Parameters
    ----------
    value : float
        The value [mm, deg or a ratio].
    source, confirmed : str
        As `Sourced`.
    """

    value: float

    def _line(self) -> str:
        return f"{show_number(self.value, 4)}, {self.document}"


def document(source: str) -> str:
    """Return the document of a source, without where it was read.

    Examples
    --------
    >>> document("ISO 273:1979 (= EN 20273); a public table")
    'ISO 273:1979'
    """
    return re.split(r"[;,(]", source)[0].strip()


def weakest(*grades: str) -> str:
    """Return the weakest of several confirmations.

    Examples
    --------
    >>> weakest("two-source", "memory")
    'memory'
    """
    return min(grades, key=tables.CONFIRMED.index)


def fact(table: str, row: Mapping[str, Cell], column: str) -> Fact | None:
    """Return one cell of a table as a fact in mm or deg; None where the cell is blank."""
    value = row[column]
    if value is None:
        return None
    unit = tables.about(table).columns[column].unit
    if unit not in INSIDE or not isinstance(value, float):
        raise SeatworkError(column, f"{table} holds no length or angle there", "name another")
    return Fact(
        value=float(Decimal(repr(value)) * INSIDE[unit]),
        source=str(row["source"]),
        confirmed=tables.confirmed(table, row, column),
    )


def needed(table: str, row: Mapping[str, Cell], column: str) -> Fact:
    """Return one cell as a fact, and say so where the document leaves it blank."""
    found = fact(table, row, column)
    if found is None:
        about = tables.about(table)
        raise SeatworkError(
            str(row[about.key]),
            f"{about.standard} gives no {about.columns[column].meaning} for it",
            "name another size, or measure it",
        )
    return found
