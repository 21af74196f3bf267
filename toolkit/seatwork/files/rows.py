"""One row of a table, and building something of every row."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import TypeVar

from seatwork.errors import SeatworkError, together

Read = TypeVar("Read")
Built = TypeVar("Built")


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One row of a table, with the place a person finds it at.

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

    def place(self, column: str) -> str:
        """Name file, row and column."""
        return f"{self.file}, row {self.number}, column {column}"

    def refuse(self, column: str, fault: str, remedy: str) -> SeatworkError:
        """Build the error that names the place."""
        return SeatworkError(self.place(column), fault, remedy)

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
            fault = f"{text or 'a blank'} is not a known word"
            raise self.refuse(column, fault, f"write one of {', '.join(words)}")
        return text

    def read(self, column: str, reader: Callable[[str], Read]) -> Read | None:
        """Value of a cell by a reader of text; None where nothing is written."""
        text = self.text(column)
        if not text:
            return None
        try:
            return reader(text)
        except SeatworkError as error:
            shown = text.replace("{", "{{").replace("}", "}}") if error.sizes else text
            fault = f"{shown} cannot be read: {error.fault}"
            remedy, options = error.remedy, error.options
            raise SeatworkError(
                self.place(column), fault, remedy, options=options, **error.sizes
            ) from error


def build_each(
    rows: Iterable[Row], build: Callable[[Row], Built], faults: Sequence[SeatworkError] = ()
) -> list[Built]:
    """Build something of every row; the faults of all rows are raised together.

    Parameters
    ----------
    rows : iterable of Row
        As `read_table` gives them.
    build : callable
        Makes something of a row, or raises a `SeatworkError`.
    faults : sequence of SeatworkError
        Faults found before, told with these.
    """
    found, built, name = list(faults), [], ""
    for row in rows:
        name = row.file
        try:
            built.append(build(row))
        except SeatworkError as error:
            found.append(error)
    if found:
        raise together(name or str(found[0].value), found)
    return built
