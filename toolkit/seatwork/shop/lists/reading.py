"""The shop's own lists: CSV files a person edits in a spreadsheet, built row by row."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import TypeVar

from seatwork import files, units
from seatwork.errors import SeatworkError
from seatwork.files import build_each, read_table
from seatwork.shop.folder import find, package_text

Listed = TypeVar("Listed")


@dataclass(frozen=True, slots=True, kw_only=True)
class Row(files.Row):
    """One row of a list, its cells read as the shop writes them."""

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


def read_list(
    name: str,
    folder: str | Path | None,
    build: Callable[[Row], Listed],
    *,
    columns: Sequence[str],
    needed: Sequence[str],
) -> tuple[Listed, ...]:
    """Read a list, and build something of every row.

    Parameters
    ----------
    name : str
        Such as ``cutters.csv``.
    folder : str or Path or None
        Workbook folder; the one found from the working folder if None. Its own list is taken
        where it has one, else the package's.
    build : callable
        Makes something of a row, or refuses it.
    columns : sequence of str
        All headings that are known; the first names the rows, each once.
    needed : sequence of str
        Headings that must be there.

    Raises
    ------
    SeatworkError
        With all faults of the file at once: file, row, column and what would do.
    """
    source, file = list_source(name, folder)
    if isinstance(source, Path):
        return _read(source, file, build, tuple(columns), tuple(needed))
    return _of_package(source, file, build, tuple(columns), tuple(needed))


@cache
def _of_package(
    source: str,
    file: str,
    build: Callable[[Row], Listed],
    columns: tuple[str, ...],
    needed: tuple[str, ...],
) -> tuple[Listed, ...]:
    """Read a list of the package once: nobody edits it while the program runs."""
    return _read(source, file, build, columns, needed)


def _read(
    source: str | Path,
    file: str,
    build: Callable[[Row], Listed],
    columns: tuple[str, ...],
    needed: tuple[str, ...],
) -> tuple[Listed, ...]:
    faults: list[SeatworkError] = []
    rows = read_table(source, columns=columns, needed=needed, name=file, faults=faults)
    key, seen = columns[0], dict[str, int]()

    def once(row: files.Row) -> Listed:
        called = row.needed(key).casefold()
        if seen.setdefault(called, row.number) != row.number:
            fault = f"{row.text(key)} stands in row {seen[called]} too"
            raise row.refuse(key, fault, "give it another name")
        return build(Row(file=row.file, number=row.number, cells=row.cells))

    return tuple(build_each(rows, once, faults))


def list_source(name: str, folder: str | Path | None) -> tuple[str | Path, str]:
    """Return the workbook's own list or the text of the package's, and what errors call it."""
    workbook = find() if folder is None else Path(folder)
    own = workbook / "shop" / name if workbook else None
    if own is not None and own.is_file():
        return own, str(own)
    return package_text(name), f"{name} (of the package)"


def named(listed: Sequence[Listed], name: str, file: str, key: Callable[[Listed], str]) -> Listed:
    """Find the one with a name, in any case.

    Raises
    ------
    SeatworkError
        If the list has no such name, or none was given; the names it has are told.
    """
    for one in listed:
        if key(one).casefold() == name.strip().casefold():
            return one
    known = tuple(key(one) for one in listed)
    remedy = f"it lists {', '.join(known) or 'nothing'}"
    if not name.strip():
        raise SeatworkError(file, "which of its lines is meant was not said", remedy, options=known)
    raise SeatworkError(name, f"{file} does not list it", remedy, options=known)
