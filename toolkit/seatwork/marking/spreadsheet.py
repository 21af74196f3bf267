"""Tables that a spreadsheet opens: text that could be a formula is made plain text."""

import csv
import io
from collections.abc import Iterable, Sequence
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.marking import atomic

FORMULA = ("=", "+", "-", "@", "\t", "\r")
MOST_BYTES = 5_000_000


def write(path: Path, heads: Sequence[str], rows: Iterable[Sequence[object]]) -> None:
    """Write a CSV file, UTF-8, one row a line; numbers stay numbers."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(heads)
    writer.writerows([plain(value) for value in row] for row in rows)
    atomic.write(path, out.getvalue().encode())


def plain(value: object) -> object:
    """Return a value as it may stand in a cell: text that begins a formula gets a quote."""
    if isinstance(value, str) and value.startswith(FORMULA):
        return "'" + value
    return "" if value is None else value


def read(path: Path, heads: Sequence[str]) -> list[dict[str, str]]:
    """Return the rows of a CSV file that has at least these heads.

    Raises
    ------
    SeatworkError
        If it cannot be read, or a head is missing.
    """
    try:
        raw = path.read_bytes()[: MOST_BYTES + 1]
        text = raw.decode("utf-8-sig")
    except (OSError, UnicodeDecodeError) as error:
        raise SeatworkError(str(path), "it cannot be read", "save it as UTF-8 CSV") from error
    if len(raw) > MOST_BYTES:
        raise SeatworkError(str(path), "it is far too long", "check what was saved there")
    try:
        reader = csv.DictReader(io.StringIO(text), strict=True)
        rows = [{head: value or "" for head, value in row.items() if head} for row in reader]
    except csv.Error as error:
        raise SeatworkError(str(path), "it is no CSV", "save it again as CSV") from error
    for head in heads:
        if head not in (reader.fieldnames or ()):
            raise SeatworkError(path.name, f"the column {head!r} is missing", "add it")
    return rows
