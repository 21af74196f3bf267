"""Tables in and out: CSV as spreadsheets and editors save it."""

import csv
import io
import re
from collections.abc import Iterable, Sequence
from difflib import get_close_matches
from pathlib import Path

from seatwork.errors import SeatworkError, together
from seatwork.files.rows import Row
from seatwork.files.text import lines_of, plain_ends, text_of
from seatwork.files.writing import write

LONGEST_CELL = 300
MOST_ROWS = 20_000
FORMULA = ("=", "+", "-", "@", "\t", "\r")
CONTROL = re.compile(r"[\x00-\x08\x0b-\x1f\x7f\ud800-\udfff]")
NAMES = {",": "comma", ";": "semicolon", "\t": "tab"}


def read_table(
    source: str | Path,
    *,
    columns: Sequence[str],
    needed: Sequence[str] = (),
    also: Sequence[str] = (),
    name: str = "",
    most: int = MOST_ROWS,
    longest: int = LONGEST_CELL,
    faults: list[SeatworkError] | None = None,
    others: bool = False,
) -> list[Row]:
    """Read a table as people save it from a spreadsheet or an editor.

    UTF-8 with or without a byte-order mark, UTF-16 with one, or the Windows code page where
    nothing else fits; commas, semicolons or tabs; any line ends. Headings may differ in case,
    spaces, hyphens and brackets. Blank rows and rows that begin with ``# `` are left out. A cell
    holds no line end, so that a quote left open spoils its own row and no other.

    Parameters
    ----------
    source : str or Path
        A file, or the text of one.
    columns : sequence of str
        All headings that are known.
    needed : sequence of str
        Headings that must be there.
    also : sequence of str
        Other forms of headings, known and not listed, such as ``depth [mm]``.
    name : str
        What errors call the file; the name of `source` if not given.
    most : int
        Most rows.
    longest : int
        Most characters of a cell.
    faults : list of SeatworkError, optional
        Where the faults of single rows go; the good rows come back. Without it they are raised.
    others : bool
        Whether columns with other headings are passed over; else they are a fault.

    Returns
    -------
    list of Row
        `cells` under the names of `columns` and `also`.

    Raises
    ------
    SeatworkError
        With all faults of the file at once: file, row, column and what would do.
    """
    file = name or (source.name if isinstance(source, Path) else "the table")
    text = text_of(source, file) if isinstance(source, Path) else plain_ends(source)
    lines = lines_of(text)
    if len(lines) > most + 1:
        raise SeatworkError(file, f"it has more than {most} rows", "check what was saved there")
    separator = _separator(text, lines, (*columns, *also))
    first = _cells(lines[0][1], separator) if lines else []
    headings = _known(first, (*columns, *also))
    named = [head for head in headings if head in (*columns, *also)] if others else headings
    wrong = _wrong(named, file, columns, needed, also)
    rows, spoiled = _rows(lines[1:], separator, file, headings, longest)
    if wrong or (spoiled and faults is None):
        raise together(file, [*wrong, *spoiled])
    if faults is not None:
        faults += spoiled
    return rows


def write_table(
    path: str | Path,
    heads: Sequence[str],
    rows: Iterable[Sequence[object]],
    *,
    mode: int = 0o644,
    backup: bool = False,
) -> None:
    """Write a CSV file that a spreadsheet opens and saves right: UTF-8 with its mark.

    Numbers stay numbers; text that could be a formula gets a quote before it, which
    `read_table` takes away again; a line end in a cell becomes a space.

    Raises
    ------
    SeatworkError
        As `write` does.
    """
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(heads)
    writer.writerows([plain(value) for value in row] for row in rows)
    write(path, out.getvalue().encode("utf-8-sig", "replace"), mode=mode, backup=backup)


def plain(value: object) -> object:
    """Return a value as it may stand in a cell: text that begins a formula gets a quote.

    Examples
    --------
    >>> plain("=1+1"), plain(-0.5)
    ("'=1+1", -0.5)
    """
    if isinstance(value, str):
        quote = "'" if value.startswith(FORMULA) else ""
        return quote + CONTROL.sub("\N{REPLACEMENT CHARACTER}", " ".join(value.splitlines()))
    return "" if value is None else value


def _separator(text: str, lines: list[tuple[int, str]], columns: Sequence[str]) -> str:
    """Return what parts the headings: what the file says, else what finds most that are known."""
    stated = re.match(r"\s*sep=([,;\t])", text)
    if stated or not lines:
        return stated[1] if stated else ","
    known = {_key(column) for column in columns}

    def found(separator: str) -> tuple[int, int]:
        heads = [_key(head) for head in _cells(lines[0][1], separator)]
        return len(known.intersection(heads)), len(heads)

    return max(",;\t", key=found)


def _key(heading: str) -> str:
    plain = heading.strip().casefold().replace("(", "[").replace(")", "]")
    return re.sub(r"[\s_-]+", " ", plain)


def _cells(line: str, separator: str) -> list[str]:
    """Return the trimmed cells of a line; none if it cannot be read."""
    try:
        cells = next(csv.reader([line], delimiter=separator, strict=True), [])
    except csv.Error:
        return []
    return [_bare(cell.strip()) for cell in cells]


def _bare(cell: str) -> str:
    """Take away the quote that `plain` puts before what could be a formula."""
    return cell[1:] if cell[:1] == "'" and cell[1:].startswith(FORMULA) else cell


def _known(found: list[str], columns: Sequence[str]) -> list[str]:
    """Return the headings under their known names."""
    names = {_key(column): column for column in columns}
    while found and not found[-1]:
        found.pop()
    return [names.get(_key(head), head) for head in found]


def _wrong(
    found: list[str], file: str, columns: Sequence[str], needed: Sequence[str], also: Sequence[str]
) -> list[SeatworkError]:
    """Return what is wrong with the headings."""
    place = f"{file}, row 1, column"
    known = [*columns, *also]
    unknown = [head for head in dict.fromkeys(found) if head not in known]
    twice = [head for head in known if found.count(head) > 1]
    missing = [head for head in needed if head not in found]
    return [
        *(_unknown(place, head, columns, known) for head in unknown),
        *(
            SeatworkError(f"{place} {head}", "the heading stands there twice", "keep one of them")
            for head in twice
        ),
        *(
            SeatworkError(f"{place} {head}", "the heading is missing", "add the column")
            for head in missing
        ),
    ]


def _unknown(place: str, head: str, columns: Sequence[str], known: Sequence[str]) -> SeatworkError:
    """Refuse a heading, and say which one may be meant, and which there are."""
    near = get_close_matches(_key(head), known, n=1, cutoff=0.75)
    meant = f"if {near[0]} is meant, write that; " if near else ""
    remedy = f"{meant}the headings are {', '.join(columns)}"
    return SeatworkError(f"{place} {head or 'without a name'}", "the heading is not known", remedy)


def _rows(
    lines: list[tuple[int, str]], separator: str, file: str, headings: list[str], longest: int
) -> tuple[list[Row], list[SeatworkError]]:
    rows, faults = [], []
    for number, line in lines:
        try:
            row = _row(number, line, separator, file, headings)
            _refuse_cells(row, longest)
            rows.append(row)
        except SeatworkError as error:
            faults.append(error)
    return rows, faults


def _row(number: int, line: str, separator: str, file: str, headings: list[str]) -> Row:
    place = f"{file}, row {number}"
    cells = _cells(line, separator)
    if not cells:
        raise SeatworkError(place, "the row cannot be read as CSV", "check its quotes")
    if any(cells[len(headings) :]):
        raise SeatworkError(
            place,
            "the row has more cells than there are headings",
            f"put quotes round a text that holds a {NAMES[separator]}",
        )
    cells += [""] * (len(headings) - len(cells))
    return Row(file=file, number=number, cells=dict(zip(headings, cells, strict=False)))


def _refuse_cells(row: Row, longest: int) -> None:
    for column, text in row.cells.items():
        if len(text) > longest:
            raise row.refuse(column, "the text is far too long", "shorten it")
        if CONTROL.search(text):
            raise row.refuse(column, "it holds a control character", "type the cell again")
