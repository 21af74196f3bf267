"""An inspection as people read it, on screen and card alike, and as a CSV that opens harmless."""

from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.files import write_table
from seatwork.inspection.records import Inspection, Judged, PartVerdict
from seatwork.rows import Row
from seatwork.units import show_angle, show_both, show_length

HEADING = ("part", "feature", "verdict", "values", "why", "what to change")


def part_rows(part: PartVerdict, system: str | None = None) -> tuple[Row, ...]:
    """Return one part: its verdict with its mark, value by value, why, and what to change.

    Parameters
    ----------
    part : PartVerdict
        The part.
    system : {"inch", "metric"}, optional
        Which unit system stands first; the print's if not given.
    """
    first = system or part.system
    head = Row(label=part.measured.part, text=f"[{part.mark}] {part.verdict}")
    return (
        head,
        *(_value(one, first) for one in part.judged),
        *(Row(label="why", text=reason) for reason in part.reasons),
        *(Row(label="change", text=change) for change in part.changes),
    )


def summary(inspection: Inspection) -> str:
    """Say how many parts have each verdict, and how many rows could not be judged."""
    told = ", ".join(f"{count} {verdict}" for verdict, count in inspection.counts().items())
    bad, blank = len(inspection.faults), inspection.blank
    mend = f" To mend: {bad}." if bad else ""
    left = f" Rows not filled in: {blank}." if blank else ""
    return f"{len(inspection.parts)} parts: {told}.{mend}{left}"


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
            "; ".join(
                f"{row.label}: {row.text}"
                for row in (_value(one, part.system) for one in part.judged)
            ),
            " ".join(part.reasons),
            " ".join(part.changes),
        )
        for part in inspection.parts
    ]


def _value(one: Judged, system: str) -> Row:
    if one.value is None:
        answer = "yes" if one.mark == "OK" else "no"
        return Row(label=one.about, text=f"[{one.mark}] {answer}")
    sure = _show(one.key, one.uncertainty, system)
    limits = f"{_show(one.key, one.least, system)} to {_show(one.key, one.greatest, system)}"
    return Row(
        label=one.about,
        text=f"[{one.mark}] {_both(one, system)}, limits {limits}, {one.instrument} ±{sure}: "
        f"{one.verdict}",
        source=one.source,
    )


def _both(one: Judged, system: str) -> str:
    assert one.value is not None
    return show_angle(one.value) if one.key == "angle" else show_both(one.value, system)


def _show(key: str, value: float | None, system: str) -> str:
    if value is None:
        return "none"
    return show_angle(value) if key == "angle" else show_length(value, system)
