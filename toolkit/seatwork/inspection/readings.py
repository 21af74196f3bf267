"""Readings of measured parts: read row by row, every fault told, the good rows kept."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.files import Row, read_table
from seatwork.inspection.cells import holds_nothing, read_row
from seatwork.inspection.columns import COLUMNS, MEASURED, PART, UNITS
from seatwork.inspection.measured import QUANTITIES, Measured

MOST_ROWS = 20_000
HEADINGS = tuple(f"{name} [{unit}]" for name in MEASURED for unit in UNITS.values())


@dataclass(frozen=True, slots=True, kw_only=True)
class Readings:
    """What a file of readings holds.

    Parameters
    ----------
    name : str
        Name of the file.
    measured : tuple of Measured
        The good rows, in the order of the file.
    faults : tuple of str
        One sentence for each fault: file, row, column, reason.
    blank : int
        Rows of a blank that nobody filled in.
    """

    name: str
    measured: tuple[Measured, ...]
    faults: tuple[str, ...] = ()
    blank: int = 0


def read_readings(path: Path, *, features: Sequence[str] | None = None) -> Readings:
    """Read the readings of parts from a CSV.

    Parameters
    ----------
    path : Path
        A CSV with headings of `COLUMNS`, any of them. A heading may carry the unit of its column,
        such as ``diameter [mm]``; ``unit`` gives that of a row; a size may carry its own.
    features : sequence of str, optional
        Names of the features there are; without them a feature is left as written.

    Returns
    -------
    Readings
        The good rows, and one sentence for each fault.

    Raises
    ------
    SeatworkError
        If the file cannot be read at all, or a heading is not known or stands there twice.

    Notes
    -----
    Every line stands for itself: a quote left open spoils its own row and no other. A part that
    stands there twice is told, and neither row is taken.
    """
    spoiled: list[SeatworkError] = []
    rows = read_table(path, columns=tuple(COLUMNS), also=HEADINGS, most=MOST_ROWS, faults=spoiled)
    if rows or not spoiled:
        _refuse_headings(path.name, rows)
    return _read(path.name, rows, features, spoiled)


def read_typed(parts: Sequence[Mapping[str, str]], *, features: Sequence[str]) -> Readings:
    """Read readings typed on a page.

    Parameters
    ----------
    parts : sequence of dict of str to str
        A mapping for each part, from headings as in `read_readings` to what was typed. A heading
        that is not known, or gives one reading twice, spoils its own part alone.
    features : sequence of str
        Names of the features there are.

    Returns
    -------
    Readings
        The good ones, and one sentence for each fault.
    """
    rows = [
        _TypedRow(file="readings", number=number, cells=dict(cells))
        for number, cells in enumerate(parts, 1)
    ]
    faults = [(row, _heading_fault(row)) for row in rows]
    good = [row for row, fault in faults if fault is None]
    return _read("readings", good, features, [fault for _, fault in faults if fault])


class _TypedRow(Row):
    """Readings typed on a page, where a part is found by its mark."""

    def place(self, column: str) -> str:
        """Name part and column."""
        return f"{self.text(PART) or 'no mark'}, {column}"


def _heading_fault(row: Row) -> SeatworkError | None:
    """Return what is wrong with the headings of typed readings; None where they stand."""
    names = [heading.partition(" [")[0] for heading in row.cells]
    for heading, name in zip(row.cells, names, strict=True):
        if heading not in (*COLUMNS, *HEADINGS):
            fault = "no reading is called so"
            return row.refuse(heading, fault, f"the readings are {', '.join(COLUMNS)}")
        if names.count(name) > 1:
            return row.refuse(heading, "it is given twice", "keep one of them")
    return None


def _read(
    name: str, rows: Sequence[Row], features: Sequence[str] | None, spoiled: list[SeatworkError]
) -> Readings:
    filled = [row for row in rows if not holds_nothing(row)]
    read = [(row, *read_row(row, features)) for row in filled]
    found = [(row, part) for row, part, _ in read if part is not None]
    faults = [*spoiled, *(fault for _, _, faults in read for fault in faults)]
    measured, twice = _each_once(found)
    return Readings(
        name=name,
        measured=measured,
        faults=tuple(str(fault) for fault in (*faults, *twice)),
        blank=len(rows) - len(filled),
    )


def _refuse_headings(file: str, rows: list[Row]) -> None:
    """Refuse a sheet that measures nothing, or the same thing in two columns."""
    if not rows:
        raise SeatworkError(file, "it holds no row", "write headings, and one row a part below")
    names = [heading.partition(" [")[0] for heading in rows[0].cells]
    twice = next((name for name in names if names.count(name) > 1), "")
    place = f"{file}, row 1"
    if twice:
        fault = "the heading stands there twice"
        raise SeatworkError(f"{place}, column {twice}", fault, "keep one of them")
    if not {one.column for one in QUANTITIES.values()} & set(names):
        fault = "no heading names anything that is measured"
        raise SeatworkError(place, fault, f"the headings are {', '.join(COLUMNS)}")


def _each_once(
    found: list[tuple[Row, Measured]],
) -> tuple[tuple[Measured, ...], list[SeatworkError]]:
    """Return the parts that stand there once, and a fault for each row that is one too many."""
    first: dict[tuple[str, str], Row] = {}
    twice: set[tuple[str, str]] = set()
    faults = []
    for row, part in found:
        key = _key(part)
        if key in first:
            twice.add(key)
            fault = f"{part.part} stands in row {first[key].number} too; neither is judged"
            remedy = f"keep one of them, or mark the holes, such as {part.part} hole 2"
            faults.append(row.refuse("part", fault, remedy))
        first.setdefault(key, row)
    return tuple(part for _, part in found if _key(part) not in twice), faults


def _key(part: Measured) -> tuple[str, str]:
    return part.feature, " ".join(part.part.casefold().split())
