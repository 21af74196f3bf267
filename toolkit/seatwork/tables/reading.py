"""Tables read from their CSV and sidecar; what carries no source is refused."""

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.files import Row, build_each, read_table
from seatwork.tables.numbers import number

DATA = Path(__file__).with_name("data")
CONFIRMED = ("memory", "one-source", "two-source")
"""How well a value is confirmed, weakest first."""

LONGEST = 2_000  # characters of a cell
NOTES = ("source", "confirmed", "confirmed_detail", "read_in")
Cell = float | str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """What one column of a table holds.

    Parameters
    ----------
    meaning : str
        What the number or word is.
    unit : str, optional
        Unit of its numbers; None for words.
    confirmed : str, optional
        Given where this column is less well confirmed than its rows.
    """

    meaning: str
    unit: str | None = None
    confirmed: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """What the sidecar says of a table.

    Parameters
    ----------
    name : str
        Name of the table, as `names` lists it.
    title : str
        What it holds, in a line.
    standard : str
        Document the values come from.
    edition : str
        Its edition, or what is known of it.
    key : str
        Column that tells the rows apart.
    columns : mapping of str to Column
        The columns beside source and confirmation.
    withdrawn : bool, optional
        Whether the document has been withdrawn.
    note : str, optional
        A caveat that holds for the whole table.
    """

    name: str
    title: str
    standard: str
    edition: str
    key: str
    columns: Mapping[str, Column]
    withdrawn: bool = False
    note: str = ""


def names() -> list[str]:
    """Return the names of all tables, sorted."""
    return list(_names(DATA))


def about(name: str) -> Table:
    """Return the title, document, edition and columns of a table.

    Raises
    ------
    SeatworkError
        If there is no such table, or its sidecar is not whole.

    Examples
    --------
    >>> about("metric_csk_iso_10642").standard
    'ISO 10642'
    """
    return _sidecar(DATA, _known(name))


def rows(name: str) -> list[dict[str, Cell]]:
    """Return the rows of a table, in printed order.

    Parameters
    ----------
    name : str
        A name that `names` lists.

    Returns
    -------
    list of dict
        Floats where the column has a unit (in that unit), text elsewhere, None for a blank;
        every row has ``source`` (document, edition and page), ``confirmed`` and
        ``confirmed_detail``.

    Raises
    ------
    SeatworkError
        For an unknown name, a column without entry in the sidecar, or a row without source
        or confirmation.

    Examples
    --------
    >>> rows("metric_csk_iso_10642")[3]["head_dia_dk_theoretical_max_mm"]
    13.44
    """
    return [_open(entry) for entry in _rows(DATA, _known(name))]


def read_in(name: str) -> list[str]:
    """Return where exactly each row of a table was read, for whoever must check it.

    Raises
    ------
    SeatworkError
        As `rows` does.

    Examples
    --------
    >>> read_in("lock_washer_inch")[0]
    'ASME B18.21.1 regular helical spring lock washers, from memory'
    """
    return [str(entry["read_in"]) for entry in _rows(DATA, _known(name))]


def row(name: str, key: str | float) -> dict[str, Cell]:
    """Return the one row whose key column holds `key`.

    Raises
    ------
    SeatworkError
        If no row has it; the sentence names the sizes there are.

    Examples
    --------
    >>> row("drill_sizes_inch", "#7")["diameter_in"]
    0.201
    """
    table = about(name)
    for entry in _rows(DATA, name):
        if entry[table.key] == key:
            return _open(entry)
    held = [str(entry[table.key]) for entry in _rows(DATA, name)]
    raise SeatworkError(
        key, f"{table.standard} has no such row in the table held here", f"it has {_span(held)}"
    )


def confirmed(name: str, entry: Mapping[str, Cell], *columns: str) -> str:
    """Return how well the named cells of a row are confirmed: the weakest of them.

    Parameters
    ----------
    name : str
        Name of the table the row is from.
    entry : mapping
        A row, as `rows` returns it.
    *columns : str
        Columns that were used; none stands for the row itself.

    Returns
    -------
    str
        ``two-source``, ``one-source`` or ``memory``.

    Raises
    ------
    SeatworkError
        If there is no such table, it has no such column, or the row is none of a table.

    Examples
    --------
    >>> m6 = row("metric_csk_iso_10642", "M6")
    >>> confirmed("metric_csk_iso_10642", m6, "head_dia_dk_theoretical_max_mm")
    'two-source'
    >>> confirmed("metric_csk_iso_10642", m6, "head_dia_dk_actual_min_mm")
    'memory'
    """
    held = about(name).columns
    if "confirmed" not in entry:
        raise SeatworkError(name, "that is no row of the table", f"take one of rows({name!r})")
    for column in columns:
        if column not in held:
            fault = f"{name} has no such column"
            raise SeatworkError(column, fault, f"it has {', '.join(held)}")
    grades = [str(entry["confirmed"]), *(held[column].confirmed for column in columns)]
    return min((grade for grade in grades if grade), key=CONFIRMED.index)


@cache
def _names(folder: Path) -> tuple[str, ...]:
    return tuple(sorted(path.stem for path in folder.glob("*.csv")))


def _known(name: str) -> str:
    if not isinstance(name, str) or name not in _names(DATA):
        near = get_close_matches(str(name), names(), n=3, cutoff=0.4)
        remedy = f"did you mean {' or '.join(near)}?" if near else "names() lists them"
        raise SeatworkError(name, "there is no table of this name", remedy)
    return name


@cache
def _sidecar(folder: Path, name: str) -> Table:
    content = tomllib.loads((folder / f"{name}.toml").read_text(encoding="utf-8"))
    columns = {column: Column(**entry) for column, entry in content.pop("columns").items()}
    table = Table(name=name, columns=columns, **content)
    if table.key not in columns:
        raise SeatworkError(name, f"its key {table.key} is no column", "correct the sidecar")
    return table


@cache
def _rows(folder: Path, name: str) -> tuple[dict[str, Cell], ...]:
    table = _sidecar(folder, name)
    columns = (*table.columns, *NOTES)
    found = read_table(
        folder / f"{name}.csv", columns=columns, needed=columns, longest=LONGEST, name=name
    )
    return tuple(build_each(found, lambda row: _row(table, row)))


def _row(table: Table, row: Row) -> dict[str, Cell]:
    row.needed("source")
    row.needed("read_in")
    row.word("confirmed", CONFIRMED)
    return {column: _cell(table, column, text) for column, text in row.cells.items()}


def _cell(table: Table, column: str, text: str) -> Cell:
    held = table.columns.get(column)
    if held and held.unit:
        return number(text)
    return text or None


def _open(entry: Mapping[str, Cell]) -> dict[str, Cell]:
    """Copy a row without where it was read: a shop's or a maker's name is for checking alone."""
    return {column: cell for column, cell in entry.items() if column != "read_in"}


def _span(held: list[str]) -> str:
    return ", ".join(held) if len(held) <= 30 else f"{held[0]} to {held[-1]}"
