"""Published dimensions, one CSV and one sidecar TOML a table, each row with its source.

Numbers keep the unit of their source, named in the column: ``head_dia_A_max_in`` is inches.
"""

from seatwork.doors import doors

NAMES = {
    "reading": "CONFIRMED Column Table about confirmed names row rows",
    "printed": "listing",
    "showing": "load sources",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
