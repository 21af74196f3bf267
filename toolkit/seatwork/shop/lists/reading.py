"""The shop's own lists: CSV files a person edits in a spreadsheet, read row by row."""

import csv
import io
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TypeVar

from seatwork import units
from seatwork.errors import SeatworkError
from seatwork.shop.folder import at, package_text, read_text

Read = TypeVar("Read")
Listed = TypeVar("Listed")

LONGEST_CELL = 300


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One row of a list, with the place a person finds it at.

    Parameters
    ----------
    file : str
        Name of the file.
    number : int
        Row as a spreadsheet counts it; the headings are row 1.
    cells : dict of str to str
        Trimmed text under each heading; blank where nothing is written.
    """

    file: str
    number: int
    cells: dict[str, str]

    def refuse(self, column: str, fault: str, remedy: str) -> SeatworkError:
        """Build the error that names file, row and column."""
        place = f"{self.file}, row {self.number}, column {column}"
        return SeatworkError(place, fault, remedy)

    def text(self, column: str) -> str:
        """Text of a cell; blank where nothing is written."""
        return self.cells.get(column, "")

    def needed(self, column: str) -> str:
        """Text of a cell that must not be blank."""
        text = self.text(column)
        if not text:
            raise self.refuse(column, "the cell is blank", "write a value in it")
        return text

    def word(self, column: str, words: Sequence[str], default: str | None = None) -> str:
        """One of `words`, in any case; `default` where the cell is blank."""
        text = self.text(column).casefold()
        if not text and default is not None:
            return default
        if text not in words:
            raise self.refuse(
                column,
                f"{text or 'a blank'} is not a known word",
                f"write one of {', '.join(words)}",
            )
        return text

    def read(self, column: str, reader: Callable[[str], Read]) -> Read | None:
        """Value of a cell by a reader of text; None where nothing is written."""
        text = self.text(column)
        if not text:
            return None
        try:
            return reader(text)
        except SeatworkError as error:
            fault = f"{text} cannot be read: {error.fault}"
            raise self.refuse(column, fault, error.remedy) from error

    def length(self, column: str) -> float | None:
        """Length [mm], zero or more; None where blank."""
        return self.read(column, units.length)

    def angle(self, column: str) -> float | None:
        """Angle [deg]; None where blank."""
        return self.read(column, units.angle)

    def number_in(self, column: str, least: float, greatest: float) -> float | None:
        """Bare number from `least` to `greatest`; None where blank."""
        value = self.read(column, units.number)
        if value is None:
            return None
        if not least <= value <= greatest:
            raise self.refuse(
                column,
                f"{value} is out of range",
                f"write a number from {least:g} to {greatest:g}",
            )
        return float(value)

    def numbers(self, column: str) -> tuple[float, ...]:
        """Bare numbers apart by spaces or slashes, all above zero; empty where blank."""
        parts = self.text(column).replace("/", " ").replace(";", " ").split()
        read = [self.read_part(column, part) for part in parts]
        return tuple(read)

    def read_part(self, column: str, part: str) -> float:
        """One bare number above zero out of a cell that holds several."""
        try:
            value = float(units.number(part))
        except SeatworkError as error:
            raise self.refuse(
                column, f"{part} cannot be read: {error.fault}", error.remedy
            ) from error
        if value <= 0:
            raise self.refuse(column, f"{part} is not above zero", "write numbers above zero")
        return value


def list_text(name: str, folder: str | Path | None = None) -> tuple[str, str]:
    """Text of a list, and the file it came from.

    Parameters
    ----------
    name : str
        Such as ``cutters.csv``.
    folder : str or Path, optional
        Workbook folder; the one found from the working folder if not given.

    Returns
    -------
    tuple of str
        The workbook's own list where it has one, else the package's; and its name.

    Raises
    ------
    SeatworkError
        If the file cannot be read.
    """
    workbook = at(folder)
    own = workbook / "shop" / name if workbook else None
    if own is not None and own.is_file():
        return read_text(own), str(own)
    return package_text(name), f"{name} (of the package)"


def rows_of(text: str, file: str, *, columns: Sequence[str], needed: Sequence[str]) -> list[Row]:
    """Rows of a list, blank ones left out.

    Parameters
    ----------
    text : str
        The whole file; commas, or semicolons as some spreadsheets save.
    file : str
        Name that errors give.
    columns : sequence of str
        All headings that are known.
    needed : sequence of str
        Headings that must be there.

    Returns
    -------
    list of Row

    Raises
    ------
    SeatworkError
        For an unknown, missing or doubled heading, or a row with more cells than headings.
    """
    first = text.split("\n", 1)[0]
    apart = ";" if ";" in first and "," not in first else ","
    lines = csv.reader(io.StringIO(text), delimiter=apart)
    try:
        table = [(lines.line_num, [cell.strip() for cell in line]) for line in lines]
    except csv.Error as error:
        raise SeatworkError(
            f"{file}, row {lines.line_num}", "the row cannot be read as CSV", "check its quotes"
        ) from error
    headings = _headings(table[0][1] if table else [], file, columns, needed)
    return list(_rows(table[1:], file, headings))


def _headings(
    found: list[str], file: str, columns: Sequence[str], needed: Sequence[str]
) -> list[str]:
    place = f"{file}, row 1"
    while found and not found[-1]:
        found.pop()
    for heading in found:
        if heading not in columns:
            known = ", ".join(columns)
            raise SeatworkError(
                f"{place}, column {heading or 'without a name'}",
                "the heading is not known",
                f"the headings are {known}",
            )
        if found.count(heading) > 1:
            raise SeatworkError(
                f"{place}, column {heading}", "the heading stands there twice", "keep one of them"
            )
    for heading in needed:
        if heading not in found:
            raise SeatworkError(
                f"{place}, column {heading}", "the heading is missing", "add the column"
            )
    return found


def _rows(table: list[tuple[int, list[str]]], file: str, headings: list[str]) -> Iterator[Row]:
    for number, cells in table:
        if not any(cells):
            continue
        if any(cells[len(headings) :]):
            raise SeatworkError(
                f"{file}, row {number}",
                "the row has more cells than there are headings",
                "put quotes round a text that holds a comma",
            )
        row = Row(file=file, number=number, cells=dict(zip(headings, cells, strict=False)))
        for column, text in row.cells.items():
            if len(text) > LONGEST_CELL:
                raise row.refuse(column, "the text is far too long", "shorten it")
        yield row


def each_once(rows: list[Row], column: str, build: Callable[[Row], Listed]) -> tuple[Listed, ...]:
    """Build every row, and refuse a name that stands there twice.

    Raises
    ------
    SeatworkError
        With file, row and column.
    """
    seen: dict[str, int] = {}
    for row in rows:
        name = row.needed(column).casefold()
        if name in seen:
            raise row.refuse(
                column, f"{row.text(column)} stands in row {seen[name]} too", "give it another name"
            )
        seen[name] = row.number
    return tuple(build(row) for row in rows)


def named(listed: Sequence[Listed], name: str, file: str, key: Callable[[Listed], str]) -> Listed:
    """Find the one with a name, in any case.

    Raises
    ------
    SeatworkError
        If the list has no such name; the names it has are told.
    """
    for one in listed:
        if key(one).casefold() == name.strip().casefold():
            return one
    known = tuple(key(one) for one in listed)
    remedy = f"it lists {', '.join(known) or 'nothing'}"
    raise SeatworkError(name, f"{file} does not list it", remedy, options=known)
