"""An inspection as a CSV that opens harmless."""

from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.files import write_table
from seatwork.inspection.findings import Inspection
from seatwork.inspection.rows import value_row

HEADING = ("part", "feature", "verdict", "values", "why", "what to change")


def write_results(inspection: Inspection, path: Path, *, replace: bool = False) -> str:
    """Write an inspection as CSV.

    Parameters
    ----------
    inspection : Inspection
        What was found.
    path : Path
        Where to; the folder must be there.
    replace : bool, optional
        Whether a file of that name may be written over.

    Returns
    -------
    str
        What was done, in a sentence that says so where a file was replaced.

    Raises
    ------
    SeatworkError
        If a file, folder or link of that name is there and `replace` is not set, or it cannot
        be written.
    """
    there = path.exists() or path.is_symlink()
    if there and (not replace or path.is_symlink() or not path.is_file()):
        raise SeatworkError(
            path.name, "there is something of that name already", "name another file, or move it"
        )
    write_table(path, HEADING, result_rows(inspection))
    return f"{'Replaced' if there else 'Wrote'} {path}"


def result_rows(inspection: Inspection) -> list[tuple[str, ...]]:
    """Return an inspection as the rows of a table under `HEADING`."""
    return [
        (
            part.measured.part,
            part.measured.feature,
            part.verdict,
            "; ".join(str(value_row(one, part.system)) for one in part.judged),
            " ".join(part.reasons),
            " ".join(part.changes),
        )
        for part in inspection.parts
    ]
