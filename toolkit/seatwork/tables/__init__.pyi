from seatwork.tables.printed import listing as listing
from seatwork.tables.reading import CONFIRMED as CONFIRMED
from seatwork.tables.reading import Column as Column
from seatwork.tables.reading import Table as Table
from seatwork.tables.reading import about as about
from seatwork.tables.reading import confirmed as confirmed
from seatwork.tables.reading import names as names
from seatwork.tables.reading import row as row
from seatwork.tables.reading import rows as rows
from seatwork.tables.showing import load as load
from seatwork.tables.showing import sources as sources

NAMES: dict[str, str]
__all__: list[str]
