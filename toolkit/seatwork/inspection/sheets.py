"""A sheet of measured values: a CSV read row by row, the bad rows told, the good ones kept."""

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.inspection.cells import COLUMNS, measured_of
from seatwork.inspection.measured import Measured
from seatwork.plan.lines import Line, lines_of

MOST_ROWS = 20_000


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """What a file of measured values holds.

    Parameters
    ----------
    name : str
        Name of the file.
    measured : tuple of Measured
        The good rows, in the order of the file.
    faults : tuple of str
        One sentence for each bad row or column: file, row, column, reason.
    """

    name: str
    measured: tuple[Measured, ...]
    faults: tuple[str, ...] = ()


def read_sheet(path: Path, *, systems: Mapping[str, str] | None = None) -> Sheet:
    """Read measured values from a CSV.

    Parameters
    ----------
    path : Path
        A CSV with a heading line. Columns: part, feature, diameter, depth, stand, angle, tried,
        cleaned, screw, touch, burr, and "diameter with" and the like for the instrument; all
        but one measured column may be left out. Commas, semicolons and tabs all do.
    systems : mapping of str to str, optional
        System of each feature's print, for numbers without a unit; without it they are asked
        about.

    Returns
    -------
    Sheet
        The good rows, and one sentence for each bad one.

    Raises
    ------
    SeatworkError
        If the file cannot be read at all, or has no heading of this kind.

    Notes
    -----
    Every line stands for itself: a quote left open spoils its own row and no other.
    """
    lines, told = lines_of(path)
    if not lines:
        raise SeatworkError(path.name, "it holds no line", "write a heading and one row a part")
    columns, unknown = _columns(path, lines[0])
    faults = [f"{path.name}: {sentence}" for sentence in told] + unknown
    found: list[Measured] = []
    for line in lines[1 : MOST_ROWS + 1]:
        try:
            found.append(measured_of(_row(line, columns), line.number, systems or {}))
        except SeatworkError as error:
            faults.append(f"{path.name}, row {line.number}, {error}")
    if len(lines) > MOST_ROWS + 1:
        faults.append(f"{path.name}: only the first {MOST_ROWS} rows were read; split the file.")
    return Sheet(name=path.name, measured=tuple(found), faults=tuple(faults))


def _columns(path: Path, heading: Line) -> tuple[dict[int, str], list[str]]:
    """Return which column is which, and a sentence for each that is not known or comes twice."""
    names = [" ".join(cell.casefold().split()) for cell in heading.cells]
    if heading.fault or not set(names) & COLUMNS.keys():
        raise SeatworkError(
            f"{path.name}, row {heading.number}",
            "its first line names no column that is known",
            f"write a heading of {', '.join(COLUMNS)}",
        )
    columns: dict[int, str] = {}
    faults = []
    for place, name in enumerate(names):
        at = f"{path.name}, row {heading.number}, column {place + 1}"
        if name in columns.values():
            faults.append(f"{at}: {name} comes twice; the first one counts.")
        elif name in COLUMNS:
            columns[place] = name
        elif name:
            faults.append(f"{at}: {name[:40]} is no column known here; it was left out.")
    return columns, faults


def _row(line: Line, columns: dict[int, str]) -> dict[str, str]:
    if line.fault:
        raise SeatworkError("the whole row", line.fault, "write it again")
    if len(line.cells) > max(columns) + 1 and any(
        cell.strip() for place, cell in enumerate(line.cells) if place > max(columns)
    ):
        over = next(cell for cell in line.cells[max(columns) + 1 :] if cell.strip())
        if len(columns) == max(columns) + 1:
            raise SeatworkError(
                f"column {max(columns) + 2}: {over[:40]}",
                "the row has more cells than the heading",
                "take out a comma too many, or put the number in quotes",
            )
    return {name: line.cells[place] for place, name in columns.items() if place < len(line.cells)}
