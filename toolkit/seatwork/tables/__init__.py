"""Published dimensions, one CSV and one sidecar TOML a table, each row with its source.

Numbers keep the unit of their source, named in the column: ``head_dia_A_max_in`` is inches.
"""

from seatwork.tables.reading import (
    CONFIRMED,
    Cell,
    Column,
    Table,
    about,
    confirmed,
    names,
    row,
    rows,
)
from seatwork.tables.showing import load, sources

__all__ = [
    "CONFIRMED",
    "Cell",
    "Column",
    "Table",
    "about",
    "confirmed",
    "load",
    "names",
    "row",
    "rows",
    "sources",
]
